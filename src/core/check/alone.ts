import { FACT_KINDS, type SheetReading } from '../job/index.ts';
import { type Context, countingTakes, isMeasured } from './context.ts';
import { finishedPieces } from './engine-parts.ts';
import { takesAgree } from './network.ts';
import { stationsOf } from './stations.ts';

/**
 * The measured readings the cloth depends on of which nothing else in the piece would show that they are wrong (their redundancy
 * number is near zero), however often they were read. A plain size is always so, and a girth along which no fasteners were
 * measured; stations along a run and its whole length check each other. used: whether the engine has the reading.
 */
export function uncheckedByOthers(context: Context): { reading: SheetReading; used: boolean; flat: boolean }[] {
  const wholes = measuredAlong(context);
  const found = finishedPieces(context).flatMap(({ piece, solution, judgement }) => {
    const used = new Set(judgement.network.readings.map(({ id }) => id));
    const controls = new Map(solution.readings.map((reading) => [reading.id, reading.control]));
    return context.sheet.readings
      .filter((reading) => reading.piece === piece.id && reading.needed && isMeasured(reading))
      .filter((reading) => !FACT_KINDS.has(reading.kind) && reading.kind !== 'running' && !wholes.has(reading.id))
      .filter((reading) => (controls.get(reading.id) ?? 'unchecked') === 'unchecked')
      .map((reading) => ({ reading, used: used.has(reading.id), flat: piece.flat }));
  });
  return [...found, ...sizesAlone(context).map((reading) => ({ reading, used: true, flat: false }))];
}

/** How many looks at a reading agree; none where they do not. */
export function agreeingLooks(context: Context, reading: SheetReading): number {
  const takes = countingTakes(reading);
  return takes.length > 1 && !takesAgree(context, reading, takes) ? 0 : takes.length;
}

/** Of a piece that has plain sizes only, once all are taken: no shape is computed that could be finished. */
function sizesAlone(context: Context): SheetReading[] {
  return context.sheet.pieces.flatMap(({ id }) => {
    const needed = context.sheet.readings.filter((reading) => reading.piece === id && reading.needed);
    if (needed.some(({ kind, state }) => kind !== 'size' || state === 'open')) return [];
    return needed.filter(isMeasured);
  });
}

/** Whole lengths of edges along which something was measured. */
function measuredAlong(context: Context): ReadonlySet<string> {
  const along = context.sheet.runs.filter((run) => stationsOf(context, run).some(({ reading }) => isMeasured(reading)));
  return new Set(along.flatMap(({ whole }) => whole ?? []));
}
