import { at, ix } from '../array.ts';
import { baselineOf, clear, type Kind, needs, put } from './kind.ts';
import { leftOffset } from './line.ts';

/** Declared fact: the points lie on the centreline (in plan), y = 0 or the line through the two baseline points. */
export const centre: Kind = {
  unusable: (reading) => needs(reading, 1, false) ?? baselineOf(reading, [0, 2]),
  rows: (reading) => reading.points.length,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, points } = prepared;
    const width = 3 * refs.length;
    clear(jacobian, slot, points * refs.length);
    for (let k = 0; k < points; k++) {
      const own = slot + k * width;
      if (refs.length === points) {
        computed[row + k] = at(x, ix(refs, k) + 1);
        put(jacobian, own + 3 * k, 0, 1, 0);
      } else {
        const on = [ix(refs, k), ix(refs, points), ix(refs, points + 1)] as const;
        const slots = [own + 3 * k, own + 3 * points, own + 3 * points + 3] as const;
        computed[row + k] = leftOffset(x, on, 1, jacobian, slots);
      }
    }
  },
};
