import { sha256 as hash } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { browserTools, type Decoded, type PictureTools } from './canvas.ts';
import { fitWithin } from './measures.ts';

export interface PictureOptions {
  /** Longest side in pixels; 2048 by default. */
  longest?: number;
  /** JPEG quality 0..1; 0.85 by default. */
  quality?: number;
  /** Keep the file's own bytes, with its place and date, where they are of a type every browser shows. */
  keepPlace?: boolean;
  tools?: PictureTools;
}

/**
 * A picture ready to be stored. width, height: pixels as seen upright. size: bytes. placeKept: these are the file's own bytes;
 * otherwise nothing but the picture itself is left.
 */
export interface Picture {
  bytes: ArrayBuffer;
  sha256: string;
  mime: string;
  width: number;
  height: number;
  size: number;
  placeKept: boolean;
}

/**
 * empty: a file of no bytes. unreadable: the system does not give the file's bytes. undecodable: this browser cannot
 * decode it (HEIC outside WebKit, say). canvas-blocked: the browser's settings forbid reading pictures back.
 * failed: it could not be drawn or encoded, mostly for want of memory.
 */
export type PictureRefusal = 'empty' | 'unreadable' | 'undecodable' | 'canvas-blocked' | 'failed';

export type PictureResult = { ok: true; picture: Picture } | { ok: false; code: PictureRefusal };

const refuse = (code: PictureRefusal): PictureResult => ({ ok: false, code });

/** Turns a file into an upright JPEG of a sensible size without its place, or says why it cannot. Never throws. */
export async function takePicture(file: Blob, options: PictureOptions = {}): Promise<PictureResult> {
  const tools = options.tools ?? browserTools;
  if (file.size === 0) return refuse('empty');
  let original: ArrayBuffer;
  try {
    // Read first: on phones the file may be a promise of the gallery that fails only here.
    original = await file.arrayBuffer();
  } catch {
    return refuse('unreadable');
  }
  let decoded: Decoded;
  try {
    decoded = await tools.decode(new Blob([original], { type: file.type }));
  } catch {
    return refuse('undecodable');
  }
  try {
    if (!tools.isHonest()) return refuse('canvas-blocked');
    return await develop(decoded, original, tools, options);
  } catch {
    return refuse('failed');
  } finally {
    decoded.close();
  }
}

async function develop(
  decoded: Decoded,
  original: ArrayBuffer,
  tools: PictureTools,
  { longest = 2048, quality = 0.85, keepPlace = false }: PictureOptions,
): Promise<PictureResult> {
  const commonType = keepPlace ? sniff(original) : null;
  if (commonType) {
    const { width, height } = decoded;
    return finished(original, { mime: commonType, width, height, placeKept: true });
  }
  const { width, height } = fitWithin(decoded.width, decoded.height, longest);
  const blob = await tools.draw(decoded, width, height).jpeg(quality);
  if (!blob || blob.size === 0) return refuse('failed');
  const mime = blob.type || 'image/jpeg';
  return finished(await blob.arrayBuffer(), { mime, width, height, placeKept: false });
}

function finished(bytes: ArrayBuffer, about: Omit<Picture, 'bytes' | 'sha256' | 'size'>): PictureResult {
  return { ok: true, picture: { ...about, bytes, size: bytes.byteLength, sha256: sha256Of(bytes) } };
}

/** SHA-256 in lower-case hex. Not crypto.subtle: that is missing without a secure context, as on a shop's own network. */
export function sha256Of(bytes: ArrayBuffer): string {
  return bytesToHex(hash(new Uint8Array(bytes)));
}

/** The media type by content, of those every browser shows; null for any other. */
function sniff(bytes: ArrayBuffer): string | null {
  const head = String.fromCharCode(...new Uint8Array(bytes, 0, Math.min(12, bytes.byteLength)));
  if (head.startsWith('\xff\xd8\xff')) return 'image/jpeg';
  if (head.startsWith('\x89PNG')) return 'image/png';
  if (head.startsWith('RIFF') && head.endsWith('WEBP')) return 'image/webp';
  return null;
}
