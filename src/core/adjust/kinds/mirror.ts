import { at, ix } from '../array.ts';
import { add, baselineOf, clear, type Kind, needs } from './kind.ts';
import { leftOffset, station } from './line.ts';

/** Declared fact: two points mirror each other over the centreline (in plan) and stand equally high. */
export const mirror: Kind = {
  unusable: (reading) => needs(reading, 2) ?? baselineOf(reading, [0, 2]),
  rows: (_reading, dimension) => dimension,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, dimension } = prepared;
    const width = 3 * refs.length;
    const p = ix(refs, 0);
    const q = ix(refs, 1);
    clear(jacobian, slot, dimension * refs.length);
    if (refs.length === 2) {
      computed[row] = at(x, p) - at(x, q);
      add(jacobian, slot, 1, 0, 0);
      add(jacobian, slot + 3, -1, 0, 0);
      computed[row + 1] = at(x, p + 1) + at(x, q + 1);
      add(jacobian, slot + width, 0, 1, 0);
      add(jacobian, slot + width + 3, 0, 1, 0);
    } else {
      const a = ix(refs, 2);
      const b = ix(refs, 3);
      computed[row] =
        station(x, [p, a, b], true, 1, jacobian, [slot, slot + 6, slot + 9]) -
        station(x, [q, a, b], true, -1, jacobian, [slot + 3, slot + 6, slot + 9]);
      const next = slot + width;
      computed[row + 1] =
        leftOffset(x, [p, a, b], 1, jacobian, [next, next + 6, next + 9]) +
        leftOffset(x, [q, a, b], 1, jacobian, [next + 3, next + 6, next + 9]);
    }
    if (dimension === 3) {
      computed[row + 2] = at(x, p + 2) - at(x, q + 2);
      add(jacobian, slot + 2 * width, 0, 0, 1);
      add(jacobian, slot + 2 * width + 3, 0, 0, -1);
    }
  },
};
