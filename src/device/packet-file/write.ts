import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { encodeBase64, type Packet } from '../../core/packet/index.ts';
import { breathe } from './breathe.ts';

export interface WriteOptions {
  /** From 0 to 1, photo by photo. */
  onProgress?: (fraction: number) => void;
  /** A photo that could not go along: it is not here, its bytes are not what its hash says, or they cannot be read. */
  onLeftOut?: (sha256: string, why: 'missing' | 'damaged' | 'unreadable') => void;
}

/** A multiple of three, so that base64 pads only at the end: 1 MiB of text. */
const CHUNK = 3 * 256 * 1024;

/**
 * A packet as one JSON file with its photos inside. Bytes are turned into base64 piece by piece and handed to a Blob
 * at once, so that neither the page stands still nor the heap holds the file. A photo that is missing or broken stays
 * out and is reported: the readings travel all the same, and the seal holds without it.
 */
export async function writePacketFile(
  document: Packet,
  getPhotoBytes: (sha256: string) => Promise<Blob | ArrayBuffer | null>,
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

async function encoded64(
  hash: string,
  getPhotoBytes: (sha256: string) => Promise<Blob | ArrayBuffer | null>,
): Promise<Blob[] | 'missing' | 'damaged' | 'unreadable'> {
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
