import { at } from './array.ts';
import { factorise, solveInPlace } from './linear/sparse-ldl.ts';
import { assemble, moved, type NormalEquations } from './normal-equations.ts';
import { type Evaluation, evaluate, newEvaluation, weightedSquare } from './problem.ts';

export interface SolveResult {
  readonly converged: boolean;
  readonly x: Float64Array;
  /** Weighted sum of squared residuals at x. */
  readonly square: number;
  readonly iterations: number;
  readonly evaluation: Evaluation;
}

/** Pivots below this share of their diagonal count as zero: sd beyond 10^5 tape sigmas is no knowledge. */
export const PIVOT_TOLERANCE = 1e-10;

/**
 * Levenberg-Marquardt with Nielsen's damping (H. B. Nielsen, Damping parameter in Marquardt's method, IMM-REP-1999-05;
 * from memory), scaled by the diagonal. Starts as Gauss-Newton and damps only when a step fails. Directions the
 * readings say nothing about (the datum, floating points) stay where the start put them.
 *
 * @param start coordinates, mm; not changed
 * @param weight row weights; 0 leaves a row out
 */
export function minimise(
  ne: NormalEquations,
  start: Float64Array,
  weight: Float64Array,
  maxIterations = 60,
): SolveResult {
  const { problem, gradient, factor, matrix } = ne;
  let x = Float64Array.from(start);
  let trial = new Float64Array(x.length);
  let current = newEvaluation(problem);
  let next = newEvaluation(problem);
  const step = new Float64Array(gradient.length);
  evaluate(problem, x, current);
  let square = weightedSquare(current.residual, weight);
  let damping = 0;
  let growth = 2;
  let iterations = 0;
  let assembled = false;
  while (iterations < maxIterations) {
    if (!assembled) assemble(ne, current, weight);
    assembled = true;
    factorise(factor, matrix, damping, PIVOT_TOLERANCE);
    for (let i = 0; i < step.length; i++) step[i] = -at(gradient, i);
    solveInPlace(factor, step);
    iterations++;
    const size = largest(step);
    moved(ne, x, step, trial);
    evaluate(problem, trial, next);
    const trialSquare = weightedSquare(next.residual, weight);
    const predicted = predictedDrop(step, gradient, ne, damping);
    // A step at the level of rounding ends the search whichever way the last bit of the cost fell. Badly misfitting
    // readings make Gauss-Newton crawl; there the squares themselves decide, to far below what anyone could feel.
    const small = (size < 1e-7 && damping < 1e-3) || predicted <= 1e-13 * square + 1e-20;
    if (trialSquare <= square || (small && trialSquare <= square * (1 + 1e-9) + 1e-12)) {
      const gain = predicted > 0 ? (square - trialSquare) / predicted : 1;
      const slow = square - trialSquare < (iterations > 300 ? 1e-6 : 1e-9) * square && iterations > 60;
      [x, trial] = [trial, x];
      [current, next] = [next, current];
      square = trialSquare;
      assembled = false;
      if (small || slow) return { converged: true, x, square, iterations, evaluation: current };
      damping *= Math.max(1 / 5, 1 - (2 * gain - 1) ** 3);
      if (damping < 1e-9) damping = 0;
      growth = 2;
    } else {
      if (size < 1e-9 || damping > 1e12) {
        return { converged: damping <= 1e12, x, square, iterations, evaluation: current };
      }
      damping = damping === 0 ? 1e-3 : damping * growth;
      growth = Math.min(growth * 2, 1024);
    }
  }
  return { converged: false, x, square, iterations, evaluation: current };
}

/** -(2 g.s + s.N.s) for the step of the damped system: -(g.s) + damping * s.D.s. */
function predictedDrop(step: Float64Array, gradient: Float64Array, ne: NormalEquations, damping: number): number {
  const { pattern, matrix } = ne;
  let sum = 0;
  for (let j = 0; j < step.length; j++) {
    const s = at(step, j);
    sum -= s * at(gradient, j);
    if (damping > 0) sum += damping * s * s * at(matrix, pattern.columnStart[j] as number);
  }
  return sum;
}

function largest(step: Float64Array): number {
  let size = 0;
  for (let i = 0; i < step.length; i++) size = Math.max(size, Math.abs(at(step, i)));
  return size;
}

/**
 * Iteratively reweighted least squares: least absolute values first, so that one gross slip does not bend the rest,
 * then a redescending weight (S. Geman, D. McClure 1985; from memory) that lets go of it altogether.
 */
export function minimiseRobustly(ne: NormalEquations, start: Float64Array, weight: Float64Array): SolveResult {
  const { problem } = ne;
  const { sigma } = problem;
  const factors = new Float64Array(weight.length);
  // The start is weighed as it stands: one unweighted step would already bend it towards the slip.
  let result = minimise(ne, start, weight, 0);
  let iterations = 0;
  for (let pass = 0; pass < 18; pass++) {
    const redescending = pass >= 11;
    const width = Math.max(3, 12 - 2 * (pass - 11));
    const { residual } = result.evaluation;
    for (let r = 0; r < weight.length; r++) {
      const u = Math.abs(at(residual, r) / at(sigma, r));
      factors[r] = at(weight, r) * (redescending ? 1 / (1 + (u * u) / (width * width)) ** 2 : 1 / Math.max(1, u));
    }
    result = minimise(ne, result.x, factors, redescending ? 2 : 1);
    iterations += result.iterations;
  }
  return { ...result, iterations };
}

/**
 * Squares of standardised residuals, none counting for more than a slip does: the measure by which robust solutions
 * are compared. A shape that many readings agree on beats one that a gross slip agrees with.
 */
export function cappedSquare(evaluation: Evaluation, sigma: Float64Array): number {
  let sum = 0;
  const { residual } = evaluation;
  for (let r = 0; r < residual.length; r++) sum += Math.min(25, (at(residual, r) / at(sigma, r)) ** 2);
  return sum;
}
