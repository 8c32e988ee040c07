import type { Point, Point2, Point3 } from './points.ts';
import { factorise, type Solver, SymmetricMatrix } from './symmetric.ts';

/** A length (mm) wanted between two points, named by their places in the list; heavier ones are met better. */
export interface SketchLink {
  readonly a: number;
  readonly b: number;
  readonly length: number;
  readonly weight: number;
}

export interface SketchOptions {
  /** Heights wanted (z in mm) of points named by their places in the list; only for points in space. */
  readonly heights?: readonly { readonly i: number; readonly z: number }[];
}

/** One list per axis: every step below works on an axis at a time. */
type Columns = readonly (readonly number[])[];

/**
 * A pull towards the nominal place that moves no measured point by more than a hair, against its weakest link. It is an
 * even power of two so that its root is exact, and a point with no other pull stays in its place to the last bit.
 */
const ANCHOR_SHARE = 2 ** -14;
/** Weights further apart than this would only cost digits. */
const WEIGHT_RANGE = 1e-6;
const MAX_ITERATIONS = 200;
/** mm; a line on a screen is thicker. */
const STILL = 1e-3;
const COINCIDENT = 1e-6;
/** Turn between successive nudges, so that no two point the same way. */
const GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

const at = (list: readonly number[] | undefined, index: number): number => list?.[index] ?? 0;

function usable(links: readonly SketchLink[], count: number): SketchLink[] {
  const inside = (index: number) => Number.isInteger(index) && index >= 0 && index < count;
  const sound = links.filter(
    ({ a, b, length, weight }) =>
      inside(a) &&
      inside(b) &&
      a !== b &&
      length >= 0 &&
      weight > 0 &&
      Number.isFinite(length) &&
      Number.isFinite(weight),
  );
  const heaviest = sound.reduce((most, link) => Math.max(most, link.weight), 0);
  return sound.map((link) => ({ ...link, weight: Math.max(link.weight / heaviest, WEIGHT_RANGE) }));
}

function anchorsOf(links: readonly SketchLink[], count: number): number[] {
  const weakest = Array.from({ length: count }, () => 1);
  for (const { a, b, weight } of links) {
    weakest[a] = Math.min(at(weakest, a), weight);
    weakest[b] = Math.min(at(weakest, b), weight);
  }
  return weakest.map((weight) => weight * ANCHOR_SHARE);
}

function gap(columns: Columns, { a, b }: SketchLink): number {
  return Math.hypot(...columns.map((column) => at(column, a) - at(column, b)));
}

/** Two linked points drawn on one spot have no direction to part in; a nudge, always the same one, gives them one. */
function parted(columns: Columns, links: readonly SketchLink[]): Columns {
  const stuck = new Set(
    links.filter((link) => link.length > 0 && gap(columns, link) < COINCIDENT).map((link) => link.b),
  );
  const nudge = [Math.cos, Math.sin, () => 0];
  return columns.map((column, axis) =>
    column.map((value, i) => (stuck.has(i) ? value + STILL * (nudge[axis]?.(GOLDEN_ANGLE * i) ?? 0) : value)),
  );
}

interface Plan {
  readonly nominal: Columns;
  readonly links: readonly SketchLink[];
  readonly anchors: readonly number[];
  /** Wanted heights with the weight of the heaviest link, by place in the list. */
  readonly heights: ReadonlyMap<number, number>;
}

function solverFor({ links, anchors, heights }: Plan, axis: number): Solver | null {
  const matrix = new SymmetricMatrix(anchors.length);
  anchors.forEach((anchor, i) => {
    matrix.add(i, i, anchor + (axis === 2 && heights.has(i) ? 1 : 0));
  });
  for (const { a, b, weight } of links) {
    matrix.add(a, a, weight);
    matrix.add(b, b, weight);
    matrix.add(a, b, -weight);
  }
  return factorise(matrix);
}

/**
 * One step of stress majorisation (the Guttman transform with the anchors and heights in it): every link pulls its ends to
 * its own length along its present direction, and all pulls are settled at once. It never raises the stress.
 */
function settled(plan: Plan, solvers: readonly Solver[], columns: Columns): Columns {
  const right = plan.nominal.map((column) => column.map((value, i) => at(plan.anchors, i) * value));
  for (const [i, z] of plan.heights) {
    const vertical = right[2];
    if (vertical) vertical[i] = at(vertical, i) + z;
  }
  for (const link of plan.links) {
    const pull = (link.weight * link.length) / Math.max(gap(columns, link), COINCIDENT);
    right.forEach((column, axis) => {
      const step = pull * (at(columns[axis], link.a) - at(columns[axis], link.b));
      column[link.a] = at(column, link.a) + step;
      column[link.b] = at(column, link.b) - step;
    });
  }
  return right.map((column, axis) => solvers[axis]?.(column) ?? column);
}

