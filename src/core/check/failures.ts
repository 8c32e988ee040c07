import { lengthsMisfit, quadDiagonalRange, type SixLengths, triangleExcess } from '../geometry/index.ts';
import type { Context, Measured } from './context.ts';
import { foursOf, netOf, readingsOf, type Six, type Straight, trianglesOf } from './straights.ts';

/** Straights that contradict each other; weight: how many times the allowed tolerance they are apart. */
interface Failure {
  readonly straights: readonly Straight[];
  readonly weight: number;
}

/** The worst of several failures that share readings. suspect: the one reading all of them share. */
export interface Cluster<F extends Failure> {
  readonly worst: F;
  readonly failing: number;
  readonly suspect: string | null;
}

/** Three sides that do not close. Millimetres. */
export interface TriangleFailure extends Failure {
  readonly longest: Straight;
  readonly excess: number;
  readonly tolerance: number;
}

/** A box whose second diagonal cannot belong to its sides and its first. Millimetres. */
export interface BoxFailure extends Failure {
  readonly piece: string;
  readonly flat: boolean;
  readonly diagonal: Straight;
  readonly min: number;
  readonly max: number;
  readonly tolerance: number;
}

/** Four points that cannot exist. */
export interface FourFailure extends Failure {
  readonly sigmas: number;
}

interface Failures {
  readonly triangles: Cluster<TriangleFailure>[];
  readonly boxes: BoxFailure[];
  readonly fours: Cluster<FourFailure>[];
}

const found = new WeakMap<Context, Failures>();

/**
 * Contradictions among straight readings, from the simplest shape up: a reading that takes part in a failing triangle is
 * not reported again by a box, nor one in a failing box by four points.
 */
export function failuresOf(context: Context): Failures {
  const known = found.get(context);
  if (known) return known;
  const triangles = failingTriangles(context);
  const guilty = new Set(triangles.flatMap(({ straights }) => straights));
  const boxes = failingBoxes(context, guilty);
  for (const box of boxes) for (const straight of box.straights) guilty.add(straight);
  const failures = { triangles: clustered(triangles), boxes, fours: clustered(failingFours(context, guilty)) };
  found.set(context, failures);
  return failures;
}

function failingTriangles(context: Context): TriangleFailure[] {
  return trianglesOf(context).flatMap((straights): TriangleFailure[] => {
    const [a, b, c] = straights;
    const excess = triangleExcess(a.value, b.value, c.value);
    const tolerance = context.limits.stopSigmas * Math.hypot(a.sigma, b.sigma, c.sigma);
    if (excess <= tolerance) return [];
    const longest = straights.reduce((most, side) => (side.value > most.value ? side : most));
    return [{ straights, weight: excess / tolerance, longest, excess, tolerance }];
  });
}

function failingBoxes(context: Context, guilty: ReadonlySet<Straight>): BoxFailure[] {
  return context.sheet.pieces.flatMap((piece) =>
    piece.boxes.flatMap((box): BoxFailure[] => {
      const six = boxOf(context, box);
      if (!six || Object.values(six).some((straight) => guilty.has(straight))) return [];
      const failure = boxFailure(six, piece.flat, context.limits.stopSigmas);
      return failure ? [{ ...failure, piece: piece.id }] : [];
    }),
  );
}

function boxOf(context: Context, [a, b, c, d]: readonly [string, string, string, string]): Six | null {
  const { between } = netOf(context);
  const [ab, ac, ad] = [between(a, b), between(a, c), between(a, d)];
  const [bc, bd, cd] = [between(b, c), between(b, d), between(c, d)];
  return ab && ac && ad && bc && bd && cd ? { ab, ac, ad, bc, bd, cd } : null;
}

