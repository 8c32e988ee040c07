import { sha256 } from '@noble/hashes/sha2.js';
import { deflateSync } from 'fflate';
import { CHECK, END, HEAD, MARK, toBase64Url } from './frame.ts';

const LONGEST_BODY = 0xffff;

/** Null: longer than a frame can hold. */
export function writeFrame(text: string, version: number): string | null {
  const body = deflateSync(new TextEncoder().encode(text), { level: 9 });
  if (body.length > LONGEST_BODY) return null;
  const bytes = new Uint8Array(HEAD + body.length + CHECK);
  bytes.set([MARK, version, body.length >> 8, body.length & 0xff]);
  bytes.set(body, HEAD);
  bytes.set(sha256(bytes.subarray(0, -CHECK)).subarray(0, CHECK), HEAD + body.length);
  return `${toBase64Url(bytes)}${END}`;
}
