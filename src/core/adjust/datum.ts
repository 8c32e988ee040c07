import { at, ix } from './array.ts';
import { smallInverse } from './linear/small.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import type { Evaluation, Problem } from './problem.ts';
import { centroid } from './rigid.ts';

/**
 * The rigid motions no reading feels. `motions[k]` gives each point's displacement under the k-th (three numbers per
 * point, known points never move), scaled so that the points move about one millimetre.
 */
export interface DatumDefect {
  readonly motions: readonly Float64Array[];
}

/**
 * Finds the free rigid motions: those combinations of translations and rotations that leave every row unchanged to
 * first order. Known points cannot move, so a motion must also leave them alone.
 */
export function datumDefect(
  problem: Problem,
  x: Float64Array,
  evaluation: Evaluation,
  weight: Float64Array,
): DatumDefect {
  const generators = rigidGenerators(problem, x);
  const k = generators.length;
  const gram = new Float64Array(k * k);
  let scale = 0;
  const effect = new Float64Array(k);
  const { prepared, rowStart, slotStart } = problem;
  for (let i = 0; i < prepared.length; i++) {
    const refs = (prepared[i] as { refs: Int32Array }).refs;
    let slot = ix(slotStart, i);
    for (let r = ix(rowStart, i); r < ix(rowStart, i + 1); r++, slot += 3 * refs.length) {
      effect.fill(0);
      const w = at(weight, r);
      for (let q = 0; q < 3 * refs.length; q++) {
        const j = at(evaluation.jacobian, slot + q);
        const c = ix(refs, Math.trunc(q / 3)) + (q % 3);
        scale += w * j * j;
        for (let g = 0; g < k; g++) effect[g] = at(effect, g) + j * at(generators[g] as Float64Array, c);
      }
      for (let a = 0; a < k; a++) {
        for (let b = 0; b < k; b++) gram[a * k + b] = at(gram, a * k + b) + w * at(effect, a) * at(effect, b);
      }
    }
  }
  problem.network.points.forEach((p, i) => {
    if (p.known === undefined) return;
    for (let c = 0; c < 3; c++) {
      for (let a = 0; a < k; a++) {
        for (let b = 0; b < k; b++) {
          const product = at(generators[a] as Float64Array, 3 * i + c) * at(generators[b] as Float64Array, 3 * i + c);
          gram[a * k + b] = at(gram, a * k + b) + (scale + 1) * product;
        }
      }
    }
  });
  const { values, vectors } = symmetricEigen(gram, k);
  const motions: Float64Array[] = [];
  for (let m = 0; m < k; m++) {
    if (at(values, m) > 1e-11 * (scale + 1e-300)) continue;
    const motion = new Float64Array(x.length);
    for (let g = 0; g < k; g++) {
      const share = at(vectors, g * k + m);
      for (let c = 0; c < x.length; c++) motion[c] = at(motion, c) + share * at(generators[g] as Float64Array, c);
    }
    problem.network.points.forEach((p, i) => {
      if (p.known !== undefined) motion.fill(0, 3 * i, 3 * i + 3);
    });
    motions.push(motion);
  }
  return { motions };
}

function rigidGenerators(problem: Problem, x: Float64Array): Float64Array[] {
  const count = problem.network.points.length;
  const centre = centroid(
    x,
    Array.from({ length: count }, (_, i) => i),
  );
  let radius = 0;
  for (let c = 0; c < x.length; c++) radius = Math.max(radius, Math.abs(at(x, c) - (centre[c % 3] ?? 0)));
  const turn = 1 / (radius || 1);
  const list: Float64Array[] = [];
  const along = (axis: number): void => {
    const g = new Float64Array(x.length);
    for (let c = axis; c < x.length; c += 3) g[c] = 1;
    list.push(g);
  };
  const about = (a: number, b: number): void => {
    const g = new Float64Array(x.length);
    for (let p = 0; p < count; p++) {
      g[3 * p + a] = -turn * (at(x, 3 * p + b) - (centre[b] ?? 0));
      g[3 * p + b] = turn * (at(x, 3 * p + a) - (centre[a] ?? 0));
    }
    list.push(g);
  };
  along(0);
  along(1);
  about(0, 1);
  if (problem.dimension === 3) {
    along(2);
    about(1, 2);
    about(2, 0);
  }
  return list;
}

/** The k x k inverse of (G_B' G_B) over base points B, or undefined where B does not hold the free motions. */
export function baseGramInverse(defect: DatumDefect, base: readonly number[]): Float64Array | undefined {
  const { motions } = defect;
  const k = motions.length;
  const gram = new Float64Array(k * k);
  for (let a = 0; a < k; a++) {
    for (let b = 0; b < k; b++) {
      let sum = 0;
      for (const p of base) {
        for (let c = 0; c < 3; c++) {
          sum += at(motions[a] as Float64Array, 3 * p + c) * at(motions[b] as Float64Array, 3 * p + c);
        }
      }
      gram[a * k + b] = sum;
    }
  }
  if (k === 0) return gram;
  const inverse = smallInverse(gram, k);
  if (inverse === undefined) return undefined;
  let [size, inverseSize] = [0, 0];
  for (let a = 0; a < k; a++) {
    size += at(gram, a * k + a);
    inverseSize += at(inverse, a * k + a);
  }
  return size * inverseSize < 1e6 * k ? inverse : undefined;
}

/** Two (plane) or three (space) points that lie wide apart, marks first: enough to hold any rigid motion. */
export function widePoints(problem: Problem, x: Float64Array): number[] {
  const { points } = problem.network;
  const free = points.flatMap((p, i) => (p.known === undefined ? [i] : []));
  const marks = free.filter((i) => points[i]?.role === 'mark');
  const wanted = problem.dimension;
  const chosen = spread(x, marks, wanted);
  if (chosen.length >= wanted && isWide(x, chosen)) return chosen;
  return spread(x, free, wanted);
}

function isWide(x: Float64Array, chosen: readonly number[]): boolean {
  const [a, b, c] = chosen;
  if (a === undefined || b === undefined) return false;
  return c === undefined || offLine(x, a, b, c) > 0.05 * gap(x, a, b);
}

function spread(x: Float64Array, from: readonly number[], wanted: number): number[] {
  if (from.length <= 1) return [...from];
  let best: [number, number] = [from[0] ?? 0, from[1] ?? 0];
  for (const a of from) for (const b of from) if (gap(x, a, b) > gap(x, ...best) + 1e-9) best = [a, b];
  if (wanted === 2) return best;
  let third = -1;
  for (const c of from) {
    if (!best.includes(c) && (third < 0 || offLine(x, ...best, c) > offLine(x, ...best, third) + 1e-9)) third = c;
  }
  return third < 0 ? best : [...best, third];
}

const gap = (x: Float64Array, a: number, b: number): number =>
  Math.hypot(at(x, 3 * a) - at(x, 3 * b), at(x, 3 * a + 1) - at(x, 3 * b + 1), at(x, 3 * a + 2) - at(x, 3 * b + 2));

/** Distance of c from the line through a and b (Heron). */
function offLine(x: Float64Array, a: number, b: number, c: number): number {
  const ab = gap(x, a, b);
  const [p, q] = [gap(x, a, c), gap(x, b, c)];
  const half = (ab + p + q) / 2;
  return (2 * Math.sqrt(Math.max(0, half * (half - ab) * (half - p) * (half - q)))) / (ab || 1);
}
