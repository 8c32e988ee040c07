import { logShare, type SlipKind } from './kinds.ts';
import { type LengthUnit, MM_PER, type TypedLength, typedLength } from './text.ts';

/** A length that may have been meant when `text` was written. */
export interface Misreading {
  readonly kind: SlipKind;
  readonly mm: number;
  /** Standard deviation of mm beyond the tape's own (a tape case is not always the same). */
  readonly spread: number;
  /** Log of the chance of this one, given that a slip was made. */
  readonly logChance: number;
}

const INCH = 25.4;
const FOOT = 304.8;

/**
 * Everything a person may have meant by a typed length, by the slips people make. Kinds share their chance among their
 * own ways of happening, so a kind with many ways does not win by number.
 */
export function misreadings(text: string, unit: LengthUnit): Misreading[] {
  const typed = typedLength(text, unit);
  if (typed === undefined) return [];
  const imperial = typed.form !== 'metric' && (typed.unit === 'in' || typed.unit === 'ft');
  const list: Misreading[] = [];
  const kind = (name: SlipKind, lengths: readonly number[], spread = 0, share = 1): void => {
    const sensible = [...new Set(lengths.map((mm) => Math.round(mm * 1e4) / 1e4))].filter(
      (mm) => mm > 0 && Math.abs(mm - typed.mm) > 0.5,
    );
    for (const mm of sensible) {
      list.push({ kind: name, mm, spread, logChance: logShare(name) + Math.log(share / sensible.length) });
    }
  };
  const { mm } = typed;
  if (imperial) {
    kind('whole-foot', [mm - FOOT, mm + FOOT]);
    kind('ten-inches', [mm - 10 * INCH, mm + 10 * INCH]);
    kind('one-inch', [mm + INCH, mm - INCH]);
    kind('burnt-inch', [mm - INCH]);
    kind('tape-case', [mm + 3 * INCH], 0.25 * INCH);
    kind('fraction-wrong-way', wrongWay(typed));
    kind('fraction-misread', otherFractions(typed));
    kind('sixteenths-for-eighths', otherDenominator(typed));
    kind('feet-inches-as-inches', asFeetAndInches(typed));
    kind('decimal-feet', decimalFeet(typed));
  } else {
    kind('hundred-millimetres', [mm - 100, mm + 100]);
    kind('whole-metre', [mm - 1000, mm + 1000]);
    kind('burnt-hundred', [mm - 100, mm - 10], 0);
    kind('tape-case', [mm + 76], 6);
  }
  kind('digits-swapped', byDigits(typed, swaps));
  kind('six-for-nine', byDigits(typed, sixesAndNines));
  kind('digit-misread', byDigits(typed, otherDigits));
  kind('digit-lost', byDigits(typed, lostDigits));
  kind('decimal-shifted', [mm * 10], imperial ? INCH / 2 : 3, 0.5);
  kind('decimal-shifted', [mm / 10], 0, 0.5);
  for (const { mm: meant, spread } of otherUnits(typed)) kind('unit-mistaken', [meant], spread, 0.3);
  return list;
}

const fractionOf = (t: TypedLength): number => t.numerator / t.denominator;
const inchesOf = (t: TypedLength): number => 12 * t.feet + t.whole;
const isInches = (t: TypedLength): boolean => t.form === 'inches' || t.form === 'feet-inches';

/** 3/8 for 5/8: counted back from the next inch, or on from the last one. */
function wrongWay(t: TypedLength): number[] {
  if (!isInches(t) || t.numerator === 0) return [];
  const turned = 1 - fractionOf(t);
  return [0, 1, -1].map((inch) => (inchesOf(t) + inch + turned) * INCH);
}

function otherFractions(t: TypedLength): number[] {
  if (!isInches(t)) return [];
  return Array.from({ length: 16 }, (_, n) => (inchesOf(t) + n / 16) * INCH);
}

function otherDenominator(t: TypedLength): number[] {
  if (!isInches(t) || t.numerator === 0) return [];
  return [2, 0.5]
    .map((k) => fractionOf(t) * k)
    .filter((f) => f < 1)
    .map((f) => (inchesOf(t) + f) * INCH);
}

