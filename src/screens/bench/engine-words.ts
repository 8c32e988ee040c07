import type { Explanation, SupposedSlip } from '../../core/adjust/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { saySlips } from '../../text/findings.ts';
import { lengthText } from '../model/words.ts';
import { labelsOf, readingTitle } from './names.ts';
import type { EngineView } from './state/engine-view.ts';

const MINUS = '\u2212';

const graduation = (sheet: Sheet): number => (sheet.system === 'metric' ? 1 : 25.4 / sheet.fraction);

/** A bound, rounded up to the next mark of the job's tape: it never promises more than was worked out. */
export function boundText(mm: number, sheet: Sheet): string {
  const step = graduation(sheet);
  return lengthText(Math.ceil(mm / step - 1e-6) * step, sheet);
}

/** A place along an axis. */
export const placeText = (mm: number, sheet: Sheet): string => lengthText(mm, sheet).replace('-', MINUS);

const degrees = (rad: number): string => `${((rad * 180) / Math.PI).toFixed(2)}°`;

/** A difference with its sign, in the job's unit; an angle in degrees. */
export function differenceText(value: number, angle: boolean, sheet: Sheet): string {
  const text = angle ? degrees(Math.abs(value)) : lengthText(Math.abs(value), sheet);
  if (text === lengthText(0, sheet)) return text;
  return `${value < 0 ? MINUS : '+'}${text}`;
}

/** The same difference in millimetres and in the job's unit, as numbers are shown. */
export function exactText(value: number, angle: boolean, sheet: Sheet, signed = true): string {
  if (angle) return `${signed && value < 0 ? MINUS : ''}${degrees(Math.abs(value))}`;
  const mm = `${signed && value < 0 ? MINUS : ''}${Math.abs(value).toFixed(1)} mm`;
  const own = signed ? differenceText(value, false, sheet) : boundText(value, sheet);
  return sheet.system === 'metric' ? mm : `${mm} (${own})`;
}

export const namesOf = (readings: readonly string[], sheet: Sheet): string =>
  sayBench().list(readings.map((id) => readingTitle(sheet, id)));

/** Readings left out of what is shown, by name; empty where none are. */
export const withoutNames = ({ without }: EngineView, sheet: Sheet): string => namesOf(without, sheet);

/** One reading said to be wrong: what would fit, and what mistake that would be. */
function slipText(slip: SupposedSlip, sheet: Sheet): string {
  const words = sayBench().engine.slips;
  const kind = saySlips()[slip.kind];
  const told = words.fits(readingTitle(sheet, slip.reading), slip.valueSigma > 0, slip.wouldRead, kind);
  return slip.belongsTo ? `${told} (${words.belongs(labelsOf(sheet, slip.belongsTo))})` : told;
}

export const explanationText = ({ slips }: Explanation, sheet: Sheet): string =>
  slips.map((slip) => slipText(slip, sheet)).join('; ');

/** The name of a kind of slip, as it was stored. */
export const slipName = (kind: string): string => (saySlips() as Record<string, string | undefined>)[kind] ?? kind;
