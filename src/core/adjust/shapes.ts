import { at, ix } from './array.ts';
import { type Connections, connections, hingedGroups } from './connections.ts';
import type { Cofactors } from './covariance.ts';
import { reflected, settleFrame } from './frame.ts';
import type { Kind, Prepared } from './kinds/kind.ts';
import { smallInverse } from './linear/small.ts';
import type { Vector } from './model.ts';
import { type Problem, settleKinds, weightedSquare } from './problem.ts';
import type { DecidingTape, Shape, Solution } from './result.ts';
import { mirrorThrough } from './rigid.ts';
import { minimise } from './solve.ts';

/** A shape whose squares lie within this of the best fits as well: three standard deviations of one reading. */
const AS_GOOD = 9;

export interface OtherShape {
  readonly x: Float64Array;
  readonly square: number;
  readonly moved: readonly number[];
  readonly wrong: number;
}

/**
 * Looks for partial mirror images that fit as well: each point folded over the line or plane of the points it was
 * measured from, and each group over its hinge. The mirror image of the whole is no other shape here (see `frame.ts`).
 */
export function otherShapes(cf: Cofactors, solution: Solution): OtherShape[] {
  const { problem, x } = cf;
  const links = connections(problem);
  const square = weightedSquare(cf.evaluation.residual, cf.weight);
  const found: OtherShape[] = [];
  const consider = (start: Float64Array): void => {
    settleKinds(problem, start);
    const result = minimise(cf.ne, start, cf.weight, 25);
    settleKinds(problem, x);
    if (!result.converged || result.square > square + AS_GOOD) return;
    const framed = settleFrame(problem, result.x, cf.weight);
    settleKinds(problem, x);
    const moved = movedPoints(problem, x, framed.x, solution);
    if (moved.length === 0 || found.some((o) => movedPoints(problem, o.x, framed.x, solution).length === 0)) return;
    found.push({ x: framed.x, square: result.square, moved, wrong: framed.wrongSides.length });
  };
  for (let p = 0; p < problem.network.points.length; p++) {
    const start = foldPoint(cf, links, p, square);
    if (start !== undefined) consider(start);
  }
  for (const { group, hinge } of hingedGroups(links, problem.dimension)) {
    const mirror = mirrorThrough(x, hinge, problem.dimension);
    const folded = reflected(x, mirror.normal, mirror.through);
    const start = Float64Array.from(x);
    for (const p of group) if (ix(problem.nodeOf, p) >= 0) start.set(folded.subarray(3 * p, 3 * p + 3), 3 * p);
    consider(start);
  }
  return found;
}

/** Points whose distances to others differ by more than the shape's own looseness. */
function movedPoints(problem: Problem, x: Float64Array, y: Float64Array, solution: Solution): number[] {
  const count = problem.network.points.length;
  const differs = new Int32Array(count);
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      const loose = (solution.points[a]?.relative95 ?? 0) + (solution.points[b]?.relative95 ?? 0);
      if (Math.abs(span(x, a, b) - span(y, a, b)) <= Math.max(10, 2 * loose)) continue;
      differs[a] = ix(differs, a) + 1;
      differs[b] = ix(differs, b) + 1;
    }
  }
  // Whoever differs from at least half as many as the worst one is among the moved; the rest only look on.
  const worst = Math.max(0, ...differs);
  if (worst === 0) return [];
  return Array.from(differs.keys()).filter((p) => 2 * ix(differs, p) >= worst && ix(differs, p) > 0);
}

const span = (x: Float64Array, a: number, b: number): number =>
  Math.hypot(at(x, 3 * a) - at(x, 3 * b), at(x, 3 * a + 1) - at(x, 3 * b + 1), at(x, 3 * a + 2) - at(x, 3 * b + 2));

/**
 * The point folded over its partners and settled there by its own readings alone, or undefined where those already
 * say it cannot lie there (cheap, so that a live update need not refit the whole for every point).
 */
function foldPoint(cf: Cofactors, links: Connections, p: number, square: number): Float64Array | undefined {
  const { problem, x } = cf;
  if (ix(problem.nodeOf, p) < 0 || cf.floating.has(p)) return undefined;
  const partners = [...(links.partners[p] ?? [])];
  if (partners.length < problem.dimension) return undefined;
  const mirror = mirrorThrough(x, partners, problem.dimension);
  const start = Float64Array.from(x);
  start.set(reflected(x, mirror.normal, mirror.through).subarray(3 * p, 3 * p + 3), 3 * p);
  if (span3(start, x, p) < 10) return undefined;
  const own = links.readingsOf[p] ?? [];
  const before = ownSquare(cf, own, x);
  let after = Number.POSITIVE_INFINITY;
  for (let pass = 0; pass < 6; pass++) {
    const last = after;
    after = stepPoint(cf, own, p, start);
    if (span3(start, x, p) < 10) return undefined;
    // Half as good as before is still on its way down; less is as low as it gets.
    if (after > 0.5 * last) break;
  }
  // The others can still give a little, so the bound is loose.
  return after < before + square + 40 * AS_GOOD && span3(start, x, p) >= 10 ? start : undefined;
}

