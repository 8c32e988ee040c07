import { at, ix } from './array.ts';
import type { Cofactors } from './covariance.ts';
import type { AdjustOptions, ReadingResult, Solution } from './result.ts';
import { chiSquareUpperQuantile, normalUpperQuantile, sidak, tauCritical } from './statistics.ts';

/** Below this redundancy number nothing checks a reading; below the second it is only weakly checked. */
export const UNCHECKED = 1e-3;
const WEAK = 0.05;

export interface RowReliability {
  /** Redundancy number per row, 0 ... 1. */
  readonly redundancy: Float64Array;
  readonly freedom: number;
  readonly weightedSquare: number;
}

/** Redundancy numbers r = 1 - w J Q Jᵀ for every row; their sum is the degrees of freedom. */
export function redundancies(cf: Cofactors): RowReliability {
  const { problem, evaluation, weight } = cf;
  const redundancy = new Float64Array(problem.rows);
  let freedom = 0;
  let square = 0;
  problem.prepared.forEach((p, i) => {
    let slot = ix(problem.slotStart, i);
    for (let r = ix(problem.rowStart, i); r < ix(problem.rowStart, i + 1); r++, slot += 3 * p.refs.length) {
      const w = at(weight, r);
      const v = at(evaluation.residual, r);
      const own = 1 - w * rowVariance(cf, p.refs, slot);
      redundancy[r] = Math.min(1, Math.max(0, own));
      if (w > 0) freedom += own;
      square += w * v * v;
    }
  });
  return { redundancy, freedom: Math.round(freedom), weightedSquare: square };
}

/** J Q Jᵀ of one row: the a priori variance of its computed value. */
function rowVariance(cf: Cofactors, refs: Int32Array, slot: number): number {
  const { evaluation, ne, q, size, problem } = cf;
  const { jacobian } = evaluation;
  let sum = 0;
  for (let k = 0; k < refs.length; k++) {
    const uk = ix(ne.unknownOf, ix(refs, k) / 3);
    if (uk < 0) continue;
    for (let l = 0; l < refs.length; l++) {
      const ul = ix(ne.unknownOf, ix(refs, l) / 3);
      if (ul < 0) continue;
      for (let c = 0; c < problem.dimension; c++) {
        const jc = at(jacobian, slot + 3 * k + c);
        if (jc === 0) continue;
        const row = (uk + c) * size + ul;
        for (let d = 0; d < problem.dimension; d++) sum += jc * at(q, row + d) * at(jacobian, slot + 3 * l + d);
      }
    }
  }
  return sum;
}

export interface Tests {
  readonly globalTest: Solution['globalTest'];
  readonly readingTest: Solution['readingTest'];
  readonly readings: readonly ReadingResult[];
  readonly unitError: number | null;
  /** Non-centrality delta0 = z(1 - alpha/2) + z(power). */
  readonly delta: number;
  readonly worstStandardised: number;
}

/** Baarda's data snooping with the false-alarm rate shared out over all checkable readings, and the global test. */
export function test(cf: Cofactors, rows: RowReliability, options: AdjustOptions): Tests {
  const { problem } = cf;
  const jobAlpha = options.jobAlpha ?? 0.004;
  const power = options.power ?? 0.8;
  const globalAlpha = options.globalAlpha ?? 0.001;
  const checkable = rows.redundancy.reduce((n, r) => n + (r > UNCHECKED ? 1 : 0), 0);
  const readingAlpha = options.readingAlpha ?? sidak(jobAlpha, checkable);
  const critical = normalUpperQuantile(readingAlpha / 2);
  const delta = critical - normalUpperQuantile(power);
  const { freedom, weightedSquare } = rows;
  const unitError = freedom > 0 ? Math.sqrt(weightedSquare / freedom) : null;
  const globalCritical = freedom > 0 ? chiSquareUpperQuantile(globalAlpha, freedom) : null;
  const readings = problem.prepared.map((_, i) => readingResult(cf, rows, i, delta, unitError));
  return {
    globalTest: {
      verdict: globalCritical === null ? 'cannot tell' : weightedSquare > globalCritical ? 'fails' : 'passes',
      alpha: globalAlpha,
      critical: globalCritical,
    },
    readingTest: {
      jobAlpha,
      readingAlpha,
      power,
      critical,
      tauCritical: freedom > 1 ? tauCritical(readingAlpha, freedom) : null,
    },
    readings,
    unitError,
    delta,
    worstStandardised: readings.reduce((m, r) => Math.max(m, Math.abs(r.standardised ?? 0)), 0),
  };
}

