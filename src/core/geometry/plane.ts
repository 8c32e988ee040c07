import type { Point2, Point3 } from './points.ts';

/** The boat's plane in which a flat piece lies: as seen from above, from the side, or from an end of the boat. */
export type Plane = 'plan' | 'side' | 'end';

/** Its two axes, and the one square to it. */
const AXES: Readonly<Record<Plane, readonly [number, number, number]>> = {
  plan: [0, 1, 2],
  side: [0, 2, 1],
  end: [1, 2, 0],
};
/** A layout hangs where it is this many times higher than it is deep. */
const UPRIGHT = 3;

/** The plane in which places lie or nearly lie; plan unless they hang. */
export function planeOf(places: readonly Point3[]): Plane {
  // Two places lie in many planes; only a third shows how a piece hangs.
  if (places.length < 3) return 'plan';
  const [x, y, z] = [0, 1, 2].map((axis) => spread(places.map((place) => place[axis] ?? 0))) as [
    number,
    number,
    number,
  ];
  if (Math.min(x, y) * UPRIGHT >= z) return 'plan';
  return y <= x ? 'side' : 'end';
}

const spread = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);

/** A place's two coordinates in a plane. */
export function onPlane(plane: Plane, place: Point3): Point2 {
  const [u, v] = AXES[plane];
  return [place[u] ?? 0, place[v] ?? 0];
}

/** The place in the boat at two coordinates in a plane, that far off it. */
export function offPlane(plane: Plane, [u, v]: Point2, off = 0): Point3 {
  const [first, second, third] = AXES[plane];
  const place: [number, number, number] = [0, 0, 0];
  place[first] = u;
  place[second] = v;
  place[third] = off;
  return place;
}

/** How far a place is off a plane through the boat's origin. */
export const depthOff = (plane: Plane, place: Point3): number => place[AXES[plane][2]] ?? 0;

/** Names of the two axes of a plane, of the three of space without one. */
export const axesOf = (plane: Plane | null): readonly ('x' | 'y' | 'z')[] =>
  plane === null ? ['x', 'y', 'z'] : AXES[plane].slice(0, 2).map((axis) => (['x', 'y', 'z'] as const)[axis] ?? 'x');

/** From where the face of a layout is seen: from above, or at what hangs square from outside. */
export type Face = 'plan' | 'port' | 'starboard' | 'astern' | 'ahead';

/** The face of a layout: from above unless it hangs; then from that side or end of the boat on which it hangs. */
export function faceOf(places: readonly Point3[]): Face {
  const plane = planeOf(places);
  const mean = (axis: 0 | 1): number => places.reduce((sum, place) => sum + place[axis], 0) / places.length;
  if (plane === 'side') return mean(1) < 0 ? 'starboard' : 'port';
  if (plane === 'end') return mean(0) > 0 ? 'ahead' : 'astern';
  return 'plan';
}

const SEEN: Readonly<Record<Face, (place: Point3) => Point2>> = {
  plan: ([x, y]) => [-y, x],
  port: ([x, , z]) => [-x, z],
  starboard: ([x, , z]) => [x, z],
  astern: ([, y, z]) => [-y, z],
  ahead: ([, y, z]) => [y, z],
};

/** A place as it is seen: to the right, and up. */
export const seenAs = (face: Face, place: Point3): Point2 => SEEN[face](place);

const UNSEEN: Readonly<Record<Face, (right: number, up: number) => Point3>> = {
  plan: (right, up) => [up, -right, 0],
  port: (right, up) => [-right, 0, up],
  starboard: (right, up) => [right, 0, up],
  astern: (right, up) => [0, -right, up],
  ahead: (right, up) => [0, right, up],
};

/** The place in the plane of a face that is seen so far to the right and up; how deep it lies cannot be seen. */
export const seenFrom = (face: Face, [right, up]: Point2): Point3 => UNSEEN[face](right, up);
