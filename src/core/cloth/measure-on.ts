import type { Joint } from '../adjust/index.ts';
import { sigmaOfReading } from '../check/index.ts';
import { outlineOf, type Point3 } from '../geometry/index.ts';
import type { Sheet, SheetRun } from '../job/index.ts';
import { type Amount, angleAt, areaInside, crossesItself, onPlan, pathLength, rise, straight } from './amounts.ts';
import { type Spot, type SpotName, slopesOf, spotOn, varianceAlong } from './spots.ts';

/**
 * A piece to measure on. places: mm; those of a flat piece in its own plane, z = 0. joint: null where the shape did not come
 * from the engine, and nobody can say how sure anything on it is.
 */
export interface Shape {
  readonly sheet: Sheet;
  readonly piece: string;
  readonly flat: boolean;
  readonly places: ReadonlyMap<string, Point3>;
  readonly joint: Joint | null;
}

/**
 * Why there is no uncertainty: the shape is not adjusted; it goes through a place that has no part in the adjustment, or that the
 * readings leave loose; they do not say how the piece lies in the boat; so short, or arms so nearly in line, that its spread
 * is no plus or minus.
 */
type Unsure = 'not-adjusted' | 'not-measured' | 'floats' | 'not-level' | 'too-small';

/** mm, mm² or rad. sigma: one standard deviation, a priori; null for the reason in `why`. */
export interface Measure {
  readonly value: number;
  readonly sigma: number | null;
  readonly why: Unsure | null;
}

/** 19 in 20 of a normal deviate lie within so many standard deviations. */
export const SIGMAS_95 = 1.959964;
/** Nearer to where it bends than so many of its standard deviations, a value no longer follows its slope. */
const CLEAR_OF_BEND = 3;

interface DistanceMeasured {
  readonly straight: Measure;
  /** Seen from above, and how much higher the second lies; null for a flat piece, which has no other length than its own. */
  readonly plan: Measure | null;
  readonly rise: Measure | null;
  /** Along the edge both lie on, straight from point to point; null where they share none. */
  readonly along: AlongMeasured | null;
}

interface AlongMeasured {
  readonly run: string;
  readonly length: Measure;
  /** What was taped between the two, where both are fasteners: it followed the edge. */
  readonly taped: Measure | null;
}

interface AreaMeasured {
  /** Corner by corner. */
  readonly points: readonly string[];
  /** The last side is no edge that anybody declared. */
  readonly open: boolean;
  /** In the plane of a flat piece, otherwise of its plan; null where the line crosses itself. */
  readonly area: Measure | null;
  readonly perimeter: Measure;
  /** Of a piece that is not flat: round it in space, straight from point to point. */
  readonly round: Measure | null;
}

/** From one spot to another; null where one has no place. */
export function measureDistance(shape: Shape, from: SpotName, to: SpotName): DistanceMeasured | null {
  const spots = spotsOn(shape, [from, to]);
  const [a, b] = spots ?? [];
  if (!spots || !a || !b) return null;
  const run = sharedRun(shape.sheet, shape.piece, from, to);
  return {
    straight: measured(shape, spots, straight(a.place, b.place), 0),
    plan: shape.flat ? null : measured(shape, spots, straight(onPlan(a.place), onPlan(b.place)), 0),
    rise: shape.flat ? null : measured(shape, spots, rise(a.place, b.place)),
    along: run ? alongRun(shape, run, from, to) : null,
  };
}

/** The whole of an edge, straight from point to point; null where a point has no place. */
export function measureRun(shape: Shape, id: string): Measure | null {
  const run = shape.sheet.runs.find((one) => one.id === id);
  const spots = run && spotsOn(shape, run.points.map(pointSpot));
  return spots && spots.length > 1 ? measured(shape, spots, pathLength(placesOf(spots)), 0) : null;
}

/** The angle at a corner between the ways to two other spots; null where one has no place, or none is left between. */
export function measureAngle(shape: Shape, arm: SpotName, corner: SpotName, other: SpotName): Measure | null {
  const spots = spotsOn(shape, [arm, corner, other]);
  const [a, b, c] = spots ?? [];
  if (!spots || !a || !b || !c) return null;
  if (straight(a.place, b.place).value === 0 || straight(b.place, c.place).value === 0) return null;
  return measured(shape, spots, angleAt(a.place, b.place, c.place), 0, Math.PI);
}

/** Area and perimeter of the line round a piece; null where it has none, or a point of it has no place. */
export function measureArea(shape: Shape): AreaMeasured | null {
  const outline = outlineOf(shape.sheet, shape.piece);
  const spots = outline && spotsOn(shape, outline.points.map(pointSpot));
  if (!outline || !spots) return null;
  const corners = placesOf(spots).map(onPlan);
  const round = (places: readonly Point3[]): Amount => pathLength(places, true);
  return {
    ...outline,
    area: crossesItself(corners) ? null : positive(measured(shape, spots, areaInside(corners))),
    perimeter: measured(shape, spots, round(corners), 0),
    round: shape.flat ? null : measured(shape, spots, round(placesOf(spots)), 0),
  };
}

