import type { System } from '../../../core/job/index.ts';

export type MetricUnit = 'mm' | 'cm' | 'm';

/**
 * A key of the length pad: a digit or decimal point, feet, a fraction of an inch, half a sixteenth more, a sign, a unit,
 * or one step back.
 */
export type PadKey =
  | { type: 'text'; text: string }
  | { type: 'feet' }
  | { type: 'fraction'; text: string }
  | { type: 'finer' }
  | { type: 'sign' }
  | { type: 'unit'; unit: MetricUnit }
  | { type: 'back' };

const FRACTION_END = / ?\d+\/\d+$/;
const UNIT_END = / ?(mm|cm|m)$/;
/** A number of a metric tape without its unit. */
const BARE_NUMBER = /^-?[\d.,][\d., ]*$/;

/**
 * The text after a key. The pad only ever edits text, so that what is kept as typed is the same from the pad, a
 * keyboard or a meter that types. A second fraction replaces the first; a digit after a fraction or a unit is not taken.
 */
export function typed(before: string, key: PadKey): string {
  switch (key.type) {
    case 'text':
      return takesText(before, key.text) ? before + key.text : before;
    case 'feet':
      return /^-?\d+(\.\d+)?$/.test(before.trim()) ? `${before.trim()}' ` : before;
    case 'fraction':
      return withFraction(before, key.text);
    case 'finer':
      return withFraction(before, halfASixteenthOn(before));
    case 'sign':
      return before.startsWith('-') ? before.slice(1) : `-${before}`;
    case 'unit':
      return before.replace(UNIT_END, ` ${key.unit}`);
    case 'back':
      return FRACTION_END.test(before) ? before.replace(FRACTION_END, '') : before.replace(/(' |.)$/, '');
  }
}

function takesText(before: string, text: string): boolean {
  if (FRACTION_END.test(before) || UNIT_END.test(before)) return false;
  return text !== '.' || !/\.\d*$/.test(before);
}

function withFraction(before: string, fraction: string): string {
  const whole = before.replace(FRACTION_END, '');
  if (fraction === '') return whole;
  return `${whole}${whole === '' || /[-\s]$/.test(whole) ? '' : ' '}${fraction}`;
}

/** The fraction between two sixteenths, above what stands there; from there, back to the sixteenth. */
function halfASixteenthOn(before: string): string {
  const [top = 0, bottom = 32] = (FRACTION_END.exec(before)?.[0] ?? '0/32').split('/').map(Number);
  const marks = (top * 32) / bottom;
  return marks % 2 === 0 ? `${marks + 1}/32` : reduced(marks - 1, 32);
}

function reduced(top: number, bottom: number): string {
  if (top === 0) return '';
  return top % 2 === 0 ? reduced(top / 2, bottom / 2) : `${top}/${bottom}`;
}

/** Fractions of an inch as a tape has them: sixteenths in order, or eighths where the job asks no finer. */
export function fractionKeys(denominator: 8 | 16 | 32): string[] {
  const finest = denominator === 8 ? 8 : 16;
  return Array.from({ length: finest - 1 }, (_, i) => reduced(i + 1, finest));
}

export const isQuarter = (fraction: string): boolean => /\/[24]$/.test(fraction);

/** A bare metric number with the unit that the pad stands on, so that the text says itself what it means. */
export const withUnit = (text: string, unit: MetricUnit): string =>
  unit !== 'mm' && BARE_NUMBER.test(text.trim()) ? `${text.trim()} ${unit}` : text;

/** What a hardware key means to the pad; null for keys it leaves alone. */
export function keyFromKeyboard(key: string, system: System): PadKey | null {
  if (key === 'Backspace') return { type: 'back' };
  if (/^[0-9./ \-'"′″½¼¾⅛⅜⅝⅞,a-zA-Z]$/.test(key))
    return { type: 'text', text: system === 'imperial' && key === '′' ? "'" : key };
  return null;
}

/** The text after a hardware key: unlike a pad key it may go on inside a fraction (1/1 then 6). */
export const typedByKeyboard = (before: string, key: PadKey): string =>
  key.type === 'text' ? before + key.text : before.slice(0, -1);
