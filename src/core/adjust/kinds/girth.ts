import { at, ix } from '../array.ts';
import { add, baselineOf, clear, type Kind, needs, type Prepared } from './kind.ts';
import { chord } from './straight.ts';

/**
 * Tape laid on the surface through an ordered list of points. Never shorter than the sum of its chords, so without a
 * declared shape it is only a one-sided check and gives no row. Declared `straight` it is that sum; declared `arc`
 * each run of three points (first, middle, last) lies on a circle, an odd segment at the end counts as a chord.
 */
export const girth: Kind = {
  unusable: (reading) => needs(reading, 2, false) ?? baselineOf(reading, [0]),
  rows: (reading) => (reading.shape === 'straight' || reading.shape === 'arc' ? 1 : 0),
  evaluate(prepared, x, computed, row, jacobian, slot) {
    clear(jacobian, slot, prepared.refs.length);
    computed[row] =
      prepared.reading.shape === 'arc'
        ? arcsThrough(prepared, x, jacobian, slot)
        : chordsThrough(prepared, x, jacobian, slot);
  },
};

/** Sum of the chords through the reading's points, adding derivatives. */
function chordsThrough(prepared: Prepared, x: Float64Array, jacobian: Float64Array, slot: number): number {
  const { refs, points } = prepared;
  let sum = 0;
  for (let k = 0; k + 1 < points; k++) {
    sum += chord(x, ix(refs, k), ix(refs, k + 1), jacobian, slot + 3 * k, slot + 3 * k + 3, true);
  }
  return sum;
}

/** Sum of the arcs through the reading's points, adding derivatives. */
export function arcsThrough(prepared: Prepared, x: Float64Array, jacobian: Float64Array, slot: number): number {
  const { refs, points } = prepared;
  let sum = 0;
  let k = 0;
  for (; k + 2 < points; k += 2) sum += arc(x, refs, k, jacobian, slot + 3 * k);
  if (k + 1 < points) sum += chord(x, ix(refs, k), ix(refs, k + 1), jacobian, slot + 3 * k, slot + 3 * k + 3, true);
  return sum;
}

/**
 * Length of the circular arc from A through M to B: c * g / sin g, with c = |AB| and g the turn between AM and MB
 * (half the arc's angle). Derivatives go through cos g, which keeps them finite as the arc flattens.
 */
function arc(x: Float64Array, refs: Int32Array, k: number, jacobian: Float64Array, slot: number): number {
  const a = ix(refs, k);
  const m = ix(refs, k + 1);
  const b = ix(refs, k + 2);
  const p = [0, 1, 2].map((c) => at(x, m + c) - at(x, a + c));
  const q = [0, 1, 2].map((c) => at(x, b + c) - at(x, m + c));
  const [px = 0, py = 0, pz = 0] = p;
  const [qx = 0, qy = 0, qz = 0] = q;
  const lp = Math.hypot(px, py, pz);
  const lq = Math.hypot(qx, qy, qz);
  const cross = Math.hypot(py * qz - pz * qy, pz * qx - px * qz, px * qy - py * qx);
  const dot = px * qx + py * qy + pz * qz;
  const turn = Math.atan2(cross, dot);
  const c = Math.hypot(px + qx, py + qy, pz + qz);
  const sine = Math.sin(turn);
  const ratio = turn < 1e-4 ? 1 + (turn * turn) / 6 : turn / sine;
  // d(g / sin g) / d(cos g), by series where both parts vanish.
  const slope =
    turn < 1e-2 ? -(1 / 3 + (2 * turn * turn) / 15) : -(sine - turn * Math.cos(turn)) / (sine * sine * sine);
  const cosine = dot / (lp * lq);
  for (let i = 0; i < 3; i++) {
    const pi = p[i] ?? 0;
    const qi = q[i] ?? 0;
    const dc = (pi + qi) / c;
    const dp = qi / (lp * lq) - (cosine * pi) / (lp * lp);
    const dq = pi / (lp * lq) - (cosine * qi) / (lq * lq);
    const unit = (n: number): [number, number, number] => [i === 0 ? n : 0, i === 1 ? n : 0, i === 2 ? n : 0];
    add(jacobian, slot, ...unit(-ratio * dc - c * slope * dp));
    add(jacobian, slot + 3, ...unit(c * slope * (dp - dq)));
    add(jacobian, slot + 6, ...unit(ratio * dc + c * slope * dq));
  }
  return c * ratio;
}
