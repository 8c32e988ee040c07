/** RFC 4648, section 4: the standard alphabet with padding. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const PAD = 0x3d;
const INVALID = 0xff;

const codes = Uint8Array.from(ALPHABET, (letter) => letter.charCodeAt(0));
const values = new Uint8Array(256).fill(INVALID);
for (const [value, code] of codes.entries()) values[code] = value;

const codeOf = (value: number): number => codes[value & 63] as number;

/** Bytes as base64, itself as ASCII bytes: a photo never becomes a string on its way into a file. */
export function encodeBase64(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const text = new Uint8Array(Math.ceil(bytes.length / 3) * 4);
  let to = 0;
  for (let from = 0; from < bytes.length; from += 3) {
    const a = bytes[from] as number;
    const b = bytes[from + 1];
    const c = bytes[from + 2];
    text[to] = codeOf(a >> 2);
    text[to + 1] = codeOf((a << 4) | ((b ?? 0) >> 4));
    text[to + 2] = b === undefined ? PAD : codeOf((b << 2) | ((c ?? 0) >> 6));
    text[to + 3] = c === undefined ? PAD : codeOf(c);
    to += 4;
  }
  return text;
}

/** The bytes that base64 given as ASCII stands for; null when it is not base64 with its padding. */
export function decodeBase64(text: Uint8Array): Uint8Array<ArrayBuffer> | null {
  const padding = text[text.length - 1] !== PAD ? 0 : text[text.length - 2] === PAD ? 2 : 1;
  if (text.length % 4 !== 0) return null;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  const last = text.length - 4;
  let to = 0;
  for (let from = 0; from < text.length; from += 4) {
    const pads = from === last ? padding : 0;
    const a = values[text[from] as number] as number;
    const b = values[text[from + 1] as number] as number;
    const c = pads === 2 ? 0 : (values[text[from + 2] as number] as number);
    const d = pads > 0 ? 0 : (values[text[from + 3] as number] as number);
    if ((a | b | c | d) > 63) return null;
    bytes[to] = (a << 2) | (b >> 4);
    // Writing past the end of a typed array does nothing, so the padded end needs no case of its own.
    bytes[to + 1] = (b << 4) | (c >> 2);
    bytes[to + 2] = (c << 6) | d;
    to += 3;
  }
  return bytes;
}

/** As `decodeBase64`, from a string. */
export function decodeBase64Text(text: string): Uint8Array<ArrayBuffer> | null {
  const ascii = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    ascii[at] = code < 0x80 ? code : 0;
  }
  return decodeBase64(ascii);
}
