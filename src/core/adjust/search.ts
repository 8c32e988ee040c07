import { at, ix } from './array.ts';
import { widePoints } from './datum.ts';
import type { Vector } from './model.ts';
import { type NormalEquations, newNormalEquations } from './normal-equations.ts';
import { type Problem, settleKinds } from './problem.ts';
import { normalDeviate, seededRandom } from './random.ts';
import { cappedSquare, minimise, minimiseRobustly, type SolveResult } from './solve.ts';
import { type Evidence, gatherEvidence, withoutImpossible } from './start/evidence.ts';
import { classicalScaling } from './start/scaling.ts';
import { bestAmongTapes, seedSets, trilaterate } from './start/trilateration.ts';
import { chiSquareUpperQuantile } from './statistics.ts';

/** Where the search for the shape ended: the least-squares solution and the robust one it was started from. */
export interface Found {
  readonly ne: NormalEquations;
  readonly solution: SolveResult;
  /** Coordinates a gross slip has bent less; equal to the solution where readings agree. */
  readonly robust: Float64Array;
}

/**
 * Finds the shape. The first start that fits is taken at once (readings that agree leave nothing to look for);
 * otherwise every start is solved robustly, points that lie badly are set down anew among their own tapes, the solution
 * most readings agree with wins, and least squares ends there.
 */
export function findShape(
  problem: Problem,
  weight: Float64Array,
  warm: ReadonlyMap<string, Vector> | undefined,
): Found {
  const evidence = gatherEvidence(problem);
  const starts = startList(problem, evidence, warm);
  let ne: NormalEquations | undefined;
  let best: SolveResult | undefined;
  let bestCost = Number.POSITIVE_INFINITY;
  const agree = agreement(problem);
  let plain: SolveResult | undefined;
  let first = true;
  for (const make of starts) {
    const start = make();
    settleKinds(problem, start);
    ne ??= newNormalEquations(problem, widePoints(problem, start));
    const result = minimise(ne, start, weight);
    if (result.converged && result.square <= agree) return { ne, solution: result, robust: result.x };
    if (plain === undefined || result.square < plain.square) plain = result;
    for (const from of first ? [result.x, start] : [start]) {
      let robust = minimiseRobustly(ne, from, weight);
      let cost = cappedSquare(robust.evaluation, problem.sigma);
      if (cost >= bestCost * (1 - 1e-6)) continue;
      for (let pass = 0; pass < 3 && cost > agree; pass++) {
        const again = minimiseRobustly(ne, resettled(problem, evidence, robust), weight);
        const lower = cappedSquare(again.evaluation, problem.sigma);
        if (lower >= cost * (1 - 1e-6)) break;
        [robust, cost] = [again, lower];
      }
      best = robust;
      bestCost = cost;
    }
    first = false;
    // All but two readings agree: no other shape will do better.
    if (bestCost <= agree + 50) break;
  }
  ne ??= newNormalEquations(problem, []);
  const robust = best?.x ?? new Float64Array(3 * problem.network.points.length);
  settleKinds(problem, robust);
  const solution = minimise(ne, robust, weight, 1000);
  // A poor robust start may end in a worse minimum than a plain one did.
  if (plain?.converged === true && plain.square < solution.square * (1 - 1e-6)) {
    settleKinds(problem, plain.x);
    return { ne, solution: plain, robust };
  }
  return { ne, solution, robust };
}

/** The shape with every point that has a badly fitting tape set down anew where most of its own tapes agree. */
function resettled(problem: Problem, evidence: Evidence, from: SolveResult): Float64Array {
  const { residual } = from.evaluation;
  const bad = new Set<number>();
  problem.prepared.forEach((p, i) => {
    const row = ix(problem.rowStart, i);
    if (Math.abs(at(residual, row) / at(problem.sigma, row)) > 4) for (const ref of p.refs) bad.add(ref / 3);
  });
  const x = Float64Array.from(from.x);
  for (const p of bad) if (ix(problem.nodeOf, p) >= 0) x.set(bestAmongTapes(evidence, x, p), 3 * p);
  return x;
}

/** vᵀPv that readings without slips stay below 999 times in 1000; a lower bound on the freedom keeps it honest. */
function agreement(problem: Problem): number {
  const freedom = Math.max(1, problem.rows - problem.dimension * problem.pointOf.length);
  return chiSquareUpperQuantile(1e-3, freedom);
}

function startList(
  problem: Problem,
  evidence: Evidence,
  warm: ReadonlyMap<string, Vector> | undefined,
): (() => Float64Array)[] {
  const list: (() => Float64Array)[] = [];
  const { points } = problem.network;
  const layout = (of: (i: number) => Vector | undefined): Float64Array | undefined => {
    const given = points.map((p, i) => p.known ?? of(i));
    if (!given.every((v) => v !== undefined)) return undefined;
    return Float64Array.from(given.flatMap((v) => [...v]));
  };
  const warmed = warm === undefined ? undefined : layout((i) => warm.get(points[i]?.id ?? ''));
  if (warmed !== undefined) list.push(() => warmed);
  const nominal = layout((i) => points[i]?.nominal);
  if (nominal !== undefined) list.push(() => nominal);
  let sets: number[][] | undefined;
  const seeds = (k: number): number[] => {
    sets ??= seedSets(problem, evidence, 3);
    return sets[k] ?? sets[0] ?? [];
  };
  list.push(() => {
    const possible = withoutImpossible(evidence);
    if (possible === undefined) return trilaterate(problem, evidence, seeds(0));
    return trilaterate(problem, possible, seedSets(problem, possible, 1)[0] ?? []);
  });
  for (let k = 0; k < 3; k++) list.push(() => trilaterate(problem, evidence, seeds(k)));
  list.push(() => classicalScaling(problem, evidence));
  // A flat start in space is a saddle: nothing there says up or down. Shaken starts leave it.
  for (let seed = 1; seed <= 3; seed++) {
    list.push(() => shaken(problem, trilaterate(problem, evidence, seeds(0)), seed));
  }
  return list;
}

function shaken(problem: Problem, x: Float64Array, seed: number): Float64Array {
  const random = seededRandom(seed);
  let size = 0;
  for (let c = 0; c < x.length; c++) size = Math.max(size, Math.abs(at(x, c)));
  const y = Float64Array.from(x);
  problem.network.points.forEach((p, i) => {
    if (p.known !== undefined) return;
    for (let c = 0; c < problem.dimension; c++) y[3 * i + c] = at(x, 3 * i + c) + 0.15 * size * normalDeviate(random);
  });
  return y;
}
