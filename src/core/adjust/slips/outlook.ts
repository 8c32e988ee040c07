import { at, ix } from '../array.ts';
import { type Cofactors, cofactors } from '../covariance.ts';
import type { Problem } from '../problem.ts';

/**
 * The linearised network around a shape, in standardised residuals: what leaving readings out would do to the fit and
 * what value they would then be predicted to have. S = I - H is the projector onto the residuals.
 */
export interface Outlook {
  readonly cf: Cofactors;
  readonly problem: Problem;
  /** Standardised least-squares residuals, (computed - observed) / sigma. */
  readonly u: Float64Array;
  /** S, rows x rows. */
  readonly s: Float64Array;
  readonly square: number;
}

export function outlookAt(problem: Problem, x: Float64Array, weight: Float64Array): Outlook {
  const cf = cofactors(problem, x, weight);
  const { evaluation, ne, q, size } = cf;
  const { rows, sigma, prepared, rowStart, slotStart, dimension } = problem;
  // a[j] = Q J_jᵀ / sigma_j
  const a = new Float64Array(rows * size);
  const step = new Float64Array(size);
  const each = (i: number, visit: (row: number, unknown: number, derivative: number) => void): void => {
    const refs = prepared[i]?.refs ?? new Int32Array(0);
    let slot = ix(slotStart, i);
    for (let r = ix(rowStart, i); r < ix(rowStart, i + 1); r++, slot += 3 * refs.length) {
      for (let k = 0; k < refs.length; k++) {
        const unknown = ix(ne.unknownOf, ix(refs, k) / 3);
        if (unknown < 0) continue;
        for (let c = 0; c < dimension; c++) {
          const j = at(evaluation.jacobian, slot + 3 * k + c);
          if (j !== 0) visit(r, unknown + c, j / at(sigma, r));
        }
      }
    }
  };
  for (let i = 0; i < prepared.length; i++) {
    each(i, (r, unknown, j) => {
      for (let c = 0; c < size; c++) a[r * size + c] = at(a, r * size + c) + j * at(q, unknown * size + c);
    });
  }
  const u = evaluation.residual.map((v, r) => v / at(sigma, r));
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < size; c++) step[c] = at(step, c) - at(a, r * size + c) * at(u, r);
  }
  const s = new Float64Array(rows * rows);
  for (let r = 0; r < rows; r++) s[r * rows + r] = 1;
  for (let i = 0; i < prepared.length; i++) {
    each(i, (r, unknown, j) => {
      u[r] = at(u, r) + j * at(step, unknown);
      for (let o = 0; o < rows; o++) s[r * rows + o] = at(s, r * rows + o) - j * at(a, o * size + unknown);
    });
  }
  return { cf, problem, u, s, square: u.reduce((sum, v) => sum + v * v, 0) };
}

/** What two left-out rows would do: the drop in squares and the standardised corrections of both. */
export function withoutTwo(outlook: Outlook, i: number, j: number) {
  const { s, u, problem } = outlook;
  const n = problem.rows;
  const [a, b, d] = [at(s, i * n + i), at(s, i * n + j), at(s, j * n + j)];
  const determinant = a * d - b * b;
  if (!(determinant > 1e-6 * a * d)) return undefined;
  const ci = (d * at(u, i) - b * at(u, j)) / determinant;
  const cj = (a * at(u, j) - b * at(u, i)) / determinant;
  return { drop: ci * at(u, i) + cj * at(u, j), ci, cj, a, b, d, determinant };
}
