import { at, ix } from '../array.ts';
import { baselineOf, clear, type Kind, needs, put } from './kind.ts';
import { leftOffset, lineDistance } from './line.ts';

/**
 * Offset of a point square to a baseline. With a declared direction it is signed and taken in plan (a flat piece, or
 * square across with the height read apart); without one it is the distance from the line. No baseline: frame y.
 */
export const out: Kind = {
  unusable: (reading) => needs(reading, 1) ?? baselineOf(reading, [0, 2]),
  rows: () => 1,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs, reading } = prepared;
    const p = ix(refs, 0);
    if (refs.length === 1) {
      const sign = reading.direction === 'starboard' || reading.direction === 'right' ? -1 : 1;
      computed[row] = sign * at(x, p + 1);
      put(jacobian, slot, 0, sign, 0);
      return;
    }
    clear(jacobian, slot, 3);
    const on = [p, ix(refs, 1), ix(refs, 2)] as const;
    const slots = [slot, slot + 3, slot + 6] as const;
    computed[row] =
      reading.direction === undefined
        ? lineDistance(x, on, jacobian, slots)
        : prepared.sign * leftOffset(x, on, prepared.sign, jacobian, slots);
  },
};
