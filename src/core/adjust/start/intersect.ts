import type { Vector } from '../model.ts';

export interface Ball {
  readonly centre: Vector;
  readonly radius: number;
}

/**
 * Both points of a plane z at given distances from two centres; where the circles miss each other, the point between
 * them that comes nearest. Radii are cut down to the plane by the height between.
 */
export function intersectCircles(a: Ball, b: Ball, z: number): Vector[] {
  const ra = Math.sqrt(Math.max(0, a.radius ** 2 - (z - a.centre[2]) ** 2));
  const rb = Math.sqrt(Math.max(0, b.radius ** 2 - (z - b.centre[2]) ** 2));
  const dx = b.centre[0] - a.centre[0];
  const dy = b.centre[1] - a.centre[1];
  const d = Math.hypot(dx, dy);
  if (d < 1e-6) return [];
  const along = (d * d + ra * ra - rb * rb) / (2 * d);
  const across = Math.sqrt(Math.max(0, ra * ra - along * along));
  const foot = [a.centre[0] + (along * dx) / d, a.centre[1] + (along * dy) / d] as const;
  const left: Vector = [foot[0] - (across * dy) / d, foot[1] + (across * dx) / d, z];
  const right: Vector = [foot[0] + (across * dy) / d, foot[1] - (across * dx) / d, z];
  return across < 1e-6 ? [left] : [left, right];
}

/** Both points at given distances from three centres, or the nearest point of their plane where they miss. */
export function intersectSpheres(a: Ball, b: Ball, c: Ball): Vector[] {
  const ab = minus(b.centre, a.centre);
  const ac = minus(c.centre, a.centre);
  const d = length(ab);
  if (d < 1e-6) return [];
  const ex = times(ab, 1 / d);
  const i = dot(ex, ac);
  const acAcross = minus(ac, times(ex, i));
  const j = length(acAcross);
  if (j < 1e-3 * length(ac) || j < 1e-6) return [];
  const ey = times(acAcross, 1 / j);
  const ez = cross(ex, ey);
  const x = (a.radius ** 2 - b.radius ** 2 + d * d) / (2 * d);
  const y = (a.radius ** 2 - c.radius ** 2 + i * i + j * j) / (2 * j) - (i / j) * x;
  const z = Math.sqrt(Math.max(0, a.radius ** 2 - x * x - y * y));
  const foot = plus(a.centre, plus(times(ex, x), times(ey, y)));
  if (z < 1e-6) return [foot];
  return [plus(foot, times(ez, z)), plus(foot, times(ez, -z))];
}

export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (a: Vector, k: number): Vector => [a[0] * k, a[1] * k, a[2] * k];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const length = (a: Vector): number => Math.sqrt(dot(a, a));
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
