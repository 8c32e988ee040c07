import { at, ix } from '../array.ts';
import { add, baselineOf, clear, inSpace, type Kind, needs } from './kind.ts';

/** Declared fact: the points stand square over the first of them, seen from the frame's plane. */
export const plumb: Kind = {
  unusable: (reading, dimension) => inSpace(reading, dimension) ?? needs(reading, 2, false) ?? baselineOf(reading, [0]),
  rows: (reading) => 2 * (reading.points.length - 1),
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, points } = prepared;
    clear(jacobian, slot, 2 * (points - 1) * points);
    for (let k = 1; k < points; k++) {
      for (let c = 0; c < 2; c++) {
        const r = 2 * (k - 1) + c;
        const own = slot + r * 3 * points;
        computed[row + r] = at(x, ix(refs, k) + c) - at(x, ix(refs, 0) + c);
        add(jacobian, own, c === 0 ? -1 : 0, c === 1 ? -1 : 0, 0);
        add(jacobian, own + 3 * k, c === 0 ? 1 : 0, c === 1 ? 1 : 0, 0);
      }
    }
  },
};
