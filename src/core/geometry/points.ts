/** A place in a plane, mm. */
export type Point2 = readonly [number, number];
/** A place in space, mm: x forward, y port, z up. */
export type Point3 = readonly [number, number, number];
export type Point = Point2 | Point3;

const heightOf = (point: Point): number => (point.length === 3 ? point[2] : 0);

/** Straight distance between two points, mm. A point of a plane lies at z = 0. */
export function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], heightOf(a) - heightOf(b));
}

/** Length of a chain of straight pieces through the points in order, mm; 0 for fewer than two points. */
export function polylineLength(points: readonly Point[]): number {
  let total = 0;
  let last: Point | undefined;
  for (const point of points) {
    if (last) total += distance(last, point);
    last = point;
  }
  return total;
}

function between(a: Point, b: Point, share: number): Point {
  const mix = (from: number, to: number) => from + (to - from) * share;
  if (a.length === 2 && b.length === 2) return [mix(a[0], b[0]), mix(a[1], b[1])];
  return [mix(a[0], b[0]), mix(a[1], b[1]), mix(heightOf(a), heightOf(b))];
}

/**
 * The place a distance (mm) along a chain of points. Before the start it is the first point and past the end the last:
 * a fastener is never drawn off its edge.
 * @throws RangeError when there are no points
 */
export function pointAlong(points: readonly Point2[], along: number): Point2;
export function pointAlong(points: readonly Point3[], along: number): Point3;
export function pointAlong(points: readonly Point[], along: number): Point {
  let last = points[0];
  if (!last) throw new RangeError('A chain needs a point');
  let left = Math.max(along, 0);
  for (const point of points.slice(1)) {
    const step = distance(last, point);
    if (step > 0 && left <= step) return between(last, point, left / step);
    left -= step;
    last = point;
  }
  return last;
}

/** Area inside a closed line that does not cross itself, mm²; whichever way round it runs. */
export function polygonArea(corners: readonly Point2[]): number {
  const [origin] = corners;
  let last = corners.at(-1);
  if (!origin || !last) return 0;
  let twice = 0;
  for (const corner of corners) {
    // Taken from the first corner, so that a small shape far from the origin keeps its digits.
    twice += (last[0] - origin[0]) * (corner[1] - origin[1]) - (corner[0] - origin[0]) * (last[1] - origin[1]);
    last = corner;
  }
  return Math.abs(twice) / 2;
}

/** Length of a closed line through the corners and back to the first, mm. */
export function polygonPerimeter(corners: readonly Point2[]): number {
  const [first] = corners;
  return first ? polylineLength([...corners, first]) : 0;
}

/** The smallest box along the axes that holds every point, mm; null when there is none. Plane points lie at z = 0. */
export function boundingBox(points: readonly Point[]): { readonly min: Point3; readonly max: Point3 } | null {
  if (points.length === 0) return null;
  const xs = points.map((point) => point[0]);
  const ys = points.map((point) => point[1]);
  const zs = points.map(heightOf);
  return {
    min: [Math.min(...xs), Math.min(...ys), Math.min(...zs)],
    max: [Math.max(...xs), Math.max(...ys), Math.max(...zs)],
  };
}