const pointSpot = (id: string): SpotName => ({ on: 'point', id });

const placesOf = (spots: readonly Spot[]): Point3[] => spots.map(({ place }) => place);

const positive = (measure: Measure): Measure => ({ ...measure, value: Math.abs(measure.value) });

function spotsOn({ sheet, places }: Shape, names: readonly SpotName[]): Spot[] | null {
  const spots = names.flatMap((name) => spotOn(sheet, places, name) ?? []);
  return spots.length === names.length ? spots : null;
}

/** First-order propagation. bends: values at which the amount turns back, so that near them a plus or minus would mislead. */
function measured({ joint }: Shape, spots: readonly Spot[], amount: Amount, ...bends: readonly number[]): Measure {
  const { value, gradient } = amount;
  const unsure = (why: Unsure): Measure => ({ value, sigma: null, why });
  if (!joint) return unsure('not-adjusted');
  const variance = joint.varianceOf(slopesOf(spots, gradient));
  if (variance === 'unknown') return unsure('not-measured');
  if (variance === 'floats') return unsure('floats');
  if (variance === 'not-fixed') return unsure('not-level');
  const sigma = Math.sqrt(variance + varianceAlong(spots, gradient));
  const bent = !amount.smooth || bends.some((at) => Math.abs(value - at) < CLEAR_OF_BEND * sigma);
  return bent ? unsure('too-small') : { value, sigma, why: null };
}

/** The edge on which both lie. */
function sharedRun(sheet: Sheet, piece: string, from: SpotName, to: SpotName): SheetRun | undefined {
  const holds = (run: SheetRun, { on, id }: SpotName): boolean =>
    (on === 'point' ? run.points : run.stations).includes(id);
  return sheet.runs.find((run) => run.piece === piece && holds(run, from) && holds(run, to));
}

function alongRun(shape: Shape, run: SheetRun, from: SpotName, to: SpotName): AlongMeasured | null {
  const ends = spotsOn(shape, [from, to]);
  const whole = spotsOn(shape, run.points.map(pointSpot));
  const [a, b] = ends ?? [];
  if (!whole || !a || !b) return null;
  const way = placesOf(whole);
  const [atA, atB] = [reachOf(way, a, run, from), reachOf(way, b, run, to)];
  const [first, last, start, end] = atA <= atB ? [a, b, atA, atB] : [b, a, atB, atA];
  let reach = 0;
  const between = whole.filter((spot, i) => {
    const before = whole[i - 1];
    if (before) reach += straight(before.place, spot.place).value;
    return reach > start + SAME && reach < end - SAME;
  });
  const spots = [first, ...between, last];
  return {
    run: run.id,
    length: measured(shape, spots, pathLength(placesOf(spots)), 0),
    taped: from.on === 'station' && to.on === 'station' ? tapedBetween(shape.sheet, run, from.id, to.id) : null,
  };
}

/** mm; nearer than this to a point of the edge a spot lies at it. */
const SAME = 1e-6;

/** How far along the drawn edge a spot lies: where its two nearest points leave no way round between them. */
function reachOf(way: readonly Point3[], { place }: Spot, run: SheetRun, { on, id }: SpotName): number {
  const own = on === 'point' ? run.points.indexOf(id) : -1;
  let [reach, best, detour] = [0, 0, Number.POSITIVE_INFINITY];
  for (const [i, at] of way.entries()) {
    if (i === own) return reach;
    const next = way[i + 1];
    if (!next) break;
    const [there, on1, leg] = [straight(at, place).value, straight(place, next).value, straight(at, next).value];
    if (there + on1 - leg < detour - SAME) [detour, best] = [there + on1 - leg, reach + there];
    reach += leg;
  }
  return own >= 0 ? reach : best;
}

/** The difference of two stations from the start, or the gaps between them; each was read for itself. */
function tapedBetween(sheet: Sheet, run: SheetRun, from: string, to: string): Measure | null {
  const [a, b] = [run.stations.indexOf(from), run.stations.indexOf(to)].sort((one, other) => one - other);
  if (a === undefined || b === undefined || a === b) return null;
  const ids = run.manner === 'gaps' ? run.stations.slice(a + 1, b + 1) : [run.stations[a] ?? '', run.stations[b] ?? ''];
  const read = ids.flatMap((id) => sheet.readings.find((one) => one.id === id && one.value !== null) ?? []);
  if (read.length < ids.length) return null;
  const values = read.map(({ value }) => value ?? 0);
  const gap =
    run.manner === 'gaps' ? values.reduce((sum, value) => sum + value, 0) : (values[1] ?? 0) - (values[0] ?? 0);
  return { value: Math.abs(gap), sigma: Math.hypot(...read.map((one) => sigmaOfReading(one, sheet))), why: null };
}
