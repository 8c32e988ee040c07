import { aboutReading, type Context, isMeasured, type Measured, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';
import { netOf, readingsOf, type Straight } from '../straights.ts';

/**
 * A girth shorter than a chain of straights along the points it passes, by more than the tapes explain: stop. The tape on
 * the surface cannot be shorter than the string beside it. The longest chain that was taped is used.
 * numbers: girth, chords (sum), short (chords less girth), tolerance, beyond (short less tolerance).
 */
export const girthShort: Rule = {
  key: 'girth-short',
  find: (context) =>
    context.sheet.readings.flatMap((reading): Draft[] => {
      if (reading.kind !== 'girth' || !isMeasured(reading) || reading.value <= 0) return [];
      const chain = longestChain(context, pathOf(context, reading));
      if (!chain) return [];
      const short = chain.length - reading.value;
      const sigma = Math.hypot(context.sigma(reading), ...chain.straights.map((straight) => straight.sigma));
      const tolerance = context.limits.stopSigmas * sigma;
      if (short <= tolerance) return [];
      const chords = readingsOf(chain.straights);
      return [
        {
          severity: 'stop',
          piece: reading.piece,
          slot: context.slotOf(reading),
          subjects: [reading, ...chords].map(aboutReading),
          numbers: { girth: reading.value, chords: chain.length, short, tolerance, beyond: short - tolerance },
          basis: takeIds(reading, ...chords),
        },
      ];
    }),
};

/** The points a girth passes: its own, or those of the run whose whole it is. */
function pathOf(context: Context, reading: Measured): readonly string[] {
  const run = context.runs.get(reading.run ?? '');
  if (run?.whole === reading.id) return run.points;
  const [from, to] = reading.points;
  return from === undefined || to === undefined ? [] : [from, ...(reading.via ?? []), to];
}

interface Chain {
  readonly length: number;
  readonly straights: readonly Straight[];
}

/** Any chain from the first point to the last that skips some of those between is a lower bound; the longest is best. */
function longestChain(context: Context, path: readonly string[]): Chain | undefined {
  const { between } = netOf(context);
  const [start] = path;
  if (start === undefined) return undefined;
  const best: (Chain | undefined)[] = [{ length: 0, straights: [] }];
  for (const [index, point] of path.entries()) {
    if (index === 0) continue;
    for (const [before, from] of path.slice(0, index).entries()) {
      const [chain, straight] = [best[before], between(from, point)];
      if (!chain || !straight) continue;
      const length = chain.length + straight.value;
      if (length > (best[index]?.length ?? 0)) best[index] = { length, straights: [...chain.straights, straight] };
    }
  }
  return path.length > 1 ? best[path.length - 1] : undefined;
}
