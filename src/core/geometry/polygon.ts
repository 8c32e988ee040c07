import type { Point2 } from './points.ts';

/**
 * Whether a place lies inside a closed line, whichever way round it runs: the winding number, counted at the sides that cross
 * the place's own level (D. Sunday, "Inclusion of a point in a polygon"). On the line itself either answer may come; who
 * needs to know asks how far the line is.
 */
export function insidePolygon(place: Point2, corners: readonly Point2[]): boolean {
  let from = corners.at(-1);
  if (!from) return false;
  let turns = 0;
  for (const to of corners) {
    const left = (to[0] - from[0]) * (place[1] - from[1]) - (place[0] - from[0]) * (to[1] - from[1]);
    if (from[1] <= place[1] && to[1] > place[1] && left > 0) turns += 1;
    if (from[1] > place[1] && to[1] <= place[1] && left < 0) turns -= 1;
    from = to;
  }
  return turns !== 0;
}

/** How far a place lies from a chain of straight pieces, mm; infinite when there is none. */
export function distanceToChain(place: Point2, chain: readonly Point2[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  let from = chain[0];
  for (const to of chain) {
    if (from) nearest = Math.min(nearest, distanceToPiece(place, from, to));
    from = to;
  }
  return nearest;
}

function distanceToPiece(place: Point2, from: Point2, to: Point2): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((place[0] - from[0]) * dx + (place[1] - from[1]) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(place[0] - from[0] - share * dx, place[1] - from[1] - share * dy);
}

/** How deep inside a closed line a place lies, mm: its distance from the line, below zero outside. */
export function depthInside(place: Point2, corners: readonly Point2[]): number {
  const [first] = corners;
  const distance = distanceToChain(place, first ? [...corners, first] : []);
  return insidePolygon(place, corners) ? distance : -distance;
}
