import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/** SHA-256 (FIPS 180-4) of some bytes, in lower-case hex. Needs no secure context, unlike the browser's own. */
export const sha256Hex = (bytes: Uint8Array): string => bytesToHex(sha256(bytes));

/**
 * The seal of a packet: SHA-256 over its canonical JSON (RFC 8785) without `seal` and without the bytes of the
 * photos, which enter by their own hashes; so a photo may travel inside or beside without changing the seal.
 * It shows damage; it does not prove who sent the packet.
 * @throws Error when the document is not plain JSON: numbers that are not finite, half a character, a ring
 */
export function sealOf(document: Readonly<Record<string, unknown>>): string {
  const { seal: _, ...rest } = document;
  const sealed = Array.isArray(rest.photos) ? { ...rest, photos: rest.photos.map(withoutData) } : rest;
  return sha256Hex(utf8ToBytes(canonicalize(sealed) ?? ''));
}

function withoutData(photo: unknown): unknown {
  if (typeof photo !== 'object' || photo === null || Array.isArray(photo)) return photo;
  const { data: _, ...rest } = photo as Record<string, unknown>;
  return rest;
}
