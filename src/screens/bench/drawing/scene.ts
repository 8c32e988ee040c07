import { shownPlaces } from '../../../core/check/index.ts';
import {
  type PieceSketch,
  type Place,
  runPlaces,
  type Station,
  sketchPiece,
  stationsOn,
} from '../../../core/cloth/index.ts';
import { extentOf, offPlane, planeOf } from '../../../core/geometry/index.ts';
import type { Sheet, SheetReading, SheetRun } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { pointLabel } from '../../model/words.ts';
import { type Flat, ground, nameSpot } from '../../parts/drawing/project.ts';
import { readingValue } from '../names.ts';
import { type EngineView, floatingOf, type Solution } from '../state/engine-view.ts';
import type { Lit } from '../state/lit.ts';
import { type Label, type Patch, placeLabels, type Wish } from './labels.ts';
import type { Marked } from './marked.ts';
import { type Oval, ovalsOf } from './ovals.ts';
import { heightsOf, type Spot, withNames } from './spot-names.ts';
import { type Frame, isTurned, projectionOf } from './views.ts';

/** A dimension on the drawing: a line between points, or along an edge. */
export interface Line {
  reading: SheetReading;
  along: Flat[];
  /** Along an edge, which is drawn anyway. */
  edge: boolean;
}

/** A piece ready to be drawn, px. */
export interface Scene {
  lines: Line[];
  edges: { run: SheetRun; along: Flat[] }[];
  stations: { station: Station; run: string; at: Flat }[];
  boxes: Flat[][];
  things: { id: string; point: string; at: Flat; radius: number; clear: number }[];
  uprights: [Flat, Flat][];
  spots: Spot[];
  labels: Label[];
  /** Values without room. */
  hidden: number;
  /** How sure the points are, enlarged by `factor`. */
  ovals: Oval[];
  factor: number;
}

export interface Shown {
  lit: Lit;
  marked: Marked;
  engine: EngineView | null;
}

export function makeScene(
  sheet: Sheet,
  piece: string,
  drawn: PieceSketch,
  frame: Frame,
  { lit, marked, engine }: Shown,
): Scene {
  const flatPiece = sheet.pieces.find(({ id }) => id === piece)?.flat ?? false;
  const { to, scale } = projectionOf(drawn, frame, flatPiece);
  const flat = (ids: readonly string[]): Flat[] =>
    ids.flatMap((id) => {
      const place = drawn.places.get(id);
      return place ? [to(place)] : [];
    });
  const runs = sheet.runs.filter((run) => run.piece === piece);
  // What is missing has a line where a finding or the person speaks of it.
  const readings = sheet.readings.filter(
    ({ id, value, piece: of }) => of === piece && (value !== null || lit.readings.has(id) || marked.readings.has(id)),
  );
  const lines = readings.flatMap((reading) => lineOf(reading, runs, flat));
  const floating = new Set(engine ? floatingOf(engine.judgement).map(({ point }) => point) : []);
  const all = spotsOf(sheet, piece, drawn, to, readings).map((spot) => ({
    ...spot,
    floats: floating.has(spot.point.id),
  }));
  const spots = withNames(all, frame.width);
  const stations = runs.flatMap((run) =>
    stationsOn(run, sheet, drawn.places).map((station) => ({ station, run: run.id, at: to(station.place) })),
  );
  const things = sheet.obstructions.flatMap(({ id, point, piece: of }) => {
    const place = of === piece ? drawn.places.get(point ?? '') : undefined;
    if (!place || point === null) return [];
    const { most, clearance } = extentOf(sheet, id);
    return [{ id, point, at: to(place), radius: Math.max(6, most * scale), clear: clearance * scale }];
  });
  const middle = middleOf(spots.map(({ at }) => at));
  const wishes = lines.flatMap((line) => wishOf(line, sheet, lit, middle, runs));
  const { labels, hidden } = placeLabels(wishes, spots.flatMap(patchesOf));
  return {
    lines,
    edges: runs.map((run) => ({ run, along: runPlaces(run, drawn.places).map(to) })),
    stations,
    boxes: (sheet.pieces.find(({ id }) => id === piece)?.boxes ?? []).map(flat),
    things,
    uprights:
      isTurned(frame.view) && !flatPiece
        ? [...drawn.places.values()].map((place): [Flat, Flat] => [to(place), to(ground(place))])
        : [],
    spots,
    labels,
    hidden: hidden + heightsOf(all) - heightsOf(spots),
    ...(isTurned(frame.view) ? { ovals: [], factor: 1 } : ovals(spots, drawn, engine, to)),
  };
}

/** The adjusted shape where the engine has one, otherwise what the readings pull the guide's layout into. */
export const sketchOf = (sheet: Sheet, piece: string, engine: EngineView | null): PieceSketch =>
  sketchPiece(sheet, piece, shownPlaces(engine));

/** Places of the points as worked out, the same way round as they are drawn. */
export const placesOf = (sheet: Sheet, piece: string, solution: Solution): PieceSketch['places'] =>
  sketchPiece(sheet, piece, new Map(solution.points.map(({ id, position }) => [id, position]))).places;

