import { aboutReading, takeIds } from '../context.ts';
import { failuresOf } from '../failures.ts';
import type { Draft, Rule } from '../rule.ts';
import { readingsOf } from '../straights.ts';

/**
 * Three straight readings among three points of which one is longer than the other two together, by more than the tape
 * explains (propagated, four standard deviations): stop. One slip breaks several triangles; the worst is reported.
 * The first subject is the longest side.
 * numbers: excess (longest less the others), tolerance, beyond (excess less tolerance), longest, others (their sum),
 * longestReading (id), failing (triangles that fail with it), suspect (id of the one reading they share, or null).
 */
export const impossibleTriangle: Rule = {
  key: 'impossible-triangle',
  find: (context) =>
    failuresOf(context).triangles.flatMap(({ worst, failing, suspect }): Draft[] => {
      const { longest, straights, excess, tolerance } = worst;
      const readings = readingsOf([longest, ...straights.filter((straight) => straight !== longest)]);
      const [first] = readings;
      if (!first) return [];
      return [
        {
          severity: 'stop',
          piece: first.piece,
          slot: context.slotOf(first),
          subjects: readings.map(aboutReading),
          numbers: {
            excess,
            tolerance,
            beyond: excess - tolerance,
            longest: longest.value,
            others: longest.value - excess,
            longestReading: first.id,
            failing,
            suspect,
          },
          basis: takeIds(...readings),
        },
      ];
    }),
};
