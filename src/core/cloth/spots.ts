import type { Slopes } from '../adjust/index.ts';
import { sigmaOfReading } from '../check/index.ts';
import type { Point3 } from '../geometry/index.ts';
import type { Sheet, SheetReading, SheetRun } from '../job/index.ts';
import { type Station, stationsOn } from './stations.ts';

/** What can be measured from on a drawing: a point, or a fastener or measured place on an edge, by its reading. */
export interface SpotName {
  readonly on: 'point' | 'station';
  readonly id: string;
}

/**
 * A place on the shape and what moves it. byPoint: by each point it hangs on, three rows of its derivative; byReading: by the
 * readings that say how far along its edge it lies, with the spread of each.
 */
export interface Spot {
  readonly place: Point3;
  readonly byPoint: ReadonlyMap<string, readonly [Point3, Point3, Point3]>;
  readonly byReading: readonly { readonly reading: string; readonly slope: Point3; readonly sigma: number }[];
}

type Places = ReadonlyMap<string, Point3>;

const ITSELF = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
] as const;

/** The edge a station lies on. */
const runOf = (sheet: Sheet, station: string): SheetRun | undefined =>
  sheet.runs.find(({ stations }) => stations.includes(station));

/** Where something lies on the shape; null where it has no place. */
export function spotOn(sheet: Sheet, places: Places, { on, id }: SpotName): Spot | null {
  if (on === 'point') {
    const place = places.get(id);
    return place ? { place, byPoint: new Map([[id, ITSELF]]), byReading: [] } : null;
  }
  const run = runOf(sheet, id);
  const place = run && stationPlace(run, sheet, places, id);
  if (!run || !place) return null;
  return { place, byPoint: movedByPoints(run, sheet, places, id), byReading: movedByReadings(run, sheet, places, id) };
}

const stationPlace = (run: SheetRun, sheet: Sheet, places: Places, reading: string): Point3 | undefined =>
  stationsOn(run, sheet, places).find((station: Station) => station.reading === reading)?.place;

/** mm either way: so little that a drawing goes straight there, so much that doubles keep seven digits of the slope. */
const STEP = 0.01;

/** Central differences of the very place that is drawn, so that whatever rule shares out the tape is followed. */
function movedByPoints(run: SheetRun, sheet: Sheet, places: Places, reading: string): Spot['byPoint'] {
  const found = new Map<string, readonly [Point3, Point3, Point3]>();
  for (const id of new Set(run.points)) {
    const at = places.get(id);
    if (!at) continue;
    const columns = ([0, 1, 2] as const).map((axis) =>
      slopeOf((by) => stationPlace(run, sheet, new Map([...places, [id, shifted(at, axis, by)]]), reading)),
    );
    const row = (c: 0 | 1 | 2): Point3 => [columns[0]?.[c] ?? 0, columns[1]?.[c] ?? 0, columns[2]?.[c] ?? 0];
    found.set(id, [row(0), row(1), row(2)]);
  }
  return found;
}

/** From the start only its own reading says where a station lies, gap to gap all of those before it too. */
function movedByReadings(run: SheetRun, sheet: Sheet, places: Places, station: string): Spot['byReading'] {
  const upTo = run.stations.slice(0, run.stations.indexOf(station) + 1);
  const ids = run.manner === 'gaps' ? upTo : upTo.slice(-1);
  return ids.flatMap((id) => {
    const reading = sheet.readings.find((one) => one.id === id);
    if (!reading || reading.value === null) return [];
    const slope = slopeOf((by) => stationPlace(run, withValue(sheet, reading, by), places, station));
    return [{ reading: id, slope, sigma: sigmaOfReading(reading, sheet) }];
  });
}

const withValue = (sheet: Sheet, reading: SheetReading, by: number): Sheet => ({
  ...sheet,
  readings: sheet.readings.map((one) => (one === reading ? { ...one, value: (one.value ?? 0) + by } : one)),
});

function shifted(place: Point3, axis: 0 | 1 | 2, by: number): Point3 {
  const moved: [number, number, number] = [...place];
  moved[axis] += by;
  return moved;
}

function slopeOf(place: (by: number) => Point3 | undefined): Point3 {
  const [before, after] = [place(-STEP), place(STEP)];
  if (!before || !after) return [0, 0, 0];
  const slope = (c: 0 | 1 | 2): number => (after[c] - before[c]) / (2 * STEP);
  return [slope(0), slope(1), slope(2)];
}

/** How a value moves with the points its spots hang on. */
export function slopesOf(spots: readonly Spot[], gradient: readonly Point3[]): Slopes {
  const slopes = new Map<string, Point3>();
  for (const [i, { byPoint }] of spots.entries()) {
    const g = gradient[i] ?? [0, 0, 0];
    for (const [id, rows] of byPoint) {
      const before = slopes.get(id) ?? [0, 0, 0];
      const by = (c: 0 | 1 | 2): number => before[c] + g[0] * rows[0][c] + g[1] * rows[1][c] + g[2] * rows[2][c];
      slopes.set(id, [by(0), by(1), by(2)]);
    }
  }
  return slopes;
}

/** The variance that the readings along edges bring in; none of them has a part in the shape. */
export function varianceAlong(spots: readonly Spot[], gradient: readonly Point3[]): number {
  const moved = new Map<string, { slope: number; sigma: number }>();
  for (const [i, { byReading }] of spots.entries()) {
    const g = gradient[i] ?? [0, 0, 0];
    for (const { reading, slope, sigma } of byReading) {
      const own = g[0] * slope[0] + g[1] * slope[1] + g[2] * slope[2];
      moved.set(reading, { slope: (moved.get(reading)?.slope ?? 0) + own, sigma });
    }
  }
  return [...moved.values()].reduce((sum, { slope, sigma }) => sum + (slope * sigma) ** 2, 0);
}