function readingResult(
  cf: Cofactors,
  rows: RowReliability,
  i: number,
  delta: number,
  unitError: number | null,
): ReadingResult {
  const { problem, evaluation } = cf;
  const from = ix(problem.rowStart, i);
  const to = ix(problem.rowStart, i + 1);
  let worst = from;
  const w = (r: number): number => {
    const red = at(rows.redundancy, r);
    return red > UNCHECKED ? at(evaluation.residual, r) / (at(problem.sigma, r) * Math.sqrt(red)) : 0;
  };
  for (let r = from + 1; r < to; r++) if (Math.abs(w(r)) > Math.abs(w(worst))) worst = r;
  const redundancy = at(rows.redundancy, worst);
  const sigma = at(problem.sigma, worst);
  const residual = at(evaluation.residual, worst);
  const checked = redundancy > UNCHECKED;
  const standardised = checked ? w(worst) : null;
  return {
    id: problem.prepared[i]?.reading.id ?? '',
    adjusted: at(evaluation.computed, worst),
    residual,
    redundancy,
    control: !checked ? 'unchecked' : redundancy < WEAK ? 'weakly checked' : 'checked',
    standardised,
    tau: standardised === null || unitError === null || unitError === 0 ? null : standardised / unitError,
    estimatedError: checked ? -residual / redundancy : null,
    minimalDetectableBias: checked ? (delta * sigma) / Math.sqrt(redundancy) : null,
    biasToNoise: checked ? delta * Math.sqrt((1 - redundancy) / redundancy) : null,
  };
}

export interface Unseen {
  readonly reading: string;
  readonly shift: number;
}

/**
 * External reliability: for each point, which reading's largest unseen slip (its minimal detectable bias) moves it
 * most, relative to the datum's points. Unchecked readings have no bound; the points they move are listed apart.
 */
export function externalReliability(
  cf: Cofactors,
  rows: RowReliability,
  delta: number,
): { worst: (Unseen | null)[]; unchecked: string[][] } {
  const { problem, ne, size, weight } = cf;
  const { dimension } = problem;
  const count = problem.network.points.length;
  const worstShift = new Float64Array(count);
  const worstReading = new Int32Array(count).fill(-1);
  const unchecked: string[][] = Array.from({ length: count }, () => []);
  const shift = new Float64Array(size);
  const unknowns = ne.unknownOf;
  for (let i = 0; i < problem.prepared.length; i++) {
    const refs = (problem.prepared[i] as { refs: Int32Array }).refs;
    let slot = ix(problem.slotStart, i);
    for (let r = ix(problem.rowStart, i); r < ix(problem.rowStart, i + 1); r++, slot += 3 * refs.length) {
      response(cf, refs, slot, at(weight, r), shift);
      const red = at(rows.redundancy, r);
      const bias = red > UNCHECKED ? (delta * at(problem.sigma, r)) / Math.sqrt(red) : 0;
      const scale = bias * bias;
      for (let point = 0; point < count; point++) {
        const u = ix(unknowns, point);
        if (u < 0) continue;
        let square = at(shift, u) * at(shift, u) + at(shift, u + 1) * at(shift, u + 1);
        if (dimension === 3) square += at(shift, u + 2) * at(shift, u + 2);
        if (bias === 0) {
          if (square > 1e-6) unchecked[point]?.push(problem.prepared[i]?.reading.id ?? '');
        } else if (square * scale > at(worstShift, point)) {
          worstShift[point] = square * scale;
          worstReading[point] = i;
        }
      }
    }
  }
  const worst = Array.from({ length: count }, (_, point): Unseen | null => {
    const i = ix(worstReading, point);
    return i < 0 ? null : { reading: problem.prepared[i]?.reading.id ?? '', shift: Math.sqrt(at(worstShift, point)) };
  });
  return { worst, unchecked };
}

/** Q Jᵀ w of one row: how all unknowns answer to a unit error in it. */
function response(cf: Cofactors, refs: Int32Array, slot: number, weight: number, into: Float64Array): void {
  const { ne, q, size, evaluation, problem } = cf;
  into.fill(0);
  for (let k = 0; k < refs.length; k++) {
    const u = ix(ne.unknownOf, ix(refs, k) / 3);
    if (u < 0) continue;
    for (let c = 0; c < problem.dimension; c++) {
      const j = weight * at(evaluation.jacobian, slot + 3 * k + c);
      if (j === 0) continue;
      const row = (u + c) * size;
      for (let s = 0; s < size; s++) into[s] = at(into, s) + j * at(q, row + s);
    }
  }
}
