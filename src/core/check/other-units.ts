import type { Take } from '../job/index.ts';
import { type LengthUnit, parseLength } from '../length/index.ts';

/** What else a typed text may have meant. */
export interface Meaning {
  readonly unit: LengthUnit | 'feet-inches';
  /** Millimetres. */
  readonly value: number;
}

const INCH = 25.4;
const UNIT_MM: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: INCH, ft: 12 * INCH };
const UNITS = ['mm', 'cm', 'in', 'ft', 'm'] as const;

/**
 * The same text read in other units: cm for inches, mm for cm, feet for inches, and feet with inches run together (5 ft 8 as
 * `58`, as `5.8`). Empty for texts that name feet and inches themselves, and for angles.
 */
export function otherMeanings(take: Pick<Take, 'text' | 'unit' | 'value'>): Meaning[] {
  const { text, unit, value } = take;
  if (unit === 'deg') return [];
  const parsed = parseLength(text, unit);
  if (parsed.ok && parsed.parts.form === 'feet-inches') return [];
  const amount = value / UNIT_MM[unit];
  const plain = UNITS.filter((other) => other !== unit).map((other) => ({
    unit: other,
    value: amount * UNIT_MM[other],
  }));
  return [...plain, ...feetRunTogether(amount, text)];
}

function feetRunTogether(amount: number, text: string): Meaning[] {
  const dotted = /^\s*(\d{1,2})[.,](\d{1,2})(?!\d)/.exec(text);
  if (dotted) return feetInches(Number(dotted[1]), Number(dotted[2]));
  const whole = Math.floor(amount);
  const fraction = amount - whole;
  return [10, 100].flatMap((base) => feetInches(Math.floor(whole / base), (whole % base) + fraction));
}

const feetInches = (feet: number, inches: number): Meaning[] =>
  feet >= 1 && inches < 12 ? [{ unit: 'feet-inches', value: (feet * 12 + inches) * INCH }] : [];
