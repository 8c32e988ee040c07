import { aboutReading, type Context, isMeasured, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';
import { neighbours, type Station, stationsOf } from '../stations.ts';

/**
 * Cumulative stations that go back, by more than the tape explains: stop. A place given twice, or stepping back by less
 * than that: doubt. Gap-to-gap runs cannot go back.
 * Subjects: the later station, the one before it.
 * numbers: from (the one before), to, back (from less to), tolerance.
 */
export const runBackwards: Rule = {
  key: 'run-backwards',
  find: (context) =>
    context.sheet.runs
      .filter((run) => run.manner === 'cumulative')
      .flatMap((run) => neighbours(stationsOf(context, run)).flatMap((pair) => compared(context, pair))),
};

function compared(context: Context, [before, station]: readonly [Station, Station]): Draft[] {
  const [from, to] = [before.reading, station.reading];
  if (!isMeasured(from) || !isMeasured(to) || to.value > from.value) return [];
  const back = from.value - to.value;
  const tolerance = context.limits.stopSigmas * Math.hypot(context.sigma(from), context.sigma(to));
  return [
    {
      severity: back > tolerance ? 'stop' : 'doubt',
      piece: to.piece,
      slot: context.slotOf(to),
      subjects: [to, from].map(aboutReading),
      numbers: { from: from.value, to: to.value, back, tolerance },
      basis: takeIds(from, to),
    },
  ];
}
