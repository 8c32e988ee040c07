import {
  defaultInstruments,
  type Instruments,
  type SheetReading,
  spreadOf,
  type Take,
  type Who,
} from '../job/index.ts';
import { parseLength } from '../length/index.ts';

const INCH = 25.4;
const UNIT_MM = { mm: 1, cm: 10, m: 1000, in: INCH, ft: 12 * INCH } as const;
/** Reading to a sixteenth of an inch is part of the tape's figure; only coarser steps widen it. */
const STEP_INSIDE = INCH / 16;
/** A text such as `4 m` says little about how it was read; nobody reads a tape coarser than this. */
const COARSEST_STEP = 100;

/**
 * The step in which a take's text was written, in mm. Fractions of an inch are reduced when they are written (8/16 is
 * 1/2), so they say nothing; the job's own fraction stands for them.
 */
function stepOf(take: Pick<Take, 'text' | 'unit'>, fraction: number): number {
  const { text } = take;
  if (take.unit === 'deg') return 0;
  const decimals = /[.,](\d+)/.exec(text)?.[1]?.length ?? 0;
  // Whole millimetres and plain inches are nearly all there is; only the rest is worth reading again.
  const parsed = decimals === 0 && (take.unit === 'mm' || take.unit === 'in') ? null : parseLength(text, take.unit);
  const unit = parsed?.ok ? parsed.unit : take.unit;
  const imperial = unit === 'in' || unit === 'ft';
  if (decimals === 0) return imperial ? INCH / fraction : Math.min(UNIT_MM[unit], COARSEST_STEP);
  const written = parsed?.ok && parsed.parts.form === 'feet-inches' ? 'in' : unit;
  return Math.min(UNIT_MM[written] * 10 ** -decimals, COARSEST_STEP);
}

/**
 * The standard deviation of one take before anything is adjusted, in mm (radians for a lean). What the take states itself
 * comes first. A step coarser than 1/16 in adds the spread of even rounding, step / sqrt(12).
 * @param fraction the finest mark the job writes inches in
 * @param practised how many times as wide as usual the person read a sheet of paper; never below 1, and nothing to an angle
 */
export function sigmaOf(
  reading: Pick<SheetReading, 'kind'>,
  take: Pick<Take, 'text' | 'unit' | 'value' | 'sigma'>,
  who: Pick<Who, 'role'>,
  instruments: Instruments = defaultInstruments,
  fraction = 16,
  practised = 1,
): number {
  if (take.sigma !== null) return take.sigma;
  const hand = reading.kind === 'lean' ? 1 : Math.max(1, practised);
  const sigma = spreadOf(reading.kind, take.value, who.role, instruments) * hand;
  const step = stepOf(take, fraction);
  return step > STEP_INSIDE ? Math.hypot(sigma, step / Math.sqrt(12)) : sigma;
}
