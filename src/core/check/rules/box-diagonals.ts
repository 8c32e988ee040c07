import { aboutReading, takeIds } from '../context.ts';
import { failuresOf } from '../failures.ts';
import type { Draft, Rule } from '../rule.ts';
import { readingsOf } from '../straights.ts';

/**
 * A declared box whose second diagonal cannot belong to its four sides and its first one: stop. In a flat piece the
 * diagonal must be the flat one; otherwise it must lie between the box folded shut and the box laid flat, both within four
 * standard deviations, propagated. Silent where a triangle of the box already fails.
 * Subjects: the diagonal, the four sides in order round, the other diagonal.
 * numbers: diagonal, min, max (equal when flat), tolerance, beyond (what is left outside after the tolerance),
 * shape ('flat' or 'twisted', what the piece is taken for).
 */
export const boxDiagonals: Rule = {
  key: 'box-diagonals',
  find: (context) =>
    failuresOf(context).boxes.flatMap(({ piece, flat, diagonal, min, max, tolerance, straights }): Draft[] => {
      const readings = readingsOf(straights);
      const [first] = readings;
      if (!first) return [];
      const outside = Math.max(diagonal.value - max, min - diagonal.value);
      return [
        {
          severity: 'stop',
          piece,
          slot: context.slotOf(first),
          subjects: readings.map(aboutReading),
          numbers: {
            diagonal: diagonal.value,
            min,
            max,
            tolerance,
            beyond: outside - tolerance,
            shape: flat ? 'flat' : 'twisted',
          },
          basis: takeIds(...readings),
        },
      ];
    }),
};
