import { depthOff, offPlane, type Plane, type Point2, type Point3, planeOf } from '../geometry/index.ts';
import type { Sheet } from '../job/index.ts';

/**
 * Places the engine has, as the guide's layout lies in the boat: those of a flat piece come lying down and are hung up where
 * the layout hangs. Not turned as a drawing is.
 */
export function inTheBoat(
  { pieces, points }: Pick<Sheet, 'pieces' | 'points'>,
  pieceId: string,
  adjusted: ReadonlyMap<string, Point3>,
): Map<string, [number, number, number]> {
  const flat = pieces.find(({ id }) => id === pieceId)?.flat ?? false;
  const layout = new Map(
    points.flatMap(({ id, pieces: of, nominal }) => (nominal && of.includes(pieceId) ? [[id, nominal] as const] : [])),
  );
  const plane = planeOf([...layout.values()]);
  return new Map(
    [...adjusted].map(([id, place]) => [
      id,
      flat ? hung(plane, place, layout.get(id)) : [place[0], place[1], place[2]],
    ]),
  );
}

/** Hung up where its layout hangs; the readings do not say how deep it lies. */
export function hung(plane: Plane, [u, v]: Point2 | Point3, layout?: Point3): [number, number, number] {
  const [x, y, z] = offPlane(plane, [u, v], depthOff(plane, layout ?? [0, 0, 0]));
  return [x, y, z];
}
