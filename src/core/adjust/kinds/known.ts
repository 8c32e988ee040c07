import { at, ix } from '../array.ts';
import { baselineOf, type Kind, needs, put } from './kind.ts';

/** One coordinate of a point, known from outside with a standard deviation (`NetworkPoint.known` has none). */
export const known: Kind = {
  unusable: (reading, dimension) =>
    needs(reading, 1) ??
    baselineOf(reading, [0]) ??
    (reading.axis === undefined ? 'known needs an axis' : undefined) ??
    (reading.axis === 'z' && dimension === 2 ? 'a flat piece has no z' : undefined),
  rows: () => 1,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { axis } = prepared.reading;
    const c = axis === 'x' ? 0 : axis === 'y' ? 1 : 2;
    computed[row] = at(x, ix(prepared.refs, 0) + c);
    put(jacobian, slot, c === 0 ? 1 : 0, c === 1 ? 1 : 0, c === 2 ? 1 : 0);
  },
};
