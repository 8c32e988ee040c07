import { at, ix } from '../array.ts';
import { baselineOf, clear, inSpace, type Kind, needs, put } from './kind.ts';
import { lineDistance } from './line.ts';
import { normal, planeDistance } from './plane.ts';

/**
 * Square distance from a datum. No baseline: over the frame's own plane, z (a plane fixed to the boat; gravity only
 * where the job declares the boat steady). Three points: over the plane through them, up positive. Two points: from
 * the string between them, a length without a side.
 */
export const height: Kind = {
  unusable: (reading, dimension) => inSpace(reading, dimension) ?? needs(reading, 1) ?? baselineOf(reading, [0, 2, 3]),
  rows: () => 1,
  settle(prepared, x) {
    if (prepared.refs.length !== 4) return;
    const n = normal(x, ix(prepared.refs, 1), ix(prepared.refs, 2), ix(prepared.refs, 3));
    prepared.sign = n.z < 0 ? -1 : 1;
  },
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const { refs } = prepared;
    const p = ix(refs, 0);
    if (refs.length === 1) {
      computed[row] = at(x, p + 2);
      put(jacobian, slot, 0, 0, 1);
    } else if (refs.length === 3) {
      clear(jacobian, slot, 3);
      computed[row] = lineDistance(x, [p, ix(refs, 1), ix(refs, 2)], jacobian, [slot, slot + 3, slot + 6]);
    } else {
      const on = [p, ix(refs, 1), ix(refs, 2), ix(refs, 3)] as const;
      computed[row] = planeDistance(x, on, prepared.sign, jacobian, [slot, slot + 3, slot + 6, slot + 9]);
    }
  },
};
