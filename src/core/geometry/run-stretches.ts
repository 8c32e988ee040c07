import { type Fastener, isOfClosure, type Sheet, type SheetRun, type Stretch } from '../job/index.ts';
import { type PlaceOf, pointsAlong, stationsAlong, stepsAlong } from './along-run.ts';

/** Within this of where one stretch ends and the next begins a place may belong to either, mm. */
const NEAR = 60;

/** The stretches of an edge in which a place along the tape may lie, by their number. Beyond the end counts as the last. */
function stretchesNear(run: SheetRun, marks: readonly number[], along: number): number[] {
  const mark = (point: string): number => marks[run.points.indexOf(point)] ?? 0;
  const last = run.stretches.length - 1;
  return run.stretches.flatMap(({ from, to }, index) =>
    (index === 0 || along >= mark(from) - NEAR) && (index === last || along <= mark(to) + NEAR) ? [index] : [],
  );
}

/**
 * The fasteners of an edge by the stretch they close, in their order. One near where two stretches meet belongs to the one
 * that is closed so. Where nobody can tell how far along it lies, it counts for every stretch that is closed so: nothing is
 * called missing that may be there.
 */
export function fastenersByStretch(
  run: SheetRun,
  sheet: Pick<Sheet, 'readings' | 'fasteners'>,
  placeOf: PlaceOf,
): Fastener[][] {
  const own = sheet.fasteners.filter((fastener) => fastener.run === run.id);
  if (run.stretches.length === 1) return [own];
  const marks = pointsAlong(run, sheet, placeOf);
  const places = new Map(stationsAlong(run, sheet).map(({ reading, along }) => [reading, along]));
  const lists = run.stretches.map((): Fastener[] => []);
  for (const fastener of own) {
    const along = places.get(fastener.reading);
    const known = marks !== null && along !== undefined;
    const may = known ? stretchesNear(run, marks, along) : [...lists.keys()];
    const alike = may.filter((index) => isClosedBy(run, index, fastener));
    const [first = 0] = [...alike, ...may];
    for (const index of known || alike.length === 0 ? [first] : alike) lists[index]?.push(fastener);
  }
  return lists;
}

function isClosedBy(run: SheetRun, index: number, { type }: Fastener): boolean {
  const closes = run.stretches[index]?.closes ?? null;
  return closes !== null && isOfClosure(type, closes);
}

/** Length of a stretch by the tape, mm; null where it cannot be told. */
export function stretchLength(
  run: SheetRun,
  sheet: Pick<Sheet, 'readings'>,
  placeOf: PlaceOf,
  { from, to }: Stretch,
): number | null {
  const whole = sheet.readings.find(({ id }) => id === run.whole)?.value ?? null;
  if (run.stretches.length === 1 && whole !== null && whole > 0) return whole;
  const steps = stepsAlong(run, sheet, placeOf).slice(run.points.indexOf(from), run.points.indexOf(to));
  const known = steps.filter((step) => step !== null);
  return known.length > 0 && known.length === steps.length ? known.reduce((sum, step) => sum + step, 0) : null;
}
