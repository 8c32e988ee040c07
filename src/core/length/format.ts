import { exactMm, type Mm, mm } from './units.ts';

/** The finest mark on the tape: 16 means sixteenths of an inch. */
export type InchDenominator = 2 | 4 | 8 | 16 | 32 | 64;

/**
 * How to write a length. `over-foot` writes feet from twelve inches on. `decimals` defaults to a whole millimetre:
 * none for mm, 1 for cm, 3 for m.
 */
export type LengthStyle =
  | {
      readonly system: 'imperial';
      readonly denominator: InchDenominator;
      readonly feet: 'always' | 'over-foot' | 'never';
    }
  | { readonly system: 'metric'; readonly unit: 'mm' | 'cm' | 'm'; readonly decimals?: number };

/** A length on an inch tape. The fraction is reduced; numerator 0 goes with denominator 1. The sign covers all of it. */
export interface TapeFraction {
  readonly negative: boolean;
  readonly feet: number;
  readonly inches: number;
  readonly numerator: number;
  readonly denominator: number;
}

const WHOLE_MM_DECIMALS = { mm: 0, cm: 1, m: 3 } as const;
const MM_IN = { mm: 1, cm: 10, m: 1000 } as const;

/** Far below any graduation, far above the rounding of a double: what lies so near the middle is a tie. */
const TIE = 1e-9;

/** Nearest whole number, a tie to the even one (NIST SP 811, B.7), so that many roundings do not drift one way. */
function nearestEven(value: number): number {
  const below = Math.floor(value);
  const part = value - below;
  if (Math.abs(part - 0.5) > TIE) return Math.round(value);
  return below % 2 === 0 ? below : below + 1;
}

function nearestMultiple(value: number, step: number): number {
  const perUnit = 1 / step;
  const count = nearestEven(value / step);
  // A tenth has no exact double but ten has one: dividing gives 0.3 where multiplying gives 0.30000000000000004.
  const result = Number.isInteger(perUnit) ? count / perUnit : count * step;
  return result === 0 ? 0 : result;
}

/**
 * The nearest multiple of a step, both in millimetres; a tie goes to the even multiple.
 * @throws RangeError when the step is not above zero or a number is not finite
 */
export function roundTo(value: number, step: number): Mm {
  if (!(step > 0)) throw new RangeError('A step must be above zero');
  return mm(nearestMultiple(value, step));
}

/**
 * The graduation of an inch tape nearest to a length in millimetres, carried into whole inches and feet; half way
 * between two graduations the even one is taken. The error is at most half a graduation.
 * @throws RangeError when the length is not finite
 */
export function nearestFraction(value: number, denominator: InchDenominator): TapeFraction {
  const steps = nearestEven(Math.abs(mm(value)) / exactMm(1, denominator, 'in'));
  const wholeInches = Math.floor(steps / denominator);
  let numerator = steps % denominator;
  let reduced: number = numerator === 0 ? 1 : denominator;
  while (numerator > 0 && numerator % 2 === 0) {
    numerator /= 2;
    reduced /= 2;
  }
  return {
    negative: value < 0 && steps > 0,
    feet: Math.floor(wholeInches / 12),
    inches: wholeInches % 12,
    numerator,
    denominator: reduced,
  };
}

function formatImperial(value: number, denominator: InchDenominator, feetStyle: 'always' | 'over-foot' | 'never') {
  const { negative, feet, inches, numerator, denominator: under } = nearestFraction(value, denominator);
  const showFeet = feetStyle === 'always' || (feetStyle === 'over-foot' && feet > 0);
  const whole = showFeet ? inches : feet * 12 + inches;
  const fraction = numerator === 0 ? '' : `${numerator}/${under}`;
  // `12' 0 1/2"` keeps its nought, so that nobody takes the fraction for one of a foot.
  const showWhole = showFeet || whole > 0 || fraction === '';
  const inchText = [showWhole ? String(whole) : '', fraction].filter((part) => part !== '').join(' ');
  return `${negative ? '-' : ''}${showFeet ? `${feet}' ` : ''}${inchText}"`;
}

/**
 * Writes a length given in millimetres, rounded to the style's finest mark: `12' 3 1/2"`, `47 5/8"`, `3755 mm`.
 * `parseLength` reads every result back. The decimal sign is a point whatever the device's language.
 * @throws RangeError when the length is not finite
 */
export function formatLength(value: number, style: LengthStyle): string {
  if (style.system === 'imperial') return formatImperial(value, style.denominator, style.feet);
  const decimals = style.decimals ?? WHOLE_MM_DECIMALS[style.unit];
  const rounded = nearestMultiple(mm(value) / MM_IN[style.unit], 10 ** -decimals);
  return `${rounded.toFixed(decimals)} ${style.unit}`;
}
