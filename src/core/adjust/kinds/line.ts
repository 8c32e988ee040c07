import { at } from '../array.ts';
import { add } from './kind.ts';

/**
 * Station of p along the line from a towards b, from a; adds `factor` times its derivatives.
 * f = (p - a).u, df/dp = u, df/db = (w - f u) / L, df/da = -(both). `plan` drops heights.
 */
export function station(
  x: Float64Array,
  [p, a, b]: readonly [number, number, number],
  plan: boolean,
  factor: number,
  jacobian: Float64Array,
  [slotP, slotA, slotB]: readonly [number, number, number],
): number {
  const flat = plan ? 0 : 1;
  const bx = at(x, b) - at(x, a);
  const by = at(x, b + 1) - at(x, a + 1);
  const bz = flat * (at(x, b + 2) - at(x, a + 2));
  const length = Math.sqrt(bx * bx + by * by + bz * bz) || 1e-9;
  const wx = at(x, p) - at(x, a);
  const wy = at(x, p + 1) - at(x, a + 1);
  const wz = flat * (at(x, p + 2) - at(x, a + 2));
  const ux = bx / length;
  const uy = by / length;
  const uz = bz / length;
  const f = wx * ux + wy * uy + wz * uz;
  const tx = (wx - f * ux) / length;
  const ty = (wy - f * uy) / length;
  const tz = (wz - f * uz) / length;
  add(jacobian, slotP, factor * ux, factor * uy, factor * uz);
  add(jacobian, slotB, factor * tx, factor * ty, factor * tz);
  add(jacobian, slotA, -factor * (ux + tx), -factor * (uy + ty), -factor * (uz + tz));
  return f;
}

/** Offset of p in plan, positive to the left of the line from a to b; adds `factor` times its derivatives. */
export function leftOffset(
  x: Float64Array,
  [p, a, b]: readonly [number, number, number],
  factor: number,
  jacobian: Float64Array,
  [slotP, slotA, slotB]: readonly [number, number, number],
): number {
  const bx = at(x, b) - at(x, a);
  const by = at(x, b + 1) - at(x, a + 1);
  const length = Math.sqrt(bx * bx + by * by) || 1e-9;
  const wx = at(x, p) - at(x, a);
  const wy = at(x, p + 1) - at(x, a + 1);
  const ux = bx / length;
  const uy = by / length;
  const f = ux * wy - uy * wx;
  const tx = (wy - f * ux) / length;
  const ty = (-wx - f * uy) / length;
  add(jacobian, slotP, -factor * uy, factor * ux, 0);
  add(jacobian, slotB, factor * tx, factor * ty, 0);
  add(jacobian, slotA, factor * (uy - tx), -factor * (ux + ty), 0);
  return f;
}

/** Unsigned distance of p from the line through a and b in space; adds its derivatives. */
export function lineDistance(
  x: Float64Array,
  [p, a, b]: readonly [number, number, number],
  jacobian: Float64Array,
  [slotP, slotA, slotB]: readonly [number, number, number],
): number {
  const bx = at(x, b) - at(x, a);
  const by = at(x, b + 1) - at(x, a + 1);
  const bz = at(x, b + 2) - at(x, a + 2);
  const length = Math.sqrt(bx * bx + by * by + bz * bz) || 1e-9;
  const wx = at(x, p) - at(x, a);
  const wy = at(x, p + 1) - at(x, a + 1);
  const wz = at(x, p + 2) - at(x, a + 2);
  const along = (wx * bx + wy * by + wz * bz) / length;
  const share = along / length;
  let ex = wx - share * bx;
  let ey = wy - share * by;
  let ez = wz - share * bz;
  const f = Math.sqrt(ex * ex + ey * ey + ez * ez);
  const scale = f > 1e-9 ? 1 / f : 0;
  ex *= scale;
  ey *= scale;
  ez *= scale;
  add(jacobian, slotP, ex, ey, ez);
  add(jacobian, slotB, -share * ex, -share * ey, -share * ez);
  add(jacobian, slotA, (share - 1) * ex, (share - 1) * ey, (share - 1) * ez);
  return f;
}