/** 58 typed for 5 ft 8, 510 for 5 ft 10; and 5 ft 8 typed for 58. */
function asFeetAndInches(t: TypedLength): number[] {
  const f = fractionOf(t);
  if (t.form === 'feet-inches') {
    return t.whole < 10 ? [(10 * t.feet + t.whole + f) * INCH] : [(100 * t.feet + t.whole + f) * INCH];
  }
  if (t.form !== 'inches' && t.unit !== 'in') return [];
  const found: number[] = [];
  for (const ten of [10, 100]) {
    const feet = Math.floor(t.whole / ten);
    const inches = t.whole - feet * ten;
    if (feet > 0 && inches < 12) found.push((12 * feet + inches + f) * INCH);
  }
  return found;
}

/** 5.8 ft typed for 5 ft 8 in, and the other way round. */
function decimalFeet(t: TypedLength): number[] {
  if (t.form === 'feet-inches') {
    return [(t.feet + (t.whole + fractionOf(t)) / (t.whole < 10 ? 10 : 100)) * FOOT];
  }
  if (t.form !== 'decimal') return [];
  const feet = Math.floor(t.whole);
  const rest = t.whole - feet;
  return [rest * 10, rest * 100].filter((i) => i < 12).map((i) => feet * FOOT + Math.round(i * 16) * (INCH / 16));
}

/** The same number in another unit; known only to that unit's own last digit. */
function otherUnits(t: TypedLength): { mm: number; spread: number }[] {
  const number = t.mm / MM_PER[t.unit];
  const step = Number.isInteger(number) ? 1 : isInches(t) ? 1 / 16 : 0.1;
  return (Object.keys(MM_PER) as LengthUnit[])
    .filter((u) => u !== t.unit)
    .map((u) => ({ mm: number * MM_PER[u], spread: (step * MM_PER[u]) / Math.sqrt(12) }))
    .filter(({ mm }) => mm >= 10 && mm <= 60_000);
}

/** Applies a change to the digits of the feet, the whole inches or the metric number; and across feet and inches. */
function byDigits(t: TypedLength, change: (digits: string) => string[]): number[] {
  const f = fractionOf(t) * INCH;
  if (t.form === 'feet-inches') {
    const found = [
      ...change(`${t.feet}`).map((d) => Number(d) * FOOT + t.whole * INCH + f),
      ...change(`${t.whole}`).map((d) => t.feet * FOOT + Number(d) * INCH + f),
    ];
    if (change === swaps && t.feet < 10 && t.whole < 10 && t.whole > 0) found.push(t.whole * FOOT + t.feet * INCH + f);
    return found;
  }
  if (t.form === 'inches') return change(`${t.whole}`).map((d) => Number(d) * INCH + f);
  const scale = MM_PER[t.unit];
  return change(`${t.whole}`).map((d) => Number(d) * scale);
}

const isDigit = (c: string | undefined): c is string => c !== undefined && c >= '0' && c <= '9';

function swaps(text: string): string[] {
  const found: string[] = [];
  const digits = [...text];
  digits.forEach((c, i) => {
    for (const j of [i + 1, i + 2]) {
      const d = digits[j];
      // Neighbours across a decimal point count as neighbours.
      if (j === i + 2 && digits[i + 1] !== '.') continue;
      if (!isDigit(c) || !isDigit(d) || c === d) continue;
      const changed = [...digits];
      changed[i] = d;
      changed[j] = c;
      found.push(changed.join(''));
    }
  });
  return found;
}

function replacing(text: string, to: (digit: string) => readonly string[]): string[] {
  return [...text].flatMap((c, i) => (isDigit(c) ? to(c).map((d) => text.slice(0, i) + d + text.slice(i + 1)) : []));
}

function sixesAndNines(text: string): string[] {
  const turned = replacing(text, (c) => (c === '6' ? ['9'] : c === '9' ? ['6'] : []));
  const upsideDown = [...text].map((c) => (c === '6' ? '9' : c === '9' ? '6' : c)).join('');
  return [...turned, upsideDown];
}

const otherDigits = (text: string): string[] => replacing(text, (c) => [...'0123456789'].filter((d) => d !== c));

function lostDigits(text: string): string[] {
  const found: string[] = [];
  if (text.includes('.')) return found;
  for (let i = 0; i <= text.length; i++) {
    for (const d of '123456789') found.push(text.slice(0, i) + d + text.slice(i));
    if (i < text.length && text.length > 1) found.push(text.slice(0, i) + text.slice(i + 1));
  }
  return found;
}
