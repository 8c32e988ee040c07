import { aboutReading, takeIds } from '../context.ts';
import { failuresOf } from '../failures.ts';
import type { Draft, Rule } from '../rule.ts';
import { readingsOf } from '../straights.ts';

/**
 * Six straight readings among four points that no four points in space can have, whatever the tape explains: stop. A flat
 * set is possible, so it never is. Declared boxes have their own rule; readings of a failing triangle or box are left out.
 * numbers: sigmas (standard deviations all six together must change by), limit (how many are allowed),
 * failing (sets that fail with it), suspect (id of the one reading they share, or null).
 */
export const impossibleTetrahedron: Rule = {
  key: 'impossible-tetrahedron',
  find: (context) =>
    failuresOf(context).fours.flatMap(({ worst, failing, suspect }): Draft[] => {
      const readings = readingsOf(worst.straights);
      const first = readings.find((reading) => reading.id === suspect) ?? readings.at(-1);
      if (!first) return [];
      return [
        {
          severity: 'stop',
          piece: first.piece,
          slot: context.slotOf(first),
          subjects: readings.map(aboutReading),
          numbers: { sigmas: worst.sigmas, limit: context.limits.stopSigmas, failing, suspect },
          basis: takeIds(...readings),
        },
      ];
    }),
};
