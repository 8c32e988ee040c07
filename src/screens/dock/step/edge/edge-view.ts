import { fastenersByStretch, nominalPlaces, stretchLength } from '../../../../core/geometry/index.ts';
import {
  type Fastener,
  LineMeasured,
  lacksOfStretch,
  SCREWED_CLOSURES,
  type Sheet,
  type SheetRun,
  SLIDING_CLOSURES,
  SPACED_CLOSURES,
  type Stretch,
  type StretchLack,
} from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import type { OpenJob } from '../../../model/open-job.ts';
import { adjustedPlaces } from '../../../model/sureness.ts';
import { pointLabel } from '../../../model/words.ts';

/** A stretch as the step shows it. length: mm as measured, null before that. */
export interface Part {
  readonly stretch: Stretch;
  readonly fasteners: readonly Fastener[];
  readonly lacks: readonly StretchLack[];
  readonly length: number | null;
  readonly name: string;
}

export function partsOf({ sheet, pieces }: OpenJob, run: SheetRun): Part[] {
  const lists = fastenersByStretch(run, sheet, nominalPlaces(sheet));
  const places = adjustedPlaces(pieces.get(run.piece));
  return run.stretches.map((stretch, index) => {
    const fasteners = lists[index] ?? [];
    const [from, to] = [pointLabel(sheet, stretch.from), pointLabel(sheet, stretch.to)];
    return {
      stretch,
      fasteners,
      lacks: lacksOfStretch(stretch, fasteners),
      length: stretchLength(run, sheet, (point) => places.get(point), stretch),
      name: sayEdges().between(from, to),
    };
  });
}

export type Asked = 'line' | 'closes' | 'presence' | 'into' | 'pulls' | 'setter' | 'count';

/** Set one beside the next, or straps that stand alone: there is a number of them. */
export const isCounted = ({ closes }: Stretch): boolean =>
  closes !== null && (SPACED_CLOSURES.has(closes) || closes === 'strap');
export const slides = ({ closes }: Stretch): boolean => closes !== null && SLIDING_CLOSURES.has(closes);
export const isScrewed = ({ closes }: Stretch): boolean => closes !== null && SCREWED_CLOSURES.has(closes);

/**
 * What is asked next of a stretch: only what the answer before makes necessary. What fasteners are screwed into is not asked
 * any more once they are being taped.
 */
export function askedNext(line: LineMeasured | null, { stretch, fasteners }: Part): Asked | null {
  const { closes, presence, into, pulls, setter, count } = stretch;
  if (line === null) return 'line';
  if (closes === null) return 'closes';
  if (closes === 'nothing') return null;
  const taped = fasteners.length > 0;
  if (presence === null && !taped) return 'presence';
  const planned = presence === 'planned';
  if (isScrewed(stretch) && into === null && (planned || !taped)) return 'into';
  if (slides(stretch) && pulls === null) return 'pulls';
  if (planned && setter === null) return 'setter';
  return planned && isCounted(stretch) && count === null ? 'count' : null;
}

/** A stretch whose fasteners, or whose ends, are read off the tape. */
export const isTaped = (line: LineMeasured | null, part: Part): boolean =>
  askedNext(line, part) === null &&
  part.stretch.presence !== 'planned' &&
  (isCounted(part.stretch) || slides(part.stretch));

/** The line an edge is measured to: its own, or the one answered for the whole piece. */
export function lineOf(sheet: Sheet, run: SheetRun): LineMeasured | null {
  if (run.line !== null) return run.line;
  const answered = sheet.questions.find(({ piece, slot }) => piece === run.piece && slot === 'line')?.choice;
  return LineMeasured.options.find((line) => line === answered) ?? null;
}

/** The stretch a point of the edge lies in or begins. */
export function partAt(parts: readonly Part[], run: SheetRun, point: string): Part | undefined {
  const at = run.points.indexOf(point);
  return parts.filter(({ stretch }) => run.points.indexOf(stretch.from) <= at).at(-1) ?? parts[0];
}
