import type { Sheet, SheetReading, SheetRun } from '../job/index.ts';
import { distance, type Point3, pointAlong } from './points.ts';

export type PlaceOf = (point: string) => Point3 | undefined;

/** A fastener or a measured place along an edge. along: mm by the tape from the edge's first point. */
export interface RunStation {
  readonly reading: string;
  readonly number: number;
  readonly along: number;
}

/** Where the guide expects the points: good enough to tell one part of an edge from another, never evidence. */
export function nominalPlaces({ points }: Pick<Sheet, 'points'>): PlaceOf {
  const places = new Map(points.map(({ id, nominal }) => [id, nominal ?? undefined]));
  return (point) => places.get(point);
}

type Readings = Pick<Sheet, 'readings'>;

/**
 * The stations of an edge that have a place, in their order. Gap to gap each goes on from the one before, so that one that
 * was not measured leaves those after it without a place.
 */
export function stationsAlong(run: SheetRun, sheet: Readings): RunStation[] {
  const values = new Map(sheet.readings.map(({ id, value }) => [id, value]));
  const found: RunStation[] = [];
  let reach = 0;
  for (const [index, reading] of run.stations.entries()) {
    const value = values.get(reading) ?? null;
    if (value === null || value < 0) {
      if (run.manner === 'gaps') break;
      continue;
    }
    reach += value;
    found.push({ reading, number: index + 1, along: run.manner === 'gaps' ? reach : value });
  }
  return found;
}

/** A whole further than this from the sum of its parts is a slip of its own, and no reason to shift what lies between. */
const LIKELY = 1.5;

/**
 * Lengths by the tape from each point of an edge to the next, mm; null where one cannot be told. Between two points their
 * straight distance counts, as taped or from their places; the whole, which follows the edge, is shared out in proportion
 * once all of them are known.
 */
export function stepsAlong(run: SheetRun, sheet: Readings, placeOf: PlaceOf): (number | null)[] {
  const straights = new Map(sheet.readings.flatMap(pairOf));
  const steps = run.points.slice(1).map((to, index) => {
    const from = run.points[index] ?? '';
    return straights.get(keyOf(from, to)) ?? between(placeOf(from), placeOf(to));
  });
  const known = steps.filter((step) => step !== null);
  const total = known.reduce((sum, step) => sum + step, 0);
  const whole = sheet.readings.find(({ id }) => id === run.whole)?.value ?? 0;
  if (known.length < steps.length || whole < total / LIKELY || whole > total * LIKELY) return steps;
  return known.map((step) => (total > 0 ? step * (whole / total) : step));
}

/** How far along the tape each point of an edge lies, mm from the first; null where that cannot be told. */
export function pointsAlong(run: SheetRun, sheet: Readings, placeOf: PlaceOf): number[] | null {
  const marks = [0];
  for (const step of stepsAlong(run, sheet, placeOf)) {
    if (step === null) return null;
    marks.push((marks.at(-1) ?? 0) + step);
  }
  return marks;
}

const keyOf = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

function pairOf({ kind, points: [a, b], value }: SheetReading): [string, number][] {
  if (kind !== 'straight' || a === undefined || b === undefined || value === null || value <= 0) return [];
  return [[keyOf(a, b), value]];
}

const between = (a: Point3 | undefined, b: Point3 | undefined): number | null => (a && b ? distance(a, b) : null);

/** Where a distance by the tape comes to lie: on the straight between the two points of the edge that it lies between, never off its ends. */
export function placeAlong(
  run: Pick<SheetRun, 'points'>,
  marks: readonly number[],
  placeOf: PlaceOf,
  along: number,
): Point3 | undefined {
  const last = run.points.length - 1;
  const next = marks.findIndex((mark, index) => index > 0 && along <= mark);
  const to = next < 0 ? last : next;
  const [a, b] = [placeOf(run.points[to - 1] ?? ''), placeOf(run.points[to] ?? '')];
  const [start, end] = [marks[to - 1] ?? 0, marks[to] ?? 0];
  if (!a || !b) return undefined;
  const share = end > start ? (along - start) / (end - start) : 0;
  return pointAlong([a, b], distance(a, b) * share);
}