/** Places in the list that hang together by links, group by group; points without links are left out. */
function groups(links: readonly SketchLink[]): number[][] {
  const groupOf = new Map<number, number[]>();
  for (const { a, b } of links) {
    const [first, second] = [groupOf.get(a) ?? [a], groupOf.get(b) ?? [b]];
    const joined = first === second ? first : [...first, ...second];
    for (const member of joined) groupOf.set(member, joined);
  }
  return [...new Set(groupOf.values())];
}

/**
 * Turns each linked group in plan, and shifts it, to lie on its nominal places as well as it can. Links and heights do
 * not feel it; the weak anchors would get there too, but in thousands of steps.
 */
function aligned({ nominal, links, anchors }: Plan, columns: Columns): Columns {
  const result = columns.map((column) => [...column]);
  const [x, y] = columns;
  for (const group of groups(links)) {
    const mean = (column: readonly number[] | undefined) =>
      group.reduce((sum, i) => sum + at(anchors, i) * at(column, i), 0) /
      group.reduce((sum, i) => sum + at(anchors, i), 0);
    const [fromX, fromY, toX, toY] = [mean(x), mean(y), mean(nominal[0]), mean(nominal[1])];
    let [sine, cosine] = [0, 0];
    for (const i of group) {
      const [u, v] = [at(x, i) - fromX, at(y, i) - fromY];
      const [p, q] = [at(nominal[0], i) - toX, at(nominal[1], i) - toY];
      sine += at(anchors, i) * (u * q - v * p);
      cosine += at(anchors, i) * (u * p + v * q);
    }
    const turn = Math.atan2(sine, cosine);
    const [s, c] = [Math.sin(turn), Math.cos(turn)];
    for (const i of group) {
      const [u, v] = [at(x, i) - fromX, at(y, i) - fromY];
      result[0]?.splice(i, 1, toX + c * u - s * v);
      result[1]?.splice(i, 1, toY + s * u + c * v);
    }
  }
  return result;
}

function relax(plan: Plan): Columns {
  const solvers: Solver[] = [];
  for (const axis of plan.nominal.keys()) {
    const solver = solverFor(plan, axis);
    if (!solver) return plan.nominal;
    solvers.push(solver);
  }
  let columns = parted(plan.nominal, plan.links);
  for (let step = 1; step < MAX_ITERATIONS; step++) {
    const next = settled(plan, solvers, columns);
    const move = Math.max(
      ...next.flatMap((column, axis) => column.map((value, i) => Math.abs(value - at(columns[axis], i)))),
    );
    // Twice the step is still downhill (the bound is a parabola) and gets there in half the time.
    columns = next.map((column, axis) => column.map((value, i) => 2 * value - at(columns[axis], i)));
    if (!(move >= STILL)) break;
  }
  return aligned(plan, settled(plan, solvers, columns));
}

/**
 * Where to draw points while readings come in: an estimate for the eye, not an adjustment, with no claim to accuracy. Starts
 * from the nominal places (mm) and gives each link its length as well as the others allow (weighted stress majorisation,
 * SMACOF). A point without links keeps its nominal place; what the links leave open stays as nominal: the plan is only
 * turned to lie best on it, never mirrored. Always finite, also when links contradict each other, and the same for the same input.
 * Links and heights that name no point, or are no numbers, are passed over.
 */
export function sketch(nominal: readonly Point2[], links: readonly SketchLink[], options?: SketchOptions): Point2[];
export function sketch(nominal: readonly Point3[], links: readonly SketchLink[], options?: SketchOptions): Point3[];
export function sketch(nominal: readonly Point[], links: readonly SketchLink[], options: SketchOptions = {}): Point[] {
  const axes = nominal[0]?.length ?? 0;
  const sound = usable(links, nominal.length);
  const heights = (options.heights ?? []).filter(({ i, z }) => i in nominal && Number.isFinite(z));
  const columns = relax({
    nominal: Array.from({ length: axes }, (_, axis) => nominal.map((point) => at(point, axis))),
    links: sound,
    anchors: anchorsOf(sound, nominal.length),
    heights: new Map(axes === 3 ? heights.map(({ i, z }) => [i, z]) : []),
  });
  const [x, y, z] = columns;
  return nominal.map((_, i) => (z ? [at(x, i), at(y, i), at(z, i)] : [at(x, i), at(y, i)]));
}
