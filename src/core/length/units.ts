/** Units a length may be typed in. */
export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft';

/** A length in millimetres. The brand keeps it apart from angles, forces and lengths in other units. */
export type Mm = number & { readonly __unit: 'mm' };

/**
 * Marks a plain number as millimetres.
 * @throws RangeError when the number is not finite: no length is better than a length that poisons every sum.
 */
export function mm(value: number): Mm {
  if (!Number.isFinite(value)) throw new RangeError('A length must be a finite number of millimetres');
  return value as Mm;
}

/**
 * Millimetres in one unit as a fraction of whole numbers, so that products stay whole and only one division rounds.
 * Source: 1 in = 25.4 mm exactly (yard and pound agreement of 1959; NIST SP 811, appendix B).
 */
const FACTORS: Record<LengthUnit, { readonly over: number; readonly under: number }> = {
  mm: { over: 1, under: 1 },
  cm: { over: 10, under: 1 },
  m: { over: 1000, under: 1 },
  in: { over: 127, under: 5 },
  ft: { over: 1524, under: 5 },
};

/** The millimetres nearest to `n / d` of a unit, for whole `n` and `d`: equal fractions give the very same number. */
export function exactMm(n: number, d: number, unit: LengthUnit): Mm {
  const { over, under } = FACTORS[unit];
  return mm((n * over) / (d * under));
}
