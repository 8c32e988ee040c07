import { at, ix } from '../array.ts';
import { put } from './kind.ts';

/**
 * Signed distance of point p from the plane through a, b, c (offsets into x), positive on the right-hand side of
 * (b - a) x (c - a), times `sign`. Writes derivatives to the four slots.
 * With N the cross product and q = (p - a) - f n: df/dp = n, df/db = (c - a) x q / |N|, df/dc = q x (b - a) / |N|.
 */
export function planeDistance(
  x: Float64Array,
  refs: readonly [number, number, number, number],
  sign: number,
  jacobian: Float64Array,
  slots: readonly [number, number, number, number],
): number {
  const [p, a, b, c] = refs;
  const n = normal(x, a, b, c);
  const wx = at(x, p) - at(x, a);
  const wy = at(x, p + 1) - at(x, a + 1);
  const wz = at(x, p + 2) - at(x, a + 2);
  const f = wx * n.x + wy * n.y + wz * n.z;
  const qx = (wx - f * n.x) / n.size;
  const qy = (wy - f * n.y) / n.size;
  const qz = (wz - f * n.z) / n.size;
  const bx = n.cy * qz - n.cz * qy;
  const by = n.cz * qx - n.cx * qz;
  const bz = n.cx * qy - n.cy * qx;
  const cx = qy * n.bz - qz * n.by;
  const cy = qz * n.bx - qx * n.bz;
  const cz = qx * n.by - qy * n.bx;
  put(jacobian, slots[0], sign * n.x, sign * n.y, sign * n.z);
  put(jacobian, slots[2], sign * bx, sign * by, sign * bz);
  put(jacobian, slots[3], sign * cx, sign * cy, sign * cz);
  put(jacobian, slots[1], -sign * (n.x + bx + cx), -sign * (n.y + by + cy), -sign * (n.z + bz + cz));
  return sign * f;
}

/** Unit normal of the plane through a, b, c, the size of the cross product, and the two edges from a. */
export function normal(x: Float64Array, a: number, b: number, c: number) {
  const bx = at(x, b) - at(x, a);
  const by = at(x, b + 1) - at(x, a + 1);
  const bz = at(x, b + 2) - at(x, a + 2);
  const cx = at(x, c) - at(x, a);
  const cy = at(x, c + 1) - at(x, a + 1);
  const cz = at(x, c + 2) - at(x, a + 2);
  const nx = by * cz - bz * cy;
  const ny = bz * cx - bx * cz;
  const nz = bx * cy - by * cx;
  const size = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1e-9;
  return { x: nx / size, y: ny / size, z: nz / size, size, bx, by, bz, cx, cy, cz };
}

/** Twice the area of the triangle of three refs. */
export const doubleArea = (x: Float64Array, refs: Int32Array, i: number, j: number, k: number): number =>
  normal(x, ix(refs, i), ix(refs, j), ix(refs, k)).size;
