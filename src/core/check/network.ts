import { defaultSigma, type Network, type NetworkPoint, type NetworkReading, type Side } from '../adjust/index.ts';
import { onPlane, type Plane, planeOf } from '../geometry/index.ts';
import { agreement, FACT_KINDS, type SheetPoint, type SheetReading, type SheetRun, type Take } from '../job/index.ts';
import { type Context, countingTakes, isMeasured, type Measured } from './context.ts';

const SIDES: ReadonlySet<string> = new Set<Side>(['port', 'starboard', 'forward', 'aft', 'above', 'below']);

/**
 * The sheet of a piece as the engine takes it: what was measured in the piece's own space, each reading once. A flat piece
 * is handed over lying down: where it hangs on the boat, the two axes it hangs along stand for the engine's x and y.
 */
export function networkOf(context: Context, pieceId: string): Network {
  const { sheet } = context;
  const flat = context.pieces.get(pieceId)?.flat ?? false;
  const known = knownPoints(context, pieceId);
  const all = sheet.points.filter(({ pieces }) => pieces.includes(pieceId));
  const plane = flat ? planeOf(all.flatMap(({ nominal }) => (nominal ? [nominal] : []))) : null;
  const own = new Set(all.map(({ id }) => id));
  // Pieces on one boat share marks: what was read between shared points in another piece holds here too.
  const speaksOf = ({ piece, points, via = [], baseline = [] }: SheetReading): boolean =>
    piece === pieceId ||
    (baseline.length + points.length > 1 && [...points, ...via, ...baseline].every((id) => own.has(id)));
  const things = thingsOf(context, pieceId);
  const taken = sheet.readings.flatMap((reading): NetworkReading[] => {
    const { kind } = reading;
    if (kind === 'size' || !isMeasured(reading) || !belongs(reading, flat) || !speaksOf(reading)) return [];
    // A thing in the way follows the shape; it never bends it, nor leaves it waiting for one more tape.
    if (!reading.needed && reading.points.some((id) => things.has(id))) return [];
    return [networkReading(context, reading, kind, plane)];
  });
  const readings = withoutIdle(taken, movedMarks(context), flat ? 2 : 3);
  const used = new Set(readings.flatMap((reading) => [...reading.points, ...(reading.baseline ?? [])]));
  const neighbours = neighboursOf(context, pieceId);
  const points = all
    .filter((point) => used.has(point.id) || known.has(point.id))
    .map((point) => networkPoint(point, known.has(point.id), neighbours.get(point.id) ?? [], plane));
  return { dimension: flat ? 2 : 3, points, readings };
}

/** Points that are the middle of a thing in the way of the piece. */
export const thingsOf = ({ sheet }: Context, pieceId: string): ReadonlySet<string> =>
  new Set(sheet.obstructions.flatMap(({ piece, point }) => (piece === pieceId && point !== null ? [point] : [])));

/** Marks that are not where they were: what was read at them holds for the old place. */
const movedMarks = ({ sheet }: Context): ReadonlySet<string> =>
  new Set(sheet.points.flatMap(({ id, replacedBy }) => (replacedBy === null ? [] : [id])));

/**
 * A mark that was moved before enough was read at it says nothing about any other point: as many readings as it has
 * coordinates only place the mark itself. They are left out, or the whole piece would wait for a mark nobody can tape to.
 */
function withoutIdle(readings: readonly NetworkReading[], moved: ReadonlySet<string>, axes: number): NetworkReading[] {
  const touches = ({ points, baseline = [] }: NetworkReading, mark: string): boolean =>
    points.includes(mark) || baseline.includes(mark);
  let left = [...readings];
  for (;;) {
    const idle = [...moved].find((mark) => {
      const count = left.filter((reading) => touches(reading, mark)).length;
      return count > 0 && count <= axes;
    });
    if (idle === undefined) return left;
    left = left.filter((reading) => !touches(reading, idle));
  }
}

/**
 * Fasteners along a run have no places of their own, only stations, and are checked against the whole of their run. A
 * height says nothing about where a point lies in a flat piece.
 */
export function belongs(reading: SheetReading, flat: boolean): boolean {
  if (reading.kind === 'known') return false;
  if (reading.kind === 'running' && reading.points.length < 2) return false;
  return !(flat && (reading.kind === 'height' || reading.kind === 'level' || reading.kind === 'plumb'));
}

export function networkPoint(
  point: SheetPoint,
  known: boolean,
  neighbours: readonly string[],
  plane: Plane | null,
): NetworkPoint {
  const { id, label, role } = point;
  const nominal = point.nominal && plane ? ([...onPlane(plane, point.nominal), 0] as const) : point.nominal;
  return {
    id,
    label,
    // Where a mark was before it was moved is a place like any other, and no tape reaches it.
    ...(point.replacedBy === null ? { role } : { gone: true }),
    sides: point.sides.flatMap((side) => sideOn(plane, side) ?? []),
    needed: role !== 'mark' && role !== 'obstruction',
    neighbours,
    ...(nominal ? (known ? { known: nominal } : { nominal }) : {}),
  };
}

