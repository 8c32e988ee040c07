import { CHECK, END, fromBase64Url, HEAD, lengthOfFrame } from './frame.ts';

/** No honest link holds more once it is unpacked; bytes. */
const LARGEST = 1_000_000;

export type FrameFault = 'foreign' | 'cut-off' | 'damaged' | 'newer';
export type Framed = { ok: true; text: string } | { ok: false; why: FrameFault };

/**
 * Reads what stands in a frame, whatever it is given. version: the newest this reader knows. The browser's own hash and
 * inflation are used where it has them, so that a link opens before a library has come; it throws only where one has to come and cannot.
 */
export async function readFrame(code: string, version: number): Promise<Framed> {
  const length = lengthOfFrame(code);
  if (length === null) return refuse('foreign');
  if (code.length < length) return refuse('cut-off');
  const bytes = code.length === length && code.endsWith(END) ? fromBase64Url(code.slice(0, -1)) : null;
  if (!bytes || !(await isWhole(bytes))) return refuse('damaged');
  if ((bytes[1] as number) > version) return refuse('newer');
  const body = await inflate(bytes.slice(HEAD, -CHECK));
  const text = body && textOf(body);
  return text === null ? refuse('damaged') : { ok: true, text };
}

const refuse = (why: FrameFault): Framed => ({ ok: false, why });

async function isWhole(bytes: Uint8Array): Promise<boolean> {
  const check = await sha256(bytes.slice(0, -CHECK));
  return bytes.slice(-CHECK).every((byte, i) => byte === check[i]);
}

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  // Missing without a secure context, as on a shop's own network.
  if (globalThis.crypto?.subtle) return new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  const library = await import('@noble/hashes/sha2.js');
  return library.sha256(bytes);
}

/** Null for what is not raw DEFLATE, or too large once it is unpacked. */
async function inflate(body: Uint8Array<ArrayBuffer>): Promise<Uint8Array | null> {
  const stream = ownInflation();
  const { inflateSync } = stream ? { inflateSync: null } : await import('fflate');
  try {
    if (stream) return await readWhole(new Blob([body]).stream().pipeThrough(stream));
    // One byte more than may be, so that what is too large is told from what just fits.
    const bytes = inflateSync?.(body, { out: new Uint8Array(Math.min(LARGEST + 1, body.length * 1100 + 64)) });
    return bytes && bytes.length <= LARGEST ? bytes : null;
  } catch {
    return null;
  }
}

/** Null in a browser that has none for raw DEFLATE. */
function ownInflation(): DecompressionStream | null {
  try {
    return new DecompressionStream('deflate-raw');
  } catch {
    return null;
  }
}

async function readWhole(stream: ReadableStream<Uint8Array>): Promise<Uint8Array | null> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let size = 0;
  const reader = stream.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    size += next.value.length;
    if (size > LARGEST) {
      await reader.cancel().catch(() => undefined);
      return null;
    }
    parts.push(next.value.slice());
  }
  return new Uint8Array(await new Blob(parts).arrayBuffer());
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
