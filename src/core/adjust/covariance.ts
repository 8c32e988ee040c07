import { at, ix } from './array.ts';
import { baseGramInverse, type DatumDefect, datumDefect, widePoints } from './datum.ts';
import { denseInverse, factorise, nullVectors } from './linear/sparse-ldl.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import { assemble, type NormalEquations, newNormalEquations } from './normal-equations.ts';
import { type Evaluation, evaluate, newEvaluation, type Problem } from './problem.ts';
import { PIVOT_TOLERANCE } from './solve.ts';

/** Everything known about the neighbourhood of a solution: what is fixed, and how well. */
export interface Cofactors {
  readonly problem: Problem;
  readonly ne: NormalEquations;
  readonly x: Float64Array;
  readonly evaluation: Evaluation;
  readonly weight: Float64Array;
  readonly defect: DatumDefect;
  /** Points that hold the free motions. */
  readonly base: readonly number[];
  /** A priori covariance of all unknowns (permuted, dense), the base's inner constraints as datum. */
  readonly q: Float64Array;
  readonly size: number;
  /** Independent ways in which readings leave points loose, and each loose point's own count. */
  readonly ways: number;
  readonly floating: ReadonlyMap<number, number>;
}

export function cofactors(problem: Problem, x: Float64Array, weight: Float64Array): Cofactors {
  const evaluation = newEvaluation(problem);
  evaluate(problem, x, evaluation);
  const defect = datumDefect(problem, x, evaluation, weight);
  let base = defect.motions.length === 0 ? [] : widePoints(problem, x);
  let ne = factored(problem, x, evaluation, weight, defect, base);
  let loose = nullVectors(ne.factor);
  if (loose.length > 0 && defect.motions.length > 0) {
    base = baseInBody(problem, x, ne, loose, base);
    ne = factored(problem, x, evaluation, weight, defect, base);
    loose = nullVectors(ne.factor);
  }
  const q = denseInverse(ne.factor);
  const gram = baseGramInverse(defect, base);
  if (gram !== undefined) removeMotions(ne, q, defect, gram, datumStiffness(ne));
  return {
    problem,
    ne,
    x,
    evaluation,
    weight,
    defect,
    base,
    q,
    size: ne.pattern.size,
    ways: loose.length,
    floating: floatingPoints(ne, loose),
  };
}

function factored(
  problem: Problem,
  _x: Float64Array,
  evaluation: Evaluation,
  weight: Float64Array,
  defect: DatumDefect,
  base: readonly number[],
): NormalEquations {
  const ne = newNormalEquations(problem, base);
  assemble(ne, evaluation, weight);
  holdBase(ne, defect, base);
  factorise(ne.factor, ne.matrix, 0, PIVOT_TOLERANCE);
  return ne;
}

/** Typical diagonal of N, so that the datum's rows weigh like readings. */
function datumStiffness(ne: NormalEquations): number {
  return ne.problem.rows > 0 ? at(ne.problem.sigma, 0) ** -2 : 1;
}

/** Adds s G_B G_Bᵀ to N: the free motions are held by the base points alone. */
function holdBase(ne: NormalEquations, defect: DatumDefect, base: readonly number[]): void {
  const { pattern, matrix, unknownOf } = ne;
  const { block, columnStart, elimination } = pattern;
  const s = datumStiffness(ne);
  for (const a of base) {
    for (const b of base) {
      const [ua, ub] = [ix(unknownOf, a), ix(unknownOf, b)];
      if (ua < 0 || ub < ua) continue;
      const later = elimination.later[ua / block]?.indexOf(ub / block) ?? -1;
      for (let c = 0; c < block; c++) {
        for (let r = a === b ? c : 0; r < block; r++) {
          const p = ix(columnStart, ua + c) + (a === b ? r - c : block - c + later * block + r);
          let sum = 0;
          for (const g of defect.motions) sum += at(g, 3 * a + c) * at(g, 3 * b + r);
          matrix[p] = at(matrix, p) + s * sum;
        }
      }
    }
  }
}