/** What the sides of the boat are called once a piece that hangs there lies down. */
const LAID: Readonly<Record<Plane, Partial<Record<string, Side>>>> = {
  plan: { port: 'port', starboard: 'starboard', forward: 'forward', aft: 'aft' },
  side: { forward: 'forward', aft: 'aft', above: 'port', below: 'starboard' },
  end: { port: 'forward', starboard: 'aft', above: 'port', below: 'starboard' },
};

function sideOn(plane: Plane | null, side: string | undefined): Side | undefined {
  if (plane !== null) return LAID[plane][side ?? ''];
  return side !== undefined && SIDES.has(side) ? (side as Side) : undefined;
}

export function networkReading(
  context: Context,
  reading: Measured,
  kind: NetworkReading['kind'],
  plane: Plane | null,
): NetworkReading {
  const takes = countingTakes(reading);
  const agree = takesAgree(context, reading, takes);
  // Takes that contradict each other are a finding of their own; until it is settled the latest look counts.
  const last = takes.at(-1);
  const run = reading.run === undefined ? undefined : context.runs.get(reading.run);
  const { baseline, sequence } = reading;
  const value = agree || reading.supposed ? reading.value : (last?.value ?? reading.value);
  const direction = sideOn(plane, reading.toward);
  return {
    id: reading.id,
    kind,
    points: passed(reading, run),
    value: below(reading) ? -Math.abs(value) : value,
    sigma: sigmaFor(context, reading, takes),
    takes: takes.length,
    confirmed: takes.length > 1 && agree && !reading.supposed,
    ...(baseline ? { baseline } : {}),
    ...(kind === 'running' && curved(context, run) ? { shape: 'unknown' as const } : {}),
    ...(sequence === undefined ? {} : { sequence }),
    ...(reading.run === undefined ? {} : { run: reading.run }),
    ...(direction ? { direction } : {}),
    // What was typed is no hint to a slip in a value that nobody typed.
    ...(last && last.unit !== 'deg' && !reading.supposed ? { text: last.text, unit: last.unit } : {}),
  };
}

/** The points a reading passes, in order: a whole all of its run, a station along a curve those before it. */
function passed(reading: Measured, run: SheetRun | undefined): readonly string[] {
  if (reading.kind === 'girth' && run?.whole === reading.id) return run.points;
  const [first, last] = [reading.points[0], reading.points.at(-1)];
  if (reading.kind === 'running' && run && first !== undefined && last !== undefined) {
    const [from, to] = [run.points.indexOf(first), run.points.indexOf(last)];
    if (from >= 0 && to > from) return run.points.slice(from, to + 1);
  }
  return [...reading.points.slice(0, 1), ...(reading.via ?? []), ...reading.points.slice(1)];
}

/** A run whose whole length is a girth bends: its stations are then no straight distances. Without a whole it is straight. */
const curved = (context: Context, run: SheetRun | undefined): boolean =>
  context.readings.get(run?.whole ?? '')?.kind === 'girth';

/** A height below its plane is typed without a sign; over a string it has none. */
const below = ({ kind, toward, baseline }: Measured): boolean =>
  kind === 'height' && toward === 'below' && baseline?.length !== 2;

/** What a fact was declared with is its tolerance; a tape has nothing to do with it. */
function sigmaFor(context: Context, reading: Measured, takes: readonly Take[]): number {
  const stated = takes.some((take) => take.sigma !== null);
  return FACT_KINDS.has(reading.kind) && reading.kind !== 'size' && !stated
    ? defaultSigma(reading.kind, 0)
    : context.sigma(reading);
}

/** Whether the takes of a reading lie within what the tape explains of each other: of three and more, of the one in the middle. */
export function takesAgree(context: Context, reading: SheetReading, takes: readonly Take[]): boolean {
  const looks = takes.map((take) => ({ value: take.value, sigma: context.takeSigma(reading, take) }));
  return agreement(looks, context.limits.takeSigmas)?.length === takes.length;
}

function knownPoints(context: Context, pieceId: string): ReadonlySet<string> {
  return new Set(
    context.sheet.readings.flatMap((reading) =>
      reading.piece === pieceId && reading.kind === 'known' && isMeasured(reading) ? reading.points : [],
    ),
  );
}

/** What lies next to a point on the cloth: along its runs, round its boxes, and across to its mirror twin's neighbours. */
function neighboursOf(context: Context, pieceId: string): ReadonlyMap<string, string[]> {
  const found = new Map<string, string[]>();
  const join = (a: string | undefined, b: string | undefined): void => {
    if (a === undefined || b === undefined || a === b) return;
    for (const [from, to] of [[a, b] as const, [b, a] as const]) {
      const list = found.get(from);
      if (!list) found.set(from, [to]);
      else if (!list.includes(to)) list.push(to);
    }
  };
  const runs = context.sheet.runs.filter((run) => run.piece === pieceId).map((run) => run.points);
  for (const points of runs) for (const [i, point] of points.entries()) join(point, points[i + 1]);
  for (const box of context.pieces.get(pieceId)?.boxes ?? [])
    for (const [i, point] of box.entries()) join(point, box[(i + 1) % box.length]);
  return found;
}
