import { at, ix } from '../array.ts';
import { baselineOf, type Kind, needs } from './kind.ts';

/** Taut tape between two points: |b - a|. */
export const straight: Kind = {
  unusable: (reading) =>
    needs(reading, 2) ??
    baselineOf(reading, [0]) ??
    (reading.points[0] === reading.points[1] ? 'straight needs two different points' : undefined),
  rows: () => 1,
  evaluate(prepared, x, computed, row, jacobian, slot) {
    const a = ix(prepared.refs, 0);
    const b = ix(prepared.refs, 1);
    computed[row] = chord(x, a, b, jacobian, slot, slot + 3, false);
  },
};

/**
 * Length of the chord from a to b (offsets into x); writes or adds its derivatives. Coincident points get the x
 * direction, so that a solver can leave the place where the length has no derivative.
 */
export function chord(
  x: Float64Array,
  a: number,
  b: number,
  jacobian: Float64Array,
  slotA: number,
  slotB: number,
  adding: boolean,
): number {
  const dx = at(x, b) - at(x, a);
  const dy = at(x, b + 1) - at(x, a + 1);
  const dz = at(x, b + 2) - at(x, a + 2);
  const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const ux = length > 1e-9 ? dx / length : 1;
  const uy = length > 1e-9 ? dy / length : 0;
  const uz = length > 1e-9 ? dz / length : 0;
  jacobian[slotA] = (adding ? at(jacobian, slotA) : 0) - ux;
  jacobian[slotA + 1] = (adding ? at(jacobian, slotA + 1) : 0) - uy;
  jacobian[slotA + 2] = (adding ? at(jacobian, slotA + 2) : 0) - uz;
  jacobian[slotB] = (adding ? at(jacobian, slotB) : 0) + ux;
  jacobian[slotB + 1] = (adding ? at(jacobian, slotB + 1) : 0) + uy;
  jacobian[slotB + 2] = (adding ? at(jacobian, slotB + 2) : 0) + uz;
  return length;
}
