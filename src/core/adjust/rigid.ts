import { at } from './array.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import type { Vector } from './model.ts';

/** A rotation (row-major 3 x 3), possibly with a reflection, and what it turns about. */
export type Matrix3 = Float64Array;

/**
 * Best rotation taking vectors `from` to vectors `to` (three numbers each, already centred), least squares.
 * In a plane (`turnOnly`) about z; in space by Horn's quaternion (B. Horn 1987, closed-form absolute orientation;
 * from memory).
 */
export function bestRotation(from: Float64Array, to: Float64Array, turnOnly: boolean): Matrix3 {
  const s = new Float64Array(9);
  for (let i = 0; i + 2 < from.length; i += 3) {
    for (let a = 0; a < 3; a++) {
      for (let b = 0; b < 3; b++) s[3 * a + b] = at(s, 3 * a + b) + at(from, i + a) * at(to, i + b);
    }
  }
  const [xx, xy, xz, yx, yy, yz, zx, zy, zz] = [...s] as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  if (turnOnly) {
    const angle = Math.atan2(xy - yx, xx + yy);
    const c = Math.cos(angle);
    const sn = Math.sin(angle);
    return Float64Array.of(c, -sn, 0, sn, c, 0, 0, 0, 1);
  }
  const n = Float64Array.of(
    xx + yy + zz,
    yz - zy,
    zx - xz,
    xy - yx,
    yz - zy,
    xx - yy - zz,
    xy + yx,
    zx + xz,
    zx - xz,
    xy + yx,
    yy - xx - zz,
    yz + zy,
    xy - yx,
    zx + xz,
    yz + zy,
    zz - xx - yy,
  );
  const { vectors } = symmetricEigen(n, 4);
  const [w, x, y, z] = [0, 1, 2, 3].map((i) => at(vectors, 4 * i + 3)) as [number, number, number, number];
  return Float64Array.of(
    1 - 2 * (y * y + z * z),
    2 * (x * y - w * z),
    2 * (x * z + w * y),
    2 * (x * y + w * z),
    1 - 2 * (x * x + z * z),
    2 * (y * z - w * x),
    2 * (x * z - w * y),
    2 * (y * z + w * x),
    1 - 2 * (x * x + y * y),
  );
}

/** R (p - about) + shift for every point. */
export function transformed(
  x: Float64Array,
  rotation: Matrix3,
  about: readonly [number, number, number],
  shift: readonly [number, number, number],
): Float64Array {
  const y = new Float64Array(x.length);
  for (let i = 0; i < x.length; i += 3) {
    const a = at(x, i) - about[0];
    const b = at(x, i + 1) - about[1];
    const c = at(x, i + 2) - about[2];
    for (let r = 0; r < 3; r++) {
      y[i + r] = at(rotation, 3 * r) * a + at(rotation, 3 * r + 1) * b + at(rotation, 3 * r + 2) * c + (shift[r] ?? 0);
    }
  }
  return y;
}

export function centroid(x: Float64Array, points: readonly number[]): [number, number, number] {
  const sum: [number, number, number] = [0, 0, 0];
  for (const p of points) {
    sum[0] += at(x, 3 * p);
    sum[1] += at(x, 3 * p + 1);
    sum[2] += at(x, 3 * p + 2);
  }
  const n = Math.max(1, points.length);
  return [sum[0] / n, sum[1] / n, sum[2] / n];
}

/** Vectors of `points` from `about`, flattened. */
export function relative(x: Float64Array, points: readonly number[], about: Vector): Float64Array {
  const v = new Float64Array(3 * points.length);
  for (let i = 0; i < points.length; i++) {
    const p = 3 * (points[i] ?? 0);
    v[3 * i] = at(x, p) - about[0];
    v[3 * i + 1] = at(x, p + 1) - about[1];
    v[3 * i + 2] = at(x, p + 2) - about[2];
  }
  return v;
}

/** Sum of outer products of vectors, 3 x 3. */
export function scatter(v: Float64Array): Float64Array {
  const spread = new Float64Array(9);
  for (let i = 0; i < v.length; i += 3) {
    for (let a = 0; a < 3; a++) {
      for (let b = 0; b < 3; b++) spread[3 * a + b] = at(spread, 3 * a + b) + at(v, i + a) * at(v, i + b);
    }
  }
  return spread;
}

/** The line (plane) nearest to points, as a mirror: its unit normal and a point on it. */
export function mirrorThrough(
  x: Float64Array,
  points: readonly number[],
  dimension: 2 | 3,
): { normal: Vector; through: Vector } {
  const through = centroid(x, points);
  const spread = scatter(relative(x, points, through));
  if (dimension === 2) {
    const along = 0.5 * Math.atan2(2 * at(spread, 1), at(spread, 0) - at(spread, 4));
    return { normal: [-Math.sin(along), Math.cos(along), 0], through };
  }
  const { vectors } = symmetricEigen(spread, 3);
  return { normal: [at(vectors, 0), at(vectors, 3), at(vectors, 6)], through };
}
