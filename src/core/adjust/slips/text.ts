import { formatLength, type LengthStyle, type LengthUnit, parseLength } from '../../length/index.ts';

/** The one place where slips meet the writing of lengths. */
export type { LengthUnit };

export interface TypedLength {
  readonly mm: number;
  readonly unit: LengthUnit;
  readonly form: 'feet-inches' | 'inches' | 'decimal' | 'metric';
  readonly feet: number;
  /** Whole inches, or the number itself of a decimal or metric length. */
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: number;
}

/** Takes a typed length apart; undefined where it cannot be read. */
export function typedLength(text: string, unit: LengthUnit): TypedLength | undefined {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) return undefined;
  const { parts } = parsed;
  return {
    mm: parsed.mm,
    unit: parsed.unit,
    form: parts.form,
    feet: parts.feet ?? 0,
    whole: parts.inches ?? parts.decimal ?? 0,
    numerator: parts.numerator ?? 0,
    denominator: parts.denominator ?? 1,
  };
}

/** A length in the manner of what was typed. */
export function inTheSameWriting(mm: number, typed: TypedLength | undefined): string {
  return formatLength(mm, styleOf(typed));
}

function styleOf(typed: TypedLength | undefined): LengthStyle {
  if (typed === undefined) return { system: 'metric', unit: 'mm' };
  if (typed.form === 'metric') {
    return { system: 'metric', unit: typed.unit === 'cm' || typed.unit === 'm' ? typed.unit : 'mm' };
  }
  const feet = typed.form === 'feet-inches' || typed.unit === 'ft' ? 'over-foot' : 'never';
  return { system: 'imperial', denominator: 16, feet };
}

export const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };
