import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { check } from '../../core/check/index.ts';
import { buildPacket, encodeBase64, type Packet } from '../../core/packet/index.ts';
import { breathe } from './breathe.ts';

/** A photo that could not go along: it is not here, its bytes are not what its hash says, or they cannot be read. */
export type LeftOut = [sha256: string, why: 'missing' | 'damaged' | 'unreadable'];

export interface WriteOptions {
  /** From 0 to 1, photo by photo. */
  onProgress?: (fraction: number) => void;
  onLeftOut?: (...left: LeftOut) => void;
}

export type GetPhotoBytes = (sha256: string) => Promise<Blob | ArrayBuffer | null>;

/** What a packet is built from; its findings are those of the default limits. */
export type PacketFileParts = Omit<Parameters<typeof buildPacket>[0], 'check'>;

/** A multiple of three, so that base64 pads only at the end: 1 MiB of text. */
const CHUNK = 3 * 256 * 1024;

/**
 * A packet as one JSON file with its photos inside. Bytes are turned into base64 piece by piece and handed to a Blob
 * at once, so that neither the page stands still nor the heap holds the file. A photo that is missing or broken stays
 * out and is reported: the readings travel all the same, and the seal holds without it.
 */
export async function writePacketFile(
  document: Packet,
  getPhotoBytes: GetPhotoBytes,
  options: WriteOptions = {},
): Promise<Blob> {
  const { photos, ...rest } = document;
  const parts: BlobPart[] = [JSON.stringify(rest).slice(0, -1), ',"photos":['];
  for (const [index, { data: _, ...photo }] of photos.entries()) {
    options.onProgress?.(index / photos.length);
    const encoded = await encoded64(photo.sha256, getPhotoBytes);
    if (index > 0) parts.push(',');
    if (typeof encoded === 'string') {
      options.onLeftOut?.(photo.sha256, encoded);
      parts.push(JSON.stringify(photo));
    } else parts.push(JSON.stringify(photo).slice(0, -1), ',"data":"', ...encoded, '"}');
    await breathe();
  }
  parts.push(']}');
  options.onProgress?.(1);
  return new Blob(parts, { type: 'application/json' });
}

/**
 * Builds the packet of a job, seals it and writes it.
 * @throws RangeError when there is no entry or the entries belong to more than one job
 */
export async function makePacketFile(
  parts: PacketFileParts,
  getPhotoBytes: GetPhotoBytes,
  options: WriteOptions = {},
): Promise<Blob> {
  return writePacketFile(buildPacket({ ...parts, check: (sheet) => check(sheet) }), getPhotoBytes, options);
}

async function encoded64(hash: string, getPhotoBytes: GetPhotoBytes): Promise<Blob[] | LeftOut[1]> {
  try {
    const bytes = await getPhotoBytes(hash);
    if (bytes === null) return 'missing';
    const source = bytes instanceof Blob ? bytes : new Blob([bytes]);
    const hasher = sha256.create();
    const parts: Blob[] = [];
    for (let at = 0; at < source.size; at += CHUNK) {
      const chunk = new Uint8Array(await source.slice(at, at + CHUNK).arrayBuffer());
      hasher.update(chunk);
      parts.push(new Blob([encodeBase64(chunk)]));
      await breathe();
    }
    return bytesToHex(hasher.digest()) === hash ? parts : 'damaged';
  } catch {
    return 'unreadable';
  }
}
