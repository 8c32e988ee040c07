import { type Cofactors, cofactors } from './covariance.ts';
import { datumDefect, widePoints } from './datum.ts';
import { type Framed, settleFrame } from './frame.ts';
import { factorise } from './linear/sparse-ldl.ts';
import type { Network } from './model.ts';
import { assemble, newNormalEquations } from './normal-equations.ts';
import { evaluate, newEvaluation, type Problem, prepare, settleKinds, weightedSquare, weights } from './problem.ts';
import { normalDeviate, seededRandom } from './random.ts';
import { solutionOf } from './report.ts';
import type { Adjustment, AdjustOptions } from './result.ts';
import { findShape } from './search.ts';
import { describeShapes, otherShapes } from './shapes.ts';
import { PIVOT_TOLERANCE } from './solve.ts';

/**
 * Coordinates from readings, with their uncertainty and what checks them, or the named reason why not.
 * Deterministic; cheap enough to call after every take (pass the last positions as `start`).
 */
export function adjust(network: Network, options: AdjustOptions = {}): Adjustment {
  const problem = prepare(network);
  const weight = weights(problem);
  const { solution: solved } = findShape(problem, weight, options.start);
  if (!solved.converged && problem.rows > 0) {
    return { state: 'did-not-converge', iterations: solved.iterations, weightedSquare: solved.square };
  }
  let framed: Framed = settleFrame(problem, solved.x, weight);
  let cf = cofactors(problem, framed.x, weight);
  let solution = solutionOf(cf, framed, options, solved.iterations);
  if (cf.ways > 0) {
    const floating = [...cf.floating].map(([p, ways]) => ({ point: network.points[p]?.id ?? '', ways }));
    const state = genericWays(problem, cf) < cf.ways ? 'singular' : 'not-enough-readings';
    return { state, floating, ways: cf.ways, solution };
  }
  if (options.seekShapes === false) return { state: 'solved', solution };
  let others = otherShapes(cf, solution);
  const fewest = Math.min(framed.wrongSides.length, ...others.map((o) => o.wrong));
  const better = others.find((o) => o.wrong === fewest);
  if (better !== undefined && fewest < framed.wrongSides.length) {
    // Another shape fits as well and agrees with the declared sides: that one is meant.
    framed = settleFrame(problem, better.x, weight);
    cf = cofactors(problem, framed.x, weight);
    solution = solutionOf(cf, framed, options, solved.iterations);
    others = otherShapes(cf, solution);
  }
  const rivals = others.filter((o) => o.wrong <= framed.wrongSides.length);
  if (rivals.length === 0) return { state: 'solved', solution };
  const square = weightedSquare(cf.evaluation.residual, weight);
  return { state: 'two-shapes', solution, ...describeShapes(problem, cf.x, square, rivals) };
}

/**
 * Loose ways the same readings would leave at a random shape. Fewer than here means that the count suffices and only
 * the directions fail (three marks in one line, say).
 */
function genericWays(problem: Problem, cf: Cofactors): number {
  const random = seededRandom(20);
  const spread = Math.max(1000, ...cf.x.map(Math.abs));
  const x = cf.x.map((v, c) => {
    const point = problem.network.points[Math.trunc(c / 3)];
    if (point?.known !== undefined || (problem.dimension === 2 && c % 3 === 2)) return v;
    return v + 0.3 * spread * normalDeviate(random);
  });
  settleKinds(problem, x);
  const evaluation = newEvaluation(problem);
  evaluate(problem, x, evaluation);
  const defect = datumDefect(problem, x, evaluation, cf.weight);
  const ne = newNormalEquations(problem, widePoints(problem, x));
  assemble(ne, evaluation, cf.weight);
  factorise(ne.factor, ne.matrix, 0, PIVOT_TOLERANCE);
  settleKinds(problem, cf.x);
  return ne.factor.nullPivots.length - defect.motions.length;
}
