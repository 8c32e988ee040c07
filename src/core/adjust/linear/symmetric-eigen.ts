import { at } from '../array.ts';

export interface Eigen {
  /** Ascending. */
  readonly values: Float64Array;
  /** Column k (vectors[i * n + k]) belongs to values[k]; orthonormal. */
  readonly vectors: Float64Array;
}

/**
 * Eigenvalues and vectors of a small dense symmetric matrix (row-major, n x n) by cyclic Jacobi rotations
 * (G. Golub, C. Van Loan, Matrix Computations, section 8.5; from memory). Backward stable, slow beyond n of about 100.
 */
export function symmetricEigen(matrix: Float64Array, n: number): Eigen {
  const a = Float64Array.from(matrix);
  const v = new Float64Array(n * n);
  for (let i = 0; i < n; i++) v[i * n + i] = 1;
  let scale = 0;
  for (let i = 0; i < n * n; i++) scale += at(a, i) ** 2;
  for (let sweep = 0; sweep < 60; sweep++) {
    let off = 0;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) off += at(a, p * n + q) ** 2;
    if (off <= 1e-34 * scale) break;
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) rotate(a, v, n, p, q);
  }
  const index = Array.from({ length: n }, (_, i) => i).sort((i, j) => at(a, i * n + i) - at(a, j * n + j));
  const values = Float64Array.from(index, (i) => at(a, i * n + i));
  const vectors = new Float64Array(n * n);
  index.forEach((from, to) => {
    for (let i = 0; i < n; i++) vectors[i * n + to] = at(v, i * n + from);
  });
  return { values, vectors };
}

function rotate(a: Float64Array, v: Float64Array, n: number, p: number, q: number): void {
  const apq = at(a, p * n + q);
  if (apq === 0) return;
  const theta = (at(a, q * n + q) - at(a, p * n + p)) / (2 * apq);
  const t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.sqrt(theta * theta + 1));
  const c = 1 / Math.sqrt(t * t + 1);
  const s = t * c;
  for (let k = 0; k < n; k++) {
    const kp = at(a, k * n + p);
    const kq = at(a, k * n + q);
    a[k * n + p] = c * kp - s * kq;
    a[k * n + q] = s * kp + c * kq;
  }
  for (let k = 0; k < n; k++) {
    const pk = at(a, p * n + k);
    const qk = at(a, q * n + k);
    a[p * n + k] = c * pk - s * qk;
    a[q * n + k] = s * pk + c * qk;
    const vp = at(v, k * n + p);
    const vq = at(v, k * n + q);
    v[k * n + p] = c * vp - s * vq;
    v[k * n + q] = s * vp + c * vq;
  }
}
