import { fromBase64Url, toBase64Url } from './frame.ts';

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;
const SIGN = '~';
const HALF_CHARACTER = /\p{Surrogate}/gu;

/** The same plain value with every id in 23 characters in place of 36. Half characters become U+FFFD. */
export const shorten = (value: unknown): unknown => mapTexts(value, shortText);

/** The value that was shortened. */
export const lengthen = (value: unknown): unknown => mapTexts(value, longText);

function shortText(text: string): string {
  if (UUID.test(text)) return SIGN + toBase64Url(bytesOf(text));
  const whole = text.replace(HALF_CHARACTER, '\ufffd');
  return whole.startsWith(SIGN) ? SIGN + whole : whole;
}

function longText(text: string): string {
  if (!text.startsWith(SIGN)) return text;
  const rest = text.slice(SIGN.length);
  if (rest.startsWith(SIGN)) return rest;
  const bytes = fromBase64Url(rest);
  return bytes?.length === 16 ? uuidOf(bytes) : text;
}

function bytesOf(uuid: string): Uint8Array {
  const hex = uuid.replaceAll('-', '');
  return Uint8Array.from({ length: 16 }, (_, i) => Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16));
}

function uuidOf(bytes: Uint8Array): string {
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-');
}

function mapTexts(value: unknown, change: (text: string) => string): unknown {
  if (typeof value === 'string') return change(value);
  if (Array.isArray(value)) return value.map((item) => mapTexts(item, change));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, mapTexts(item, change)]));
}
