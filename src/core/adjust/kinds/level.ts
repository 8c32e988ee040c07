import { at, ix } from '../array.ts';
import { add, baselineOf, clear, inSpace, type Kind, needs } from './kind.ts';

/** Declared fact: the points stand equally high over the frame's plane as the first of them. */
export const level: Kind = {
  unusable: (reading, dimension) => inSpace(reading, dimension) ?? needs(reading, 2, false) ?? baselineOf(reading, [0]),
  rows: (reading) => reading.points.length - 1,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, points } = prepared;
    clear(jacobian, slot, (points - 1) * points);
    for (let k = 1; k < points; k++) {
      const own = slot + (k - 1) * 3 * points;
      computed[row + k - 1] = at(x, ix(refs, k) + 2) - at(x, ix(refs, 0) + 2);
      add(jacobian, own, 0, 0, -1);
      add(jacobian, own + 3 * k, 0, 0, 1);
    }
  },
};