/** Only where the adjusted shape is drawn and fits: an ellipse round another place would say nothing, or too much. */
function ovals(spots: readonly Spot[], drawn: PieceSketch, engine: EngineView | null, to: (place: Place) => Flat) {
  const points = engine?.solved && !engine.bent ? (engine.shown?.points ?? []) : [];
  const at = new Map(spots.map((spot) => [spot.point.id, spot.at]));
  const plane = engine?.shown?.dimension === 2 ? planeOf([...drawn.places.values()]) : null;
  // The drawing may show x the other way round (poles that stand aft).
  const way = points.reduce((sum, { id, position }) => sum + position[0] * (drawn.places.get(id)?.[0] ?? 0), 0);
  const zero = to([0, 0, 0]);
  return ovalsOf(
    points,
    (id) => at.get(id),
    (x, y, z) => {
      const [u, v] = to(plane ? offPlane(plane, [x, y]) : [way < 0 ? -x : x, y, z]);
      return [u - zero[0], v - zero[1]];
    },
  );
}

type ToFlat = (ids: readonly string[]) => Flat[];

function lineOf(reading: SheetReading, runs: readonly SheetRun[], flat: ToFlat): Line[] {
  const run = runs.find(({ whole, id }) => whole === reading.id || id === reading.run);
  if (run?.whole === reading.id) return [{ reading, along: flat(run.points), edge: true }];
  const [from, ...rest] = reading.points;
  if ((reading.kind !== 'straight' && reading.kind !== 'girth') || from === undefined || rest.length === 0) return [];
  const along = flat([from, ...(reading.via ?? []), ...rest]);
  return along.length > 1 ? [{ reading, along, edge: false }] : [];
}

/** px a value stands off an edge, where fasteners sit; that of the whole edge stands outside the others. */
const OFF_EDGE = 16;
const OFF_WHOLE = 38;

/** A value stands on the middle part of its line; beside it where that is an edge. */
function wishOf(
  { reading, along, edge }: Line,
  sheet: Sheet,
  lit: Lit,
  middle: Flat,
  runs: readonly SheetRun[],
): Wish[] {
  const half = Math.max(1, Math.floor(along.length / 2));
  const [a, b] = along.length > 2 ? [along[half - 1], along[half]] : along;
  if (!a || !b || reading.value === null) return [];
  const off = edge ? OFF_WHOLE : runs.some((run) => isPartOf(reading, run)) ? OFF_EDGE : 0;
  const [dx, dy] = outward(a, b, middle, off);
  return [
    {
      id: reading.id,
      a: [a[0] + dx, a[1] + dy],
      b: [b[0] + dx, b[1] + dy],
      text: edge ? sayBench().plan.wholeEdge(readingValue(reading, sheet)) : readingValue(reading, sheet),
      urgent: lit.readings.has(reading.id),
    },
  ];
}

function isPartOf({ points: [from, to] }: SheetReading, { points }: SheetRun): boolean {
  const at = from === undefined ? -1 : points.indexOf(from);
  return at >= 0 && to !== undefined && (points[at + 1] === to || points[at - 1] === to);
}

/** Square to a line, away from the middle of the drawing. */
function outward(a: Flat, b: Flat, middle: Flat, by: number): Flat {
  const length = Math.max(1, Math.hypot(b[0] - a[0], b[1] - a[1]));
  const [nx, ny] = [(b[1] - a[1]) / length, -(b[0] - a[0]) / length];
  const away = ((a[0] + b[0]) / 2 - middle[0]) * nx + ((a[1] + b[1]) / 2 - middle[1]) * ny >= 0 ? by : -by;
  return [nx * away, ny * away];
}

const middleOf = (places: readonly Flat[]): Flat => {
  const mean = (axis: 0 | 1) => places.reduce((sum, at) => sum + at[axis], 0) / Math.max(1, places.length);
  return [mean(0), mean(1)];
};

function spotsOf(
  sheet: Sheet,
  piece: string,
  drawn: PieceSketch,
  to: (place: Place) => Flat,
  readings: readonly SheetReading[],
): Omit<Spot, 'floats' | 'label'>[] {
  const own = sheet.points.flatMap((point) => {
    const place = point.pieces.includes(piece) ? drawn.places.get(point.id) : undefined;
    return place ? [{ point: { ...point, label: pointLabel(sheet, point.id) }, at: to(place) }] : [];
  });
  const middle = middleOf(own.map(({ at }) => at));
  return own.map(({ point, at }) => {
    const height = readings.find((reading) => reading.kind === 'height' && reading.points[0] === point.id);
    return {
      point,
      at,
      name: nameSpot(at, middle, 20),
      height: height && height.value !== null ? readingValue(height, sheet) : null,
      heightX: 0,
      heightY: 0,
      heightReading: height?.id ?? null,
      measured: drawn.measured.has(point.id) || (height?.value ?? null) !== null,
    };
  });
}

/** The room that a point and its name take. */
function patchesOf({ at, name, height, heightY }: Spot): Patch[] {
  const patches = [
    { x: at[0], y: at[1], r: 7 },
    { x: name.x, y: name.y - 5, r: 13 },
  ];
  if (height !== null) patches.push({ x: name.x, y: heightY - 4, r: 14 });
  return patches;
}
