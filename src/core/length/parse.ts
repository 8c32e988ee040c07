import { asText, type FractionToken, type NumberToken, type Token, tidy, tokenise, type UnitToken } from './tokens.ts';
import { exactMm, type LengthUnit, type Mm, mm } from './units.ts';

/** Why a text was not taken for a length. The words a person reads for each live with the other texts. */
export type LengthRefusal =
  | 'empty'
  | 'not-a-length'
  | 'inches-over-eleven'
  | 'zero-denominator'
  | 'improper-fraction'
  | 'odd-fraction'
  | 'several-decimal-points'
  | 'ambiguous-comma'
  | 'mixed-units'
  | 'mixed-forms'
  | 'two-numbers'
  | 'unit-needed'
  | 'too-long'
  | 'too-large';

/**
 * The numbers as typed, before any conversion: slips leave their trace in these and not in the millimetres.
 * - `feet-inches`: `feet`, and `inches` (may have decimals) and the fraction where they were typed.
 * - `inches`: `inches` and the fraction where they were typed.
 * - `decimal`: `decimal` inches or feet, as the unit beside says; a fraction of a foot is here too.
 * - `metric`: `decimal` in the unit beside.
 */
export interface LengthParts {
  readonly form: 'feet-inches' | 'inches' | 'decimal' | 'metric';
  readonly feet?: number;
  readonly inches?: number;
  readonly numerator?: number;
  readonly denominator?: number;
  readonly decimal?: number;
  /** Set when a leading minus was typed; it covers feet and inches together. */
  readonly negative?: boolean;
}

/** `unit` is the one typed, or the default: `ft` for everything with feet in it. */
export type ParsedLength =
  | { readonly ok: true; readonly mm: Mm; readonly unit: LengthUnit; readonly parts: LengthParts }
  | { readonly ok: false; readonly why: LengthRefusal; readonly understood: string };

interface Amount {
  readonly ok: true;
  /** The length without its sign is `n / d` of `per`. */
  readonly n: number;
  readonly d: number;
  readonly per: LengthUnit;
  readonly unit: LengthUnit;
  readonly parts: LengthParts;
}
type Reading = Amount | { readonly ok: false; readonly why: LengthRefusal };

interface Pieces {
  readonly numbers: readonly NumberToken[];
  readonly fraction: FractionToken | undefined;
  readonly unit: LengthUnit;
}

/** No boat piece is longer; beyond it a text is a telephone number or a slipped key. */
const LONGEST_MM = 200_000;
const LONGEST_TEXT = 48;
const FINEST_GRADUATION = 64;

const refuse = (why: LengthRefusal): Reading => ({ ok: false, why });

function fractionFault(fraction: FractionToken | undefined): LengthRefusal | undefined {
  if (!fraction) return undefined;
  if (fraction.d === 0) return 'zero-denominator';
  if (fraction.n >= fraction.d) return 'improper-fraction';
  // Tapes are marked by halving, down to 64ths (NIST Handbook 44); a third is not on any of them.
  const halves = Math.log2(fraction.d);
  return Number.isInteger(halves) && fraction.d <= FINEST_GRADUATION ? undefined : 'odd-fraction';
}

const fractionParts = (fraction: FractionToken | undefined) =>
  fraction ? { numerator: fraction.n, denominator: fraction.d } : {};

/** Adds whole numbers, decimals and a fraction over their common denominator, so that nothing is rounded yet. */
function sum(...terms: readonly ({ readonly n: number; readonly d: number } | undefined)[]) {
  return terms.reduce<{ n: number; d: number }>(
    (total, term) => (term ? { n: total.n * term.d + term.n * total.d, d: total.d * term.d } : total),
    { n: 0, d: 1 },
  );
}

function feetInches({ numbers: [feet, inches], fraction }: Pieces): Reading {
  if (!feet) return refuse('not-a-length');
  if (inches && inches.n >= 12 * inches.d) return refuse('inches-over-eleven');
  const parts: LengthParts = {
    form: 'feet-inches',
    feet: feet.n,
    ...(inches ? { inches: inches.n / inches.d } : {}),
    ...fractionParts(fraction),
  };
  return { ok: true, ...sum({ n: feet.n * 12, d: 1 }, inches, fraction), per: 'in', unit: 'ft', parts };
}

function inches({ numbers: [whole], fraction }: Pieces): Reading {
  const total = sum(whole, fraction);
  const parts: LengthParts =
    whole?.shape === 'D'
      ? { form: 'decimal', decimal: whole.n / whole.d }
      : { form: 'inches', ...(whole ? { inches: whole.n } : {}), ...fractionParts(fraction) };
  return { ok: true, ...total, per: 'in', unit: 'in', parts };
}

function decimalFeet({ numbers: [whole], fraction }: Pieces): Reading {
  const total = sum(whole, fraction);
  return { ok: true, ...total, per: 'ft', unit: 'ft', parts: { form: 'decimal', decimal: total.n / total.d } };
}

function metric({ numbers: [number], unit }: Pieces): Reading {
  if (!number) return refuse('not-a-length');
  const { n, d } = number;
  return { ok: true, n, d, per: unit, unit, parts: { form: 'metric', decimal: n / d } };
}

