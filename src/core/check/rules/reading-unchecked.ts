import { FACT_KINDS, type SheetPoint, type SheetReading } from '../../job/index.ts';
import { aboutReading, type Context, countingTakes, isMeasured, takeIds } from '../context.ts';
import { finishedPieces } from '../engine-parts.ts';
import { belongs, takesAgree } from '../network.ts';
import type { Draft, Rule } from '../rule.ts';
import { stationsOf } from '../stations.ts';

/**
 * Nothing else in the piece would show it if this reading were wrong (its redundancy number is near zero), and nobody has
 * read it twice: stop, for the cloth depends on it. A second take that agrees settles it. A plain size, such as a thickness,
 * is always so, and a girth along which no fasteners were measured. Stations along a run and its whole length check each
 * other and are left out. Nor is anything said of what was read at a mark before it was moved, where no point rests on it;
 * where one does, it wants a tape from elsewhere.
 * numbers: moved (label of the mark that was moved since, or null), now (label of the one in its place, or null).
 */
export const readingUnchecked: Rule = {
  key: 'reading-unchecked',
  find: (context) => [
    ...finishedPieces(context).flatMap(({ piece, solution, judgement }) => {
      const wholes = measuredAlong(context);
      const used = new Set(judgement.network.readings.map(({ id }) => id));
      const controls = new Map(solution.readings.map((reading) => [reading.id, reading.control]));
      return context.sheet.readings
        .filter((reading) => reading.piece === piece.id && reading.needed && isMeasured(reading))
        .filter((reading) => !FACT_KINDS.has(reading.kind) && reading.kind !== 'running' && !wholes.has(reading.id))
        .filter((reading) => (controls.get(reading.id) ?? 'unchecked') === 'unchecked')
        .filter((reading) => !readTwice(context, reading))
        .filter((reading) => used.has(reading.id) || !(belongs(reading, piece.flat) && movedMark(context, reading)))
        .map((reading) => unchecked(context, reading));
    }),
    ...sizesAlone(context).map((reading) => unchecked(context, reading)),
  ],
};

/** Of a piece that has plain sizes only, once all are taken: no shape is computed that could be finished. */
function sizesAlone(context: Context): SheetReading[] {
  return context.sheet.pieces.flatMap(({ id }) => {
    const needed = context.sheet.readings.filter((reading) => reading.piece === id && reading.needed);
    if (needed.some(({ kind, state }) => kind !== 'size' || state === 'open')) return [];
    return needed.filter((reading) => isMeasured(reading) && !readTwice(context, reading));
  });
}

const unchecked = (context: Context, reading: SheetReading): Draft => ({
  severity: 'stop',
  piece: reading.piece,
  slot: context.slotOf(reading),
  subjects: [aboutReading(reading)],
  numbers: movedLabels(context, reading),
  basis: takeIds(reading),
});

/** Whole lengths of edges along which something was measured. */
function measuredAlong(context: Context): ReadonlySet<string> {
  const along = context.sheet.runs.filter((run) => stationsOf(context, run).some(({ reading }) => isMeasured(reading)));
  return new Set(along.flatMap(({ whole }) => whole ?? []));
}

function readTwice(context: Context, reading: SheetReading): boolean {
  const takes = countingTakes(reading);
  return takes.length > 1 && takesAgree(context, reading, takes);
}

/** The mark a reading was taken at that was moved since. */
const movedMark = (context: Context, { points, baseline = [] }: SheetReading): SheetPoint | null =>
  [...points, ...baseline].flatMap((id) => context.points.get(id) ?? []).find(({ replacedBy }) => replacedBy) ?? null;

function movedLabels(context: Context, reading: SheetReading): Record<'moved' | 'now', string | null> {
  const mark = movedMark(context, reading);
  return { moved: mark?.label ?? null, now: context.points.get(mark?.replacedBy ?? '')?.label ?? null };
}
