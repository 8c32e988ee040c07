import { adjust, type NetworkPoint, type PointResult, type Solution, type Vector } from '../adjust/index.ts';
import { planeOf } from '../geometry/index.ts';
import { type Context, isMeasured, type Measured } from './context.ts';
import { belongs, networkPoint, networkReading, thingsOf } from './network.ts';
import type { ThingPlace } from './piece-judgement.ts';

/**
 * Where the things in the way of a piece lie: each by its own readings, against points of the shape that are fixed. The shape
 * is taken as it is, so that a thing never bends it. One that could lie in two places lies where somebody pointed.
 */
export function placeThings(context: Context, pieceId: string, solution: Solution): Map<string, ThingPlace> {
  const placed = new Map<string, ThingPlace>();
  const shape = new Map(solution.points.map((point) => [point.id, point]));
  for (const thing of thingsOf(context, pieceId)) {
    const found = placeOf(context, pieceId, thing, shape, solution.dimension);
    if (found) placed.set(thing, found);
  }
  return placed;
}

type Shape = ReadonlyMap<string, PointResult>;

function placeOf(context: Context, pieceId: string, thing: string, shape: Shape, dimension: 2 | 3): ThingPlace | null {
  const own = context.points.get(thing);
  const readings = readingsAt(context, pieceId, thing, shape, dimension);
  if (!own || readings.length < dimension) return null;
  const flat = dimension === 2;
  const layout = context.sheet.points.filter(({ pieces }) => pieces.includes(pieceId));
  const plane = flat ? planeOf(layout.flatMap(({ nominal }) => (nominal ? [nominal] : []))) : null;
  const point = networkPoint(own, false, [], plane);
  const used = new Set(readings.flatMap(({ points, via = [], baseline = [] }) => [...points, ...via, ...baseline]));
  // All of the shape stands round it, or the mirror image over the two marks taped from would count as the same.
  const around = [...shape.values()].filter(({ id, state }) => id !== thing && state !== 'floating');
  const known = around.map(({ id, position }): NetworkPoint => ({ id, label: id, role: 'mark', known: position }));
  const adjustment = adjust({
    dimension,
    points: [point, ...known],
    readings: readings.map((reading) => networkReading(context, reading, reading.kind, plane)),
  });
  if (adjustment.state !== 'solved' && adjustment.state !== 'two-shapes') return null;
  const found = adjustment.solution.points.find(({ id }) => id === thing);
  const shapes =
    adjustment.state === 'two-shapes' ? adjustment.shapes.map(({ positions }) => positions.get(thing)) : [];
  const places = [found?.position, ...shapes].filter((place) => place !== undefined);
  const position = nearest(places, point.nominal);
  if (!found || !position) return null;
  const loose = Math.max(0, ...around.map(({ id, relative95 }) => (used.has(id) ? (relative95 ?? 0) : 0)));
  return { position, sure: (found.relative95 ?? 0) + loose };
}

type Placing = Measured & { readonly kind: 'straight' | 'along' | 'out' };

/** Readings from points of the shape that are fixed. */
function readingsAt(context: Context, pieceId: string, thing: string, shape: Shape, dimension: 2 | 3): Placing[] {
  const isFixed = (id: string): boolean => id === thing || (shape.get(id)?.state ?? 'floating') !== 'floating';
  return context.sheet.readings.filter(
    (reading): reading is Placing =>
      reading.piece === pieceId &&
      (reading.kind === 'straight' || reading.kind === 'along' || reading.kind === 'out') &&
      isMeasured(reading) &&
      reading.points.includes(thing) &&
      belongs(reading, dimension === 2) &&
      [...reading.points, ...(reading.baseline ?? [])].every(isFixed),
  );
}

/** mm; two places nearer than this to each other are one. */
const APART = 20;
/** The other place must be this many times further from where somebody pointed. */
const CLEARLY = 1.5;

function nearest(places: readonly Vector[], pointed: Vector | undefined): Vector | null {
  const [only, ...more] = places;
  if (!only) return null;
  if (more.every((place) => apart(place, only) < APART)) return only;
  if (!pointed) return null;
  const [first = only, ...others] = [...places].sort((a, b) => apart(a, pointed) - apart(b, pointed));
  const other = others.find((place) => apart(place, first) >= APART);
  return other && apart(other, pointed) > apart(first, pointed) * CLEARLY ? first : null;
}

const apart = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