const isMetric = (unit: LengthUnit) => unit === 'mm' || unit === 'cm' || unit === 'm';

function bareNumber(pieces: Pieces): Reading {
  if (isMetric(pieces.unit)) return metric(pieces);
  if (pieces.unit === 'in') return inches(pieces);
  return pieces.numbers[0]?.shape === 'N' ? feetInches(pieces) : decimalFeet(pieces);
}

/** Digits in groups of three, as the SI writes them; only metric text is written so. */
function grouped(pieces: Pieces): Reading {
  const [first, ...rest] = pieces.numbers;
  const inThrees = rest.every((number) => /^\d{3}(?:[.,]\d+)?$/.test(number.text));
  if (!first || !isMetric(pieces.unit) || !/^[1-9]\d{0,2}$/.test(first.text) || !inThrees) return refuse('two-numbers');
  const joined = rest.reduce(
    (total, next) => ({
      ...next,
      n: total.n * 1000 * next.d + next.n,
    }),
    first,
  );
  return metric({ ...pieces, numbers: [joined] });
}

const onlyInches = (pieces: Pieces) => (pieces.unit === 'in' ? inches(pieces) : refuse('unit-needed'));
/** `12-3` is 12 ft 3 in on an inch sheet; on a metric one it may as well be a range. */
const dashed = (pieces: Pieces) => (isMetric(pieces.unit) ? refuse('unit-needed') : feetInches(pieces));

/** What each order of tokens means; the first that fits is taken. */
const FORMS: readonly (readonly [RegExp, (pieces: Pieces) => Reading])[] = [
  [/^N'(?:[-~]?(?:N-?F|[NDF])"?)?$/, feetInches],
  [/^N-N(?:-?F"?|")$/, feetInches],
  [/^N-N$/, dashed],
  [/^(?:N-?F|[NDF])"$/, inches],
  [/^(?:N-?F|[DF])'$/, decimalFeet],
  [/^[ND]m$/, metric],
  [/^[ND]$/, bareNumber],
  [/^(?:N-?F|F)$/, onlyInches],
  [/^N+[ND]m?$/, grouped],
];

function faultOfShape(shape: string): LengthRefusal {
  if (/m.*['"]|['"].*m|m.*m|".*["']|'.*'/.test(shape)) return 'mixed-units';
  if (/D-?F|D'.*[NDF]|F.*m|F.*[NDF]/.test(shape)) return 'mixed-forms';
  return /[ND][-~]?[ND]|m[ND]/.test(shape) ? 'two-numbers' : 'not-a-length';
}

function read(tokens: readonly Token[], defaultUnit: LengthUnit): Reading {
  const numbers = tokens.filter((token): token is NumberToken => token.shape === 'N' || token.shape === 'D');
  const fraction = tokens.find((token): token is FractionToken => token.shape === 'F');
  const typedUnit = tokens.findLast((token): token is UnitToken => 'unit' in token)?.unit;
  const unit = typedUnit ?? defaultUnit;
  const shape = tokens.map((token) => token.shape).join('');
  const form = FORMS.find(([pattern]) => pattern.test(shape));
  if (!form) return refuse(faultOfShape(shape));
  // Nobody reads kilometres off a tape, so beside a plain `m` the comma can only be a decimal one.
  if (unit !== 'm' && numbers.some((number) => number.ambiguous)) return refuse('ambiguous-comma');
  const fault = fractionFault(fraction);
  return fault ? refuse(fault) : form[1]({ numbers, fraction, unit });
}

/** The longest beginning that reads as a length of its own. */
function understoodPart(tokens: readonly Token[], negative: boolean, defaultUnit: LengthUnit): string {
  for (let count = tokens.length; count > 0; count--) {
    const start = tokens.slice(0, count);
    if (read(start, defaultUnit).ok) return asText(start, negative);
  }
  return '';
}

/**
 * Reads a length the way people type it: feet and inches, inches with a fraction, decimals, metric.
 * Returns millimetres (exact to the last bit: the same length typed in two ways gives the same number) and the parts
 * as typed, or a code for why not with the beginning that made sense. Never throws, never guesses between two readings.
 * @param defaultUnit the unit of a bare number
 */
export function parseLength(text: string, defaultUnit: LengthUnit): ParsedLength {
  if (text.length > LONGEST_TEXT) return { ok: false, why: 'too-long', understood: '' };
  const tidied = tidy(text);
  if (tidied === '') return { ok: false, why: 'empty', understood: '' };
  const { negative, tokens, stopped } = tokenise(tidied);
  const reading = stopped ? refuse(stopped) : read(tokens, defaultUnit);
  if (!reading.ok) {
    return { ok: false, why: reading.why, understood: understoodPart(tokens, negative, defaultUnit) };
  }
  const { n, d, per, unit, parts } = reading;
  const size = exactMm(n, d, per);
  if (size > LONGEST_MM) return { ok: false, why: 'too-large', understood: asText(tokens, negative) };
  if (!negative) return { ok: true, mm: size, unit, parts };
  return { ok: true, mm: mm(size === 0 ? 0 : -size), unit, parts: { ...parts, negative } };
}
