import { sha256 } from '@noble/hashes/sha2.js';
import { deflateSync, inflateSync } from 'fflate';
import { decodeBase64Text, encodeBase64 } from '../base64.ts';

/**
 * What stands round the content of every link, whatever its version; it never changes.
 * Bytes: a mark, the version, the length of the body in two bytes (high first), the body (raw DEFLATE, RFC 1951), the first six
 * bytes of the SHA-256 over all that came before. Written in base64url (RFC 4648, section 5) without padding, and closed
 * by a letter, since some programs leave a hyphen or an underscore out at the end of an address.
 */
const MARK = 0x54;
const HEAD = 4;
const CHECK = 6;
const END = 'z';
/** Characters that hold the head: whole bytes only. */
const HEAD_CHARACTERS = 8;
const LONGEST_BODY = 0xffff;
/** No honest link holds more once it is unpacked; bytes. */
const LARGEST = 1_000_000;

export type FrameFault = 'foreign' | 'cut-off' | 'damaged' | 'newer';
export type Framed = { ok: true; text: string } | { ok: false; why: FrameFault };

/** Null: longer than a frame can hold. */
export function writeFrame(text: string, version: number): string | null {
  const body = deflateSync(new TextEncoder().encode(text), { level: 9 });
  if (body.length > LONGEST_BODY) return null;
  const bytes = new Uint8Array(HEAD + body.length + CHECK);
  bytes.set([MARK, version, body.length >> 8, body.length & 0xff]);
  bytes.set(body, HEAD);
  bytes.set(checkOf(bytes), HEAD + body.length);
  return `${toBase64Url(bytes)}${END}`;
}

/** Never throws, whatever it is given. version: the newest this reader knows. */
export function readFrame(code: string, version: number): Framed {
  const length = lengthOfFrame(code);
  if (length === null) return refuse('foreign');
  if (code.length < length) return refuse('cut-off');
  const bytes = code.length === length && code.endsWith(END) ? fromBase64Url(code.slice(0, -1)) : null;
  if (!bytes || !checkOf(bytes).every((byte, i) => byte === bytes[bytes.length - CHECK + i])) return refuse('damaged');
  if ((bytes[1] as number) > version) return refuse('newer');
  const text = unpack(bytes.subarray(HEAD, bytes.length - CHECK));
  return text === null ? refuse('damaged') : { ok: true, text };
}

/** How many characters the frame has that begins here, by its own head; null where none begins. */
export function lengthOfFrame(code: string): number | null {
  const head = fromBase64Url(code.slice(0, HEAD_CHARACTERS));
  if (!head || head[0] !== MARK || !head[1] || head.length < HEAD) return null;
  const bytes = HEAD + (((head[2] as number) << 8) | (head[3] as number)) + CHECK;
  return Math.ceil((bytes * 4) / 3) + END.length;
}

const refuse = (why: FrameFault): Framed => ({ ok: false, why });

const checkOf = (bytes: Uint8Array): Uint8Array => sha256(bytes.subarray(0, bytes.length - CHECK)).subarray(0, CHECK);

function unpack(body: Uint8Array): string | null {
  try {
    const bytes = inflateSync(body, { out: new Uint8Array(Math.min(LARGEST, body.length * 1100 + 64)) });
    return bytes.length === LARGEST ? null : new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

export function toBase64Url(bytes: Uint8Array): string {
  const text = new TextDecoder().decode(encodeBase64(bytes));
  return text.replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** Null where it is not the one way to write some bytes. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (!/^[\w-]*$/.test(text)) return null;
  const padded = text
    .replaceAll('-', '+')
    .replaceAll('_', '/')
    .padEnd(Math.ceil(text.length / 4) * 4, '=');
  const bytes = decodeBase64Text(padded);
  // Bits left over in the last character would let two texts stand for the same bytes.
  return bytes && toBase64Url(bytes) === text ? bytes : null;
}
