import type { Point3 } from '../geometry/index.ts';

/**
 * A value worked out from places, and how it changes as each of them moves: its gradient, one vector a place, in the order
 * the places were given. `smooth`: false where it has no derivative (two places that coincide, an arm along the other).
 */
export interface Amount {
  readonly value: number;
  readonly gradient: readonly Point3[];
  readonly smooth: boolean;
}

const minus = (a: Point3, b: Point3): Point3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const plus = (a: Point3, b: Point3): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const times = (by: number, a: Point3): Point3 => [by * a[0], by * a[1], by * a[2]];
const dot = (a: Point3, b: Point3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Point3, b: Point3): Point3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Point3): number => Math.hypot(...a);
const NONE: Point3 = [0, 0, 0];

/** As seen from above. */
export const onPlan = ([x, y]: Point3): Point3 => [x, y, 0];

/** Straight from one place to another. */
export function straight(a: Point3, b: Point3): Amount {
  const way = minus(b, a);
  const value = size(way);
  if (value === 0) return { value, gradient: [NONE, NONE], smooth: false };
  return { value, gradient: [times(-1 / value, way), times(1 / value, way)], smooth: true };
}

/** How much higher the second place lies than the first. */
export const rise = (a: Point3, b: Point3): Amount => ({
  value: b[2] - a[2],
  gradient: [
    [0, 0, -1],
    [0, 0, 1],
  ],
  smooth: true,
});

/** Straight from place to place through all of them; closed: and back to the first. */
export function pathLength(places: readonly Point3[], closed = false): Amount {
  const gradient = places.map(() => NONE);
  let [value, smooth] = [0, places.length > 1];
  const last = closed ? places.length : places.length - 1;
  for (let i = 0; i < last; i++) {
    const j = (i + 1) % places.length;
    const leg = straight(places[i] ?? NONE, places[j] ?? NONE);
    value += leg.value;
    // Two places in one are no leg: nothing lies between them that could err.
    smooth &&= leg.smooth;
    gradient[i] = plus(gradient[i] ?? NONE, leg.gradient[0] ?? NONE);
    gradient[j] = plus(gradient[j] ?? NONE, leg.gradient[1] ?? NONE);
  }
  return { value, gradient, smooth };
}

/**
 * The area inside a closed line on x and y, which must not cross itself: half the sum of x(i) (y(i+1) - y(i-1)), the
 * surveyor's formula (B. Braden, College Mathematics Journal 17 (1986) 326-337; from memory). Above zero where the line
 * runs to the left, seen from above.
 */
export function areaInside(corners: readonly Point3[]): Amount {
  const [origin = NONE] = corners;
  const count = corners.length;
  const at = (i: number): Point3 => minus(corners[(i + count) % count] ?? NONE, origin);
  let twice = 0;
  const gradient = corners.map((_, i): Point3 => {
    const [before, here, after] = [at(i - 1), at(i), at(i + 1)];
    twice += here[0] * (after[1] - before[1]);
    return [(after[1] - before[1]) / 2, (before[0] - after[0]) / 2, 0];
  });
  return { value: twice / 2, gradient, smooth: true };
}

/**
 * The angle between two arms at a corner, rad, 0 to pi. By the arctangent of the cross over the dot product, which keeps its
 * digits at any angle (W. Kahan, "How futile are mindless assessments of roundoff", 2006; from memory).
 */
export function angleAt(arm: Point3, corner: Point3, other: Point3): Amount {
  const [u, v] = [minus(arm, corner), minus(other, corner)];
  const normal = cross(u, v);
  const [area, along] = [size(normal), dot(u, v)];
  const value = Math.atan2(area, along);
  if (area === 0) return { value, gradient: [NONE, NONE, NONE], smooth: false };
  // An arm's end moves the angle when it moves square to the arm, in the plane of both: by 1 over its length.
  const unit = times(1 / area, normal);
  const byArm = times(1 / dot(u, u), cross(u, unit));
  const byOther = times(1 / dot(v, v), cross(unit, v));
  return { value, gradient: [byArm, times(-1, plus(byArm, byOther)), byOther], smooth: true };
}

/** Whether a closed line on x and y crosses itself; sides that only meet at a corner do not. */
export function crossesItself(corners: readonly Point3[]): boolean {
  const count = corners.length;
  const side = (i: number): [Point3, Point3] => [corners[i] ?? NONE, corners[(i + 1) % count] ?? NONE];
  for (let i = 0; i < count; i++)
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (cross2(side(i), side(j))) return true;
    }
  return false;
}

function cross2([a, b]: [Point3, Point3], [c, d]: [Point3, Point3]): boolean {
  const turn = (p: Point3, q: Point3, r: Point3): number =>
    (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}
