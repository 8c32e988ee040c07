import { decodeBase64Text, encodeBase64 } from '../base64.ts';

/**
 * What stands round the content of every link, whatever its version; it never changes.
 * Bytes: a mark, the version, the length of the body in two bytes (high first), the body (raw DEFLATE, RFC 1951), the first six
 * bytes of the SHA-256 over all that came before. Written in base64url (RFC 4648, section 5) without padding, and closed
 * by a letter, since some programs leave a hyphen or an underscore out at the end of an address.
 */
export const MARK = 0x54;
export const HEAD = 4;
export const CHECK = 6;
export const END = 'z';
/** Characters that hold the head: whole bytes only. */
const HEAD_CHARACTERS = 8;

/** How many characters the frame has that begins here, by its own head; null where none begins. */
export function lengthOfFrame(code: string): number | null {
  const head = fromBase64Url(code.slice(0, HEAD_CHARACTERS));
  if (!head || head[0] !== MARK || !head[1] || head.length < HEAD) return null;
  const bytes = HEAD + (((head[2] as number) << 8) | (head[3] as number)) + CHECK;
  return Math.ceil((bytes * 4) / 3) + END.length;
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
