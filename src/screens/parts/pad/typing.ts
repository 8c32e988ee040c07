import type { System } from '../../../core/job/index.ts';

/** A key of the length pad: a digit, a decimal point, feet, a fraction of an inch, a unit, or one step back. */
export type PadKey =
  | { type: 'text'; text: string }
  | { type: 'feet' }
  | { type: 'fraction'; text: string }
  | { type: 'unit'; unit: string }
  | { type: 'back' };

const FRACTION_END = / ?\d+\/\d+$/;
const UNIT_END = / ?(mm|cm|m)$/;

/**
 * The text after a key. The pad only ever edits text, so that what is kept as typed is the same from the pad, a
 * keyboard or a meter that types. A second fraction replaces the first; a digit after a fraction starts anew there.
 */
export function typed(before: string, key: PadKey): string {
  switch (key.type) {
    case 'text':
      return FRACTION_END.test(before) ? before : before + key.text;
    case 'feet': {
      const number = /^-?\d+(\.\d+)?$/.exec(before.trim());
      return number ? `${before.trim()}' ` : before;
    }
    case 'fraction': {
      const whole = before.replace(FRACTION_END, '');
      return whole === '' || /\s$/.test(whole) ? `${whole}${key.text}` : `${whole} ${key.text}`;
    }
    case 'unit':
      return before.replace(UNIT_END, '') === '' ? before : `${before.replace(UNIT_END, '')} ${key.unit}`;
    case 'back':
      return FRACTION_END.test(before) ? before.replace(FRACTION_END, '') : before.replace(/(' |.)$/, '');
  }
}

/** Fractions of an inch as the pad lays them out: sixteenths in order, or eighths where the job asks no finer. */
export function fractionKeys(denominator: 8 | 16 | 32): string[] {
  const finest = denominator === 8 ? 8 : 16;
  return Array.from({ length: finest - 1 }, (_, i) => {
    let [top, bottom] = [i + 1, finest];
    while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
    return `${top}/${bottom}`;
  });
}

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
