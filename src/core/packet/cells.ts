import { Side, type TakeUnit } from '../job/index.ts';
import { type LengthUnit, parseLength } from '../length/index.ts';

export type CellValue<T> = ({ ok: true } & T) | { ok: false; why: string; understood: string };
export interface Measure {
  value: number;
  unit: TakeUnit;
}

const refuse = (why: string, understood = ''): { ok: false; why: string; understood: string } => ({
  ok: false,
  why,
  understood,
});

/** A length in millimetres. decimalComma: the table's own decimal sign is a comma. */
export function lengthCell(text: string, unit: LengthUnit, decimalComma: boolean): CellValue<Measure> {
  const parsed = parseLength(decimalComma ? withPoint(text) : text, unit);
  return parsed.ok ? { ok: true, value: parsed.mm, unit: parsed.unit } : refuse(parsed.why, parsed.understood);
}

/** An angle, typed in degrees, as radians. */
export function angleCell(text: string): CellValue<Measure> {
  const match = /^([+-]?\d+(?:[.,]\d+)?)\s*(?:°|º|deg|degrees?)?$/i.exec(text);
  if (!match?.[1]) return refuse('not-an-angle');
  const degrees = Number(match[1].replace(',', '.'));
  if (Math.abs(degrees) > 180) return refuse('angle-too-large', match[1]);
  return { ok: true, value: (degrees * Math.PI) / 180, unit: 'deg' };
}

/** Coordinates `x y [z]` as millimetres; metres unless a unit stands behind the last, or behind each, number. */
export function positionCell(text: string, decimalComma: boolean): CellValue<{ position: [number, number, number] }> {
  const tokens = (decimalComma ? text.replaceAll(',', '.') : text)
    .trim()
    .replace(/(\d)\s*(mm|cm|m|in|ft)\b/gi, '$1$2')
    .split(decimalComma ? /[\s;]+/ : /[\s;,]+/);
  if (tokens.length < 2 || tokens.length > 3) return refuse('not-coordinates');
  const parts = tokens.map((token) => /^([+-]?(?:\d+\.?\d*|\.\d+))(mm|cm|m|in|ft)?$/i.exec(token));
  const shared = parts.at(-1)?.[2] ?? 'm';
  const alone = parts.slice(0, -1).every((part) => part?.[2] === undefined);
  const values = parts.map((part) =>
    part?.[1] !== undefined && (alone || part[2] !== undefined)
      ? inMillimetres(part[1], part[2] ?? shared)
      : Number.NaN,
  );
  const [x, y, z = 0] = values;
  if (x === undefined || y === undefined || !values.every((value) => Math.abs(value) <= 1e10))
    return refuse('not-coordinates');
  return { ok: true, position: [x, y, z] };
}

function inMillimetres(number: string, unit: string): number {
  switch (unit.toLowerCase()) {
    case 'in':
      return (Number(number) * 254) / 10;
    case 'ft':
      return (Number(number) * 3048) / 10;
    // Moving the decimal sign in the text is exact where multiplying a double is not.
    case 'm':
      return Number(`${number}e3`);
    case 'cm':
      return Number(`${number}e1`);
    default:
      return Number(number);
  }
}

/** One or more sides: `port`, `port forward`. */
export function sidesCell(text: string): CellValue<{ sides: Side[] }> {
  const words = text
    .toLowerCase()
    .split(/[\s,;|]+/)
    .filter((word) => word !== '');
  const sides = words.map((word) => Side.safeParse(word)).flatMap((parsed) => (parsed.success ? [parsed.data] : []));
  if (sides.length === 0 || sides.length < words.length) return refuse('not-a-side', sides.join(' '));
  return { ok: true, sides: [...new Set(sides)] };
}

/** Labels in one cell, parted by the first of `|` `;` `,` that occurs in it, or by blanks where none does. */
export function labelsCell(text: string): string[] {
  const sign = ['|', ';', ','].find((candidate) => text.includes(candidate));
  return (sign ? text.split(sign) : text.split(/\s+/)).map((label) => label.trim()).filter((label) => label !== '');
}

/** What `labelsCell` reads back. */
export function labelsText(labels: readonly string[]): string {
  const text = labels.join('|');
  return labels.length === 1 && /[\s;,]/.test(text) ? `${text}|` : text;
}

const withPoint = (text: string): string =>
  !text.includes('.') && text.split(',').length === 2 ? text.replace(',', '.') : text;
