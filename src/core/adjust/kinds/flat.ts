import { ix } from '../array.ts';
import { baselineOf, clear, inSpace, type Kind, needs, type Prepared } from './kind.ts';
import { doubleArea, planeDistance } from './plane.ts';

/** Declared fact: the points lie in one plane; each beyond the three that carry the plane is a row. */
export const flat: Kind = {
  unusable: (reading, dimension) => inSpace(reading, dimension) ?? needs(reading, 4, false) ?? baselineOf(reading, [0]),
  rows: (reading) => reading.points.length - 3,
  settle: carry,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, points } = prepared;
    clear(jacobian, slot, (points - 3) * points);
    for (let k = 3; k < points; k++) {
      const own = slot + (k - 3) * 3 * points;
      const on = [ix(refs, k), ix(refs, 0), ix(refs, 1), ix(refs, 2)] as const;
      computed[row + k - 3] = planeDistance(x, on, 1, jacobian, [own + 3 * k, own, own + 3, own + 6]);
    }
  },
};

/** Moves the widest triangle found by two greedy passes to the front, so that the plane is well carried. */
function carry(prepared: Prepared, x: Float64Array): void {
  const { refs, points } = prepared;
  for (let pass = 0; pass < 2; pass++) {
    for (let slot = 0; slot < 3; slot++) {
      for (let k = 3; k < points; k++) {
        const before = doubleArea(x, refs, 0, 1, 2);
        swap(refs, slot, k);
        if (doubleArea(x, refs, 0, 1, 2) <= before * (1 + 1e-9)) swap(refs, slot, k);
      }
    }
  }
}

function swap(refs: Int32Array, i: number, j: number): void {
  const held = ix(refs, i);
  refs[i] = ix(refs, j);
  refs[j] = held;
}
