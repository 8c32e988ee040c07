import { offPlane, onPlane, type Point2, planeOf, sketch } from '../geometry/index.ts';
import type { Sheet, SheetPoint, SheetReading } from '../job/index.ts';
import { hung, inTheBoat } from './in-the-boat.ts';

export type Place = readonly [number, number, number];

/** Places to draw by, mm; `measured` are the points that at least one reading holds. */
export interface PieceSketch {
  places: ReadonlyMap<string, Place>;
  measured: ReadonlySet<string>;
}

/**
 * Where to draw the points of a piece as it stands: pulled from the guide's nominal places by the readings taken so
 * far. A drawing, not an adjustment: it carries no uncertainty and nothing is cut from it. Where the engine has the shape,
 * its places are drawn instead; those of a flat piece come lying down and are hung up where the guide has it.
 */
export function sketchPiece(sheet: Sheet, pieceId: string, adjusted: ReadonlyMap<string, Place> = NONE): PieceSketch {
  const piece = sheet.pieces.find((candidate) => candidate.id === pieceId);
  const points = sheet.points.filter((point) => point.pieces.includes(pieceId) && isPlaceable(point, sheet, adjusted));
  const towards = drawnTowards(sheet, pieceId);
  const plane = planeOf(points.flatMap(({ nominal }) => (nominal ? [nominal] : [])));
  const nominal = points.map((point, i): Place => {
    const [x, y, z] = point.nominal ?? offPlane(plane, onCircle(i, points.length));
    return [towards * x, y, z];
  });
  const index = new Map(points.map((point, i) => [point.id, i]));
  const measured = new Set<string>();
  const links: { a: number; b: number; length: number; weight: number }[] = [];
  const heights: { i: number; z: number }[] = [];
  for (const reading of sheet.readings) {
    if (reading.piece !== pieceId || reading.value === null || !Number.isFinite(reading.value)) continue;
    const [first, second] = reading.points;
    const a = first === undefined ? undefined : index.get(first);
    const b = second === undefined ? undefined : index.get(second);
    if (reading.kind === 'straight' && a !== undefined && b !== undefined && a !== b && reading.value > 0) {
      // A thing in the way stands where somebody pointed until the shape places it: it pulls at no point of the cloth.
      if (points[a]?.role !== 'obstruction' && points[b]?.role !== 'obstruction')
        links.push({ a, b, length: reading.value, weight: 1 });
      for (const id of [first, second]) if (id !== undefined) measured.add(id);
    } else if (isOverFrame(reading) && a !== undefined && !piece?.flat) heights.push({ i: a, z: reading.value });
  }
  if (adjusted.size > 0) {
    const boat = inTheBoat(sheet, pieceId, adjusted);
    const placeOf = ({ id }: SheetPoint, i: number): Place => {
      const place = boat.get(id);
      return place ? [towards * place[0], place[1], place[2]] : (nominal[i] ?? [0, 0, 0]);
    };
    return { places: placesOf(points, points.map(placeOf)), measured };
  }
  const drawn = piece?.flat
    ? sketch(
        nominal.map((place) => onPlane(plane, place)),
        links,
      ).map((place, i) => hung(plane, place, nominal[i]))
    : sketch(nominal, links, { heights });
  return { places: placesOf(points, drawn), measured };
}

/** Over a string or another plane a height is no z. */
const isOverFrame = ({ kind, baseline = [] }: SheetReading): boolean => kind === 'height' && baseline.length === 0;

/** A thing in the way that nobody pointed at or taped is drawn nowhere, rather than anywhere. */
const isPlaceable = ({ id, role, nominal }: SheetPoint, { readings }: Sheet, adjusted: ReadonlyMap<string, Place>) =>
  role !== 'obstruction' ||
  nominal !== null ||
  adjusted.has(id) ||
  readings.some(({ points, value }) => value !== null && points.includes(id));

const NONE: ReadonlyMap<string, Place> = new Map();

const placesOf = (points: readonly SheetPoint[], places: readonly Place[]): Map<string, Place> =>
  new Map(points.map((point, i) => [point.id, places[i] ?? [0, 0, 0]]));

/** Which way x is drawn: the guide has the poles forward of the hardtop; over the cockpit they stand aft of it. */
export const drawnTowards = (sheet: Sheet, pieceId: string): 1 | -1 =>
  sheet.questions.some((q) => q.piece === pieceId && q.slot === 'over' && q.choice === 'cockpit') ? -1 : 1;

/** Points without a nominal place start on a circle, so that no two coincide. */
function onCircle(i: number, count: number): Point2 {
  const angle = (2 * Math.PI * i) / Math.max(1, count);
  return [1000 * Math.cos(angle), 1000 * Math.sin(angle)];
}