const span3 = (a: Float64Array, b: Float64Array, p: number): number =>
  Math.hypot(at(a, 3 * p) - at(b, 3 * p), at(a, 3 * p + 1) - at(b, 3 * p + 1), at(a, 3 * p + 2) - at(b, 3 * p + 2));

function ownSquare(cf: Cofactors, own: readonly number[], x: Float64Array): number {
  return accumulate(cf, own, -1, x).square;
}

/** One Gauss-Newton step of point p alone; returns the squares of its readings before the step. */
function stepPoint(cf: Cofactors, own: readonly number[], p: number, x: Float64Array): number {
  const n = cf.problem.dimension;
  const { square, matrix, gradient } = accumulate(cf, own, p, x);
  const inverse = smallInverse(matrix, n);
  if (inverse === undefined) return square;
  for (let a = 0; a < n; a++) {
    let step = 0;
    for (let b = 0; b < n; b++) step -= at(inverse, a * n + b) * at(gradient, b);
    x[3 * p + a] = at(x, 3 * p + a) + Math.max(-500, Math.min(500, step));
  }
  return square;
}

const SCRATCH_ROWS = 64;

function accumulate(cf: Cofactors, own: readonly number[], p: number, x: Float64Array) {
  const { problem, weight } = cf;
  const n = problem.dimension;
  const matrix = new Float64Array(n * n);
  const gradient = new Float64Array(n);
  let square = 0;
  let computed = new Float64Array(SCRATCH_ROWS);
  let jacobian = new Float64Array(SCRATCH_ROWS * 12);
  for (const i of own) {
    const prepared = problem.prepared[i] as Prepared;
    const first = ix(problem.rowStart, i);
    const rows = ix(problem.rowStart, i + 1) - first;
    const width = 3 * prepared.refs.length;
    if (rows > computed.length) computed = new Float64Array(rows);
    if (rows * width > jacobian.length) jacobian = new Float64Array(rows * width);
    (problem.kinds[i] as Kind).evaluate(prepared, x, computed, 0, jacobian, 0);
    for (let r = 0; r < rows; r++) {
      const w = at(weight, first + r);
      const v = at(computed, r) - at(problem.observed, first + r);
      square += w * v * v;
      for (let k = 0; k < prepared.refs.length; k++) {
        if (ix(prepared.refs, k) !== 3 * p) continue;
        for (let a = 0; a < n; a++) {
          const ja = at(jacobian, r * width + 3 * k + a);
          gradient[a] = at(gradient, a) + w * v * ja;
          for (let b = 0; b < n; b++) {
            matrix[a * n + b] = at(matrix, a * n + b) + w * ja * at(jacobian, r * width + 3 * k + b);
          }
        }
      }
    }
  }
  return { square, matrix, gradient };
}

/** The solution's shape and the others in the words of a result, with the tapes that tell them apart. */
export function describeShapes(
  problem: Problem,
  x: Float64Array,
  square: number,
  others: readonly OtherShape[],
): { shapes: Shape[]; tellsApart: DecidingTape[] } {
  const idOf = (p: number): string => problem.network.points[p]?.id ?? '';
  const positions = (y: Float64Array): ReadonlyMap<string, Vector> =>
    new Map(problem.network.points.map((p, i) => [p.id, [at(y, 3 * i), at(y, 3 * i + 1), at(y, 3 * i + 2)]]));
  const shapes: Shape[] = [
    { moved: [], positions: positions(x), weightedSquare: square },
    ...others.map((o) => ({ moved: o.moved.map(idOf), positions: positions(o.x), weightedSquare: o.square })),
  ];
  return { shapes, tellsApart: decidingTapes(problem, [x, ...others.map((o) => o.x)], 3) };
}

/**
 * Straight readings not yet taken on which the given shapes disagree, best first: those that part most shapes by most,
 * for their length.
 */
export function decidingTapes(problem: Problem, shapes: readonly Float64Array[], wanted: number): DecidingTape[] {
  const count = problem.network.points.length;
  const taken = new Set<number>();
  for (const { reading, refs } of problem.prepared) {
    if (reading.kind !== 'straight') continue;
    const [a, b] = [ix(refs, 0) / 3, ix(refs, 1) / 3];
    taken.add(Math.min(a, b) * count + Math.max(a, b));
  }
  const scored: { tape: DecidingTape; score: number }[] = [];
  const gone = (p: number): boolean => problem.network.points[p]?.gone === true;
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      if (taken.has(a * count + b) || gone(a) || gone(b)) continue;
      const predicted = shapes.map((x) => span(x, a, b));
      const sorted = [...predicted].sort((m, n) => m - n);
      const gaps = sorted.slice(1).map((v, i) => v - (sorted[i] ?? 0));
      const told = gaps.filter((g) => g >= 10);
      if (told.length === 0) continue;
      const longest = sorted.at(-1) ?? 0;
      scored.push({
        tape: { from: problem.network.points[a]?.id ?? '', to: problem.network.points[b]?.id ?? '', predicted },
        score: (told.length * Math.min(...told, 300)) / (1500 + longest),
      });
    }
  }
  scored.sort((m, n) => n.score - m.score);
  return scored.slice(0, wanted).map((s) => s.tape);
}
