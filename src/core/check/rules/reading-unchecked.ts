import { FACT_KINDS, type SheetReading } from '../../job/index.ts';
import { aboutReading, type Context, isMeasured, liveTakes, takeIds } from '../context.ts';
import { finishedPieces } from '../engine-parts.ts';
import { takesAgree } from '../network.ts';
import type { Rule } from '../rule.ts';

/**
 * Nothing else in the piece would show it if this reading were wrong (its redundancy number is near zero), and nobody has
 * read it twice: stop, for the cloth depends on it. A second take that agrees settles it. A plain size, such as a thickness,
 * is always so. Stations along a run and its whole length check each other and are left out. numbers: none.
 */
export const readingUnchecked: Rule = {
  key: 'reading-unchecked',
  find: (context) =>
    finishedPieces(context).flatMap(({ piece, solution }) => {
      const controls = new Map(solution.readings.map((reading) => [reading.id, reading.control]));
      return context.sheet.readings
        .filter((reading) => reading.piece === piece.id && reading.needed && isMeasured(reading))
        .filter((reading) => !FACT_KINDS.has(reading.kind) && reading.kind !== 'running' && reading.kind !== 'girth')
        .filter((reading) => (controls.get(reading.id) ?? 'unchecked') === 'unchecked')
        .filter((reading) => !readTwice(context, reading))
        .map((reading) => ({
          severity: 'stop' as const,
          piece: piece.id,
          slot: context.slotOf(reading),
          subjects: [aboutReading(reading)],
          numbers: {},
          basis: takeIds(reading),
        }));
    }),
};

function readTwice(context: Context, reading: SheetReading): boolean {
  const takes = liveTakes(reading);
  return takes.length > 1 && takesAgree(context, reading, takes);
}