/** Q_B = M - G (A⁻¹ A⁻ᵀ / s) Gᵀ, A = G_Bᵀ G_B: takes the held motions back out of the inverse. */
function removeMotions(
  ne: NormalEquations,
  q: Float64Array,
  defect: DatumDefect,
  gramInverse: Float64Array,
  stiffness: number,
): void {
  const { unknownOf, pattern, problem } = ne;
  const k = defect.motions.length;
  const { size } = pattern;
  const g = new Float64Array(size * k);
  for (let p = 0; p < unknownOf.length; p++) {
    const u = ix(unknownOf, p);
    if (u < 0) continue;
    for (let c = 0; c < problem.dimension; c++) {
      for (let m = 0; m < k; m++) g[(u + c) * k + m] = at(defect.motions[m] as Float64Array, 3 * p + c);
    }
  }
  // Held unknowns must not move: take the loose way of each out of the motions.
  for (const z of nullVectors(ne.factor).map((v, n) => ({ v, pivot: ne.factor.nullPivots[n] ?? 0 }))) {
    for (let m = 0; m < k; m++) {
      const held = at(g, z.pivot * k + m);
      if (held === 0) continue;
      for (let i = 0; i < size; i++) g[i * k + m] = at(g, i * k + m) - held * at(z.v, i);
    }
  }
  const h = new Float64Array(k * k);
  for (let a = 0; a < k; a++) {
    for (let b = 0; b < k; b++) {
      for (let c = 0; c < k; c++) {
        h[a * k + b] = at(h, a * k + b) + (at(gramInverse, a * k + c) * at(gramInverse, c * k + b)) / stiffness;
      }
    }
  }
  const gh = new Float64Array(k);
  for (let i = 0; i < size; i++) {
    gh.fill(0);
    for (let a = 0; a < k; a++) for (let b = 0; b < k; b++) gh[b] = at(gh, b) + at(g, i * k + a) * at(h, a * k + b);
    for (let j = 0; j < size; j++) {
      let sum = 0;
      for (let a = 0; a < k; a++) sum += at(gh, a) * at(g, j * k + a);
      q[i * size + j] = at(q, i * size + j) - sum;
    }
  }
}

/** How many independent ways each loose point moves. */
function floatingPoints(ne: NormalEquations, loose: readonly Float64Array[]): Map<number, number> {
  const found = new Map<number, number>();
  if (loose.length === 0) return found;
  const unit = loose.map((z) => {
    const norm = Math.sqrt(z.reduce((s, v) => s + v * v, 0)) || 1;
    return z.map((v) => v / norm);
  });
  for (let p = 0; p < ne.unknownOf.length; p++) {
    const u = ix(ne.unknownOf, p);
    if (u < 0) continue;
    const gram = new Float64Array(9);
    for (const z of unit) {
      for (let a = 0; a < ne.problem.dimension; a++) {
        for (let b = 0; b < ne.problem.dimension; b++)
          gram[3 * a + b] = at(gram, 3 * a + b) + at(z, u + a) * at(z, u + b);
      }
    }
    const ways = symmetricEigen(gram, 3).values.filter((v) => v > 1e-9).length;
    if (ways > 0) found.set(p, ways);
  }
  return found;
}

/**
 * Points of the largest set whose mutual distances no loose way changes, marks preferred, to hold the datum: otherwise
 * what floats would depend on where the datum happened to sit.
 */
function baseInBody(
  problem: Problem,
  x: Float64Array,
  ne: NormalEquations,
  loose: readonly Float64Array[],
  fallback: readonly number[],
): number[] {
  const count = problem.network.points.length;
  const body = largestBody(problem, x, ne, loose);
  if (body.length < problem.dimension) return [...fallback];
  const inBody = new Set(body);
  const points = problem.network.points.map((p, i) =>
    inBody.has(i) ? p : { id: p.id, label: p.label, known: [0, 0, 0] as const },
  );
  const wide = widePoints({ ...problem, network: { ...problem.network, points } }, x);
  return wide.filter((p) => p < count);
}

