import { at, ix } from './array.ts';
import { type Cofactors, covarianceOf, relativeCovariance } from './covariance.ts';
import type { Framed } from './frame.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import type { Vector } from './model.ts';
import type { Problem } from './problem.ts';
import { externalReliability, redundancies, test } from './reliability.ts';
import type { AdjustOptions, OneSidedResult, PointResult, Solution } from './result.ts';
import { chiSquareUpperQuantile } from './statistics.ts';

const FACTOR_2D = Math.sqrt(chiSquareUpperQuantile(0.05, 2));
const FACTOR_3D = Math.sqrt(chiSquareUpperQuantile(0.05, 3));

/** Turns a solved problem into the result a caller reads. */
export function solutionOf(cf: Cofactors, framed: Framed, options: AdjustOptions, iterations: number): Solution {
  const { problem } = cf;
  const rows = redundancies(cf);
  const tests = test(cf, rows, options);
  const external = externalReliability(cf, rows, tests.delta);
  const free = options.datum === 'free' ? fixedPoints(cf) : undefined;
  const neighbourBase = baseFinder(cf);
  const points = problem.network.points.map((_, i) => pointResult(cf, i, free, neighbourBase(i), external));
  const oneSided = problem.oneSided.map((p) => oneSidedResult(cf, p));
  return {
    dimension: problem.dimension,
    points,
    readings: tests.readings,
    oneSided,
    rejected: problem.rejected,
    freedom: rows.freedom,
    weightedSquare: rows.weightedSquare,
    unitError: tests.unitError,
    globalTest: tests.globalTest,
    readingTest: tests.readingTest,
    doubted:
      tests.globalTest.verdict === 'fails' ||
      tests.worstStandardised > tests.readingTest.critical ||
      framed.wrongSides.length > 0 ||
      oneSided.some((o) => o.impossible),
    handedness: framed.handedness,
    wrongSides: framed.wrongSides,
    iterations,
  };
}

const fixedPoints = (cf: Cofactors): number[] =>
  cf.problem.network.points.flatMap((_, i) => (cf.floating.has(i) || ix(cf.ne.unknownOf, i) < 0 ? [] : [i]));

/** For each point the marks and neighbours its uncertainty is relative to. */
function baseFinder(cf: Cofactors): (i: number) => number[] {
  const { points } = cf.problem.network;
  const index = cf.problem.pointIndex;
  const usable = new Set(fixedPoints(cf));
  const marks = points.flatMap((p, i) => (p.role === 'mark' && usable.has(i) ? [i] : []));
  return (i) => {
    const own = new Set(marks);
    for (const id of points[i]?.neighbours ?? []) {
      const n = index.get(id);
      if (n !== undefined && usable.has(n)) own.add(n);
    }
    own.delete(i);
    return [...own];
  };
}

function pointResult(
  cf: Cofactors,
  i: number,
  free: readonly number[] | undefined,
  wanted: readonly number[],
  external: ReturnType<typeof externalReliability>,
): PointResult {
  const { problem, x } = cf;
  const point = problem.network.points[i];
  const position: Vector = [at(x, 3 * i), at(x, 3 * i + 1), at(x, 3 * i + 2)];
  const id = point?.id ?? '';
  const state = point?.known !== undefined ? 'known' : cf.floating.has(i) ? 'floating' : 'fixed';
  const bare = { id, state, position, relativeTo: [], worstUnseen: null, hangsOnUnchecked: [] } as const;
  if (state === 'known') {
    return { ...bare, covariance: [0, 0, 0, 0, 0, 0], ellipse: { semiAxes: [0, 0], directions: [] }, relative95: 0 };
  }
  if (state === 'floating') return { ...bare, covariance: null, ellipse: null, relative95: null };
  const n = problem.dimension;
  const own = free === undefined ? undefined : relativeCovariance(cf, i, free);
  const c = (a: number, b: number): number =>
    a >= n || b >= n ? 0 : own === undefined ? covarianceOf(cf, i, a, i, b) : at(own, a * n + b);
  // All other points where marks and neighbours cannot hold the frame.
  let base = wanted;
  let local = relativeCovariance(cf, i, base);
  if (local === undefined) {
    base = fixedPoints(cf).filter((p) => p !== i);
    local = relativeCovariance(cf, i, base);
  }
  const ellipse = local === undefined ? null : ellipseOf(local, n);
  return {
    id,
    state,
    position,
    covariance: [c(0, 0), c(0, 1), c(0, 2), c(1, 1), c(1, 2), c(2, 2)],
    ellipse,
    relative95: ellipse?.semiAxes[0] ?? null,
    relativeTo: base.map((b) => problem.network.points[b]?.id ?? ''),
    worstUnseen: external.worst[i] ?? null,
    hangsOnUnchecked: external.unchecked[i] ?? [],
  };
}

/** Semi-axes at 95 % (mm, largest first) of a covariance block. */
function ellipseOf(block: Float64Array, n: 2 | 3): NonNullable<PointResult['ellipse']> {
  const { values, vectors } = symmetricEigen(block, n);
  const factor = n === 2 ? FACTOR_2D : FACTOR_3D;
  const order = Array.from({ length: n }, (_, k) => n - 1 - k);
  return {
    semiAxes: order.map((k) => factor * Math.sqrt(Math.max(0, at(values, k)))),
    directions: order.map((k): Vector => [at(vectors, k), at(vectors, n + k), n === 3 ? at(vectors, 2 * n + k) : 0]),
  };
}

/** A tape on a surface is never shorter than its chords: three of its own standard deviations short is impossible. */
function oneSidedResult(cf: Cofactors, p: Problem['oneSided'][number]): OneSidedResult {
  const { x } = cf;
  let chords = 0;
  let variance = p.reading.sigma ** 2;
  for (let k = 0; k + 1 < p.points; k++) {
    const a = ix(p.refs, k);
    const b = ix(p.refs, k + 1);
    const d = [0, 1, 2].map((c) => at(x, b + c) - at(x, a + c));
    const size = Math.hypot(...d) || 1e-9;
    chords += size;
    const n = cf.problem.dimension;
    for (let c = 0; c < n; c++) {
      for (let e = 0; e < n; e++) {
        const j = ((d[c] ?? 0) * (d[e] ?? 0)) / (size * size);
        const [pa, pb] = [a / 3, b / 3];
        variance +=
          j * (covarianceOf(cf, pa, c, pa, e) + covarianceOf(cf, pb, c, pb, e) - 2 * covarianceOf(cf, pa, c, pb, e));
      }
    }
  }
  const floats = [...p.refs].some((o) => cf.floating.has(o / 3));
  const sigma = Math.sqrt(variance);
  const slack = p.reading.value - chords;
  return { reading: p.reading.id, chords, sigma, slack, impossible: !floats && slack < -4 * sigma };
}