function boxFailure(six: Six, flat: boolean, sigmas: number): Omit<BoxFailure, 'piece'> | null {
  const hinge = [six.ab, six.bc, six.cd, six.ad, six.ac] as const;
  const range = rangeOf(hinge, null, 0);
  const diagonal = six.bd;
  if (!range) return null;
  const { value } = diagonal;
  // Going round a box the corners may also bend inwards; then the flat diagonal is the other end of the range.
  const nearer = value > (range.min + range.max) / 2 ? 'max' : 'min';
  const inside = value >= range.min && value <= range.max;
  if (inside && !flat) return null;
  const reach = reachOf(hinge, nearer, sigmas);
  if (reach === null) return null;
  const tolerance = Math.hypot(reach, sigmas * diagonal.sigma);
  const apart = Math.abs(value - range[nearer]);
  if (apart <= tolerance) return null;
  const bounds = flat ? { min: range[nearer], max: range[nearer] } : range;
  const straights = [diagonal, ...hinge];
  return { straights, weight: apart / tolerance, flat, diagonal, tolerance, ...bounds };
}

type Hinge = readonly [Straight, Straight, Straight, Straight, Straight];

function rangeOf(hinge: Hinge, changed: Straight | null, by: number): { min: number; max: number } | null {
  const [ab, bc, cd, da, ac] = hinge;
  const at = (straight: Straight): number => straight.value + (straight === changed ? by : 0);
  return quadDiagonalRange(at(ab), at(bc), at(cd), at(da), at(ac));
}

/**
 * How far one end of the range moves when the five lengths are off by `sigmas` of theirs, mm. Taken by moving each length
 * that far, not by its slope: where a corner is nearly straight the slope has no bound and would promise nothing.
 * Null where the shape cannot be moved at all: then nothing can be told.
 */
function reachOf(hinge: Hinge, end: 'min' | 'max', sigmas: number): number | null {
  const here = rangeOf(hinge, null, 0);
  if (!here) return null;
  let squares = 0;
  for (const straight of hinge) {
    const moved = [-1, 1].flatMap((way) => rangeOf(hinge, straight, way * sigmas * straight.sigma) ?? []);
    if (moved.length === 0) return null;
    squares += Math.max(...moved.map((range) => Math.abs(range[end] - here[end]))) ** 2;
  }
  return Math.sqrt(squares);
}

function failingFours(context: Context, guilty: ReadonlySet<Straight>): FourFailure[] {
  const limit = context.limits.stopSigmas;
  const boxes = new Set(context.sheet.pieces.flatMap((piece) => piece.boxes.map((box) => [...box].sort().join())));
  return foursOf(context).flatMap((six): FourFailure[] => {
    const straights = Object.values(six);
    if (straights.some((straight) => guilty.has(straight))) return [];
    if (boxes.has([...new Set(straights.flatMap(({ ends }) => ends))].sort().join())) return [];
    const sigmas = lengthsMisfit(numbersOf(six, 'value'), numbersOf(six, 'sigma'));
    return sigmas > limit ? [{ straights, weight: sigmas / limit, sigmas }] : [];
  });
}

const numbersOf = ({ ab, ac, ad, bc, bd, cd }: Six, part: 'value' | 'sigma'): SixLengths => ({
  ab: ab[part],
  ac: ac[part],
  ad: ad[part],
  bc: bc[part],
  bd: bd[part],
  cd: cd[part],
});

/** One slip breaks every shape its reading takes part in; the worst one speaks for all that share a reading with it. */
function clustered<F extends Failure>(failures: readonly F[]): Cluster<F>[] {
  const key = ({ straights }: F): string => idsOf(straights).sort().join();
  const sorted = [...failures].sort((a, b) => b.weight - a.weight || (key(a) < key(b) ? -1 : 1));
  const groups: { worst: F; members: F[] }[] = [];
  for (const failure of sorted) {
    const group = groups.find(({ worst }) => worst.straights.some((straight) => failure.straights.includes(straight)));
    if (group) group.members.push(failure);
    else groups.push({ worst: failure, members: [failure] });
  }
  return groups.map(({ worst, members }) => {
    const common = worst.straights.filter((straight) => members.every((member) => member.straights.includes(straight)));
    const only = common.length === 1 ? common[0]?.readings[0] : undefined;
    return { worst, failing: members.length, suspect: only?.id ?? null };
  });
}

export const idsOf = (straights: readonly Straight[]): string[] => readingsOf(straights).map(({ id }) => id);

/** The reading that stands for a straight distance: the first that gave it. */
export const firstOf = (straight: Straight): Measured | undefined => straight.readings[0];