function largestBody(problem: Problem, x: Float64Array, ne: NormalEquations, loose: readonly Float64Array[]): number[] {
  const { points } = problem.network;
  const order = points.map((_, i) => i).filter((i) => ix(ne.unknownOf, i) >= 0);
  order.sort((a, b) => Number(points[b]?.role === 'mark') - Number(points[a]?.role === 'mark'));
  const rigid = (a: number, b: number): boolean =>
    loose.every((z) => {
      const [ua, ub] = [ix(ne.unknownOf, a), ix(ne.unknownOf, b)];
      let rate = 0;
      let gap = 0;
      let size = 0;
      for (let c = 0; c < problem.dimension; c++) {
        const d = at(x, 3 * a + c) - at(x, 3 * b + c);
        rate += d * (at(z, ua + c) - at(z, ub + c));
        gap += d * d;
        size += at(z, ua + c) ** 2 + at(z, ub + c) ** 2;
      }
      return Math.abs(rate) <= 1e-6 * Math.sqrt(gap * Math.max(size, 1e-12));
    });
  let best: number[] = [];
  for (const seed of order.slice(0, 40)) {
    const body = [seed];
    for (const p of order) if (p !== seed && body.every((q) => rigid(p, q))) body.push(p);
    if (body.length > best.length) best = body;
  }
  return best;
}

/** Covariance of unknown component (point p, c) with (point r, d); 0 for known points. */
export function covarianceOf(cf: Cofactors, p: number, c: number, r: number, d: number): number {
  const up = ix(cf.ne.unknownOf, p);
  const ur = ix(cf.ne.unknownOf, r);
  return up < 0 || ur < 0 ? 0 : at(cf.q, (up + c) * cf.size + ur + d);
}

/**
 * Covariance block (dimension x dimension) of point p with the points `base` as datum: what its place relative to
 * them is known to. Undefined where the base cannot hold the free motions.
 * Q' = S Q Sᵀ, S = I - G (G_BᵀG_B)⁻¹ G_Bᵀ (W. Baarda, S-transformations and criterion matrices, 1973; from memory).
 */
export function relativeCovariance(cf: Cofactors, p: number, base: readonly number[]): Float64Array | undefined {
  const { problem, defect } = cf;
  const n = problem.dimension;
  const k = defect.motions.length;
  const result = new Float64Array(n * n);
  for (let a = 0; a < n; a++) for (let b = 0; b < n; b++) result[a * n + b] = covarianceOf(cf, p, a, p, b);
  if (k === 0) return result;
  const inverse = baseGramInverse(defect, base);
  if (inverse === undefined) return undefined;
  // F = G_p A⁻¹ G_Bᵀ, n x (n |B|): how the point follows the base's free motion.
  const width = n * base.length;
  const f = new Float64Array(n * width);
  for (let a = 0; a < n; a++) {
    for (let i = 0; i < k; i++) {
      let share = 0;
      for (let j = 0; j < k; j++) share += at(defect.motions[j] as Float64Array, 3 * p + a) * at(inverse, j * k + i);
      const motion = defect.motions[i] as Float64Array;
      base.forEach((b, q) => {
        for (let c = 0; c < n; c++)
          f[a * width + q * n + c] = at(f, a * width + q * n + c) + share * at(motion, 3 * b + c);
      });
    }
  }
  const cross = new Float64Array(width * n);
  const inner = new Float64Array(width * n);
  const up = ix(cf.ne.unknownOf, p);
  const unknowns = base.map((b) => ix(cf.ne.unknownOf, b));
  for (let i = 0; i < width; i++) {
    const ub = unknowns[Math.trunc(i / n)] ?? -1;
    if (ub < 0) continue;
    const row = (ub + (i % n)) * cf.size;
    for (let a = 0; a < n; a++) {
      if (up >= 0) cross[i * n + a] = at(cf.q, row + up + a);
      let sum = 0;
      for (let s = 0; s < unknowns.length; s++) {
        const ud = unknowns[s] ?? -1;
        if (ud < 0) continue;
        for (let e = 0; e < n; e++) sum += at(cf.q, row + ud + e) * at(f, a * width + s * n + e);
      }
      inner[i * n + a] = sum;
    }
  }
  for (let a = 0; a < n; a++) {
    for (let b = 0; b < n; b++) {
      let sum = at(result, a * n + b);
      for (let i = 0; i < width; i++) {
        sum -= at(f, a * width + i) * at(cross, i * n + b) + at(f, b * width + i) * at(cross, i * n + a);
        sum += at(f, a * width + i) * at(inner, i * n + b);
      }
      result[a * n + b] = sum;
    }
  }
  return result;
}
