import { at, ix } from '../array.ts';
import { baselineOf, clear, type Kind, needs, put } from './kind.ts';
import { station } from './line.ts';

/** Station of a point along a baseline, from its first point; without a baseline, the frame's x. */
export const along: Kind = {
  unusable: (reading) => needs(reading, 1) ?? baselineOf(reading, [0, 2]),
  rows: () => 1,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs } = prepared;
    const p = ix(refs, 0);
    if (refs.length === 1) {
      computed[row] = at(x, p);
      put(jacobian, slot, 1, 0, 0);
      return;
    }
    clear(jacobian, slot, 3);
    computed[row] = station(x, [p, ix(refs, 1), ix(refs, 2)], false, 1, jacobian, [slot, slot + 3, slot + 6]);
  },
};
