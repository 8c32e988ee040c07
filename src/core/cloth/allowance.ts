import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import type { Point2 } from '../geometry/index.ts';

/**
 * The outline with an allowance (a hem, a trim) of `width` mm added all round, corners kept sharp where the mitre stays
 * within four widths. It is drawn beside what was measured and never replaces it. Empty for fewer than three corners.
 */
export function withAllowance(outline: readonly Point2[], width: number): Point2[] {
  if (outline.length < 3) return [];
  const path = outline.map(([x, y]) => ({ x, y }));
  const grown = inflatePathsD([counterClockwise(path)], width, JoinType.Miter, EndType.Polygon, 4, 4);
  const largest = grown.reduce<{ x: number; y: number }[]>(
    (most, one) => (Math.abs(signedArea(one)) > Math.abs(signedArea(most)) ? one : most),
    [],
  );
  return largest.map(({ x, y }): Point2 => [x, y]);
}

interface Place {
  x: number;
  y: number;
}

/** A path the other way round would be a hole, and shrink. */
const counterClockwise = (path: Place[]): Place[] => (signedArea(path) < 0 ? [...path].reverse() : path);

function signedArea(path: readonly Place[]): number {
  let twice = 0;
  let last = path.at(-1);
  for (const place of path) {
    if (last) twice += last.x * place.y - place.x * last.y;
    last = place;
  }
  return twice / 2;
}
