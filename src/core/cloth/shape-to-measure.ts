import { jointOf, type Network } from '../adjust/index.ts';
import { onPlane, type Point3, planeOf } from '../geometry/index.ts';
import type { Sheet } from '../job/index.ts';
import type { Shape } from './measure-on.ts';
import { sketchPiece } from './sketch-piece.ts';

/** What the engine came to: the network it solved, its places, and those of things in the way, which have no part in it. */
export interface Solved {
  readonly network: Network;
  readonly places: ReadonlyMap<string, Point3>;
  readonly things: ReadonlyMap<string, Point3>;
}

/**
 * The shape that is drawn, as it is measured on: in the engine's own frame where it has the shape, otherwise as it is sketched.
 * Of a flat piece the two axes of its own plane count, wherever it hangs.
 */
export function shapeToMeasure(sheet: Sheet, piece: string, solved: Solved | null): Shape {
  const flat = sheet.pieces.find(({ id }) => id === piece)?.flat ?? false;
  const layout = sheet.points.flatMap(({ id, pieces, nominal }) =>
    nominal && pieces.includes(piece) ? [[id, nominal] as const] : [],
  );
  const plane = planeOf(layout.map(([, nominal]) => nominal));
  const laid = (place: Point3): Point3 => (flat ? [...onPlane(plane, place), 0] : place);
  if (!solved) {
    const drawn = [...sketchPiece(sheet, piece).places].map(([id, place]) => [id, laid(place)] as const);
    return { sheet, piece, flat, places: new Map(drawn), joint: null };
  }
  // What nobody taped is drawn where the guide has it; the joint knows nothing of it, and says so.
  const nominal = layout.map(([id, place]) => [id, laid(place)] as const);
  const places = new Map([...nominal, ...solved.things, ...solved.places]);
  return { sheet, piece, flat, places, joint: jointOf(solved.network, solved.places) };
}
