import { at, ix } from './array.ts';
import { type Cofactors, cofactors } from './covariance.ts';
import type { Network, Vector } from './model.ts';
import { prepare, settleKinds, weights } from './problem.ts';

/** How a value changes as places move: its derivative by the coordinates of each point it depends on. */
export type Slopes = ReadonlyMap<string, Vector>;

/**
 * The variance of a value, a priori, in its unit squared. `unknown`: it depends on a point the network does not hold.
 * `floats`: on one the readings leave loose. `not-fixed`: it would change if the whole shape were moved or turned in a way
 * that no reading feels, so that its spread would be that of the datum and not of the readings.
 */
export type Variance = number | 'unknown' | 'floats' | 'not-fixed';

/** The adjusted places as what they are together: neighbours err alike, and only all their covariances say by how much. */
export interface Joint {
  varianceOf(slopes: Slopes): Variance;
}

/** A slope along a free motion, which moves points by about 1 mm, as a share of what it could be at most: below, rounding. */
const FELT = 1e-7;

/**
 * The full covariance of a solved network at its adjusted places, asked through the values that depend on them: first-order
 * propagation, J Q Jᵀ. A value that no free motion changes (a distance, an angle, an area in the plane of a flat piece) has the
 * same variance in every datum (estimable functions; W. Baarda, S-transformations and criterion matrices, 1973; from memory).
 */
export function jointOf(network: Network, positions: ReadonlyMap<string, Vector>): Joint {
  const problem = prepare(network);
  const x = Float64Array.from(network.points.flatMap(({ id }) => [...(positions.get(id) ?? [0, 0, 0])]));
  settleKinds(problem, x);
  const cf = cofactors(problem, x, weights(problem));
  return { varianceOf: (slopes) => varianceOf(cf, slopes) };
}

function varianceOf(cf: Cofactors, slopes: Slopes): Variance {
  const { problem, ne, size } = cf;
  const n = problem.dimension;
  const terms: { point: number; unknown: number; slope: number }[] = [];
  for (const [id, slope] of slopes) {
    const point = problem.pointIndex.get(id);
    if (point === undefined) return 'unknown';
    if (cf.floating.has(point)) return 'floats';
    const unknown = ix(ne.unknownOf, point);
    for (let c = 0; c < n; c++) terms.push({ point: 3 * point + c, unknown: unknown + c, slope: slope[c] ?? 0 });
  }
  if (cf.defect.motions.some((motion) => feels(terms, motion))) return 'not-fixed';
  const free = terms.filter(({ point }) => ix(ne.unknownOf, Math.trunc(point / 3)) >= 0);
  let sum = 0;
  for (const a of free) for (const b of free) sum += a.slope * b.slope * at(cf.q, a.unknown * size + b.unknown);
  return Math.max(0, sum);
}

function feels(terms: readonly { point: number; slope: number }[], motion: Float64Array): boolean {
  let [sum, most] = [0, 0];
  for (const { point, slope } of terms) {
    sum += slope * at(motion, point);
    most += Math.abs(slope);
  }
  return Math.abs(sum) > FELT * most;
}
