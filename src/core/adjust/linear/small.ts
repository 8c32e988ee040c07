import { at } from '../array.ts';

/**
 * Inverse of a small dense matrix (row-major, n x n) by Gauss-Jordan with partial pivoting, or undefined when a pivot
 * falls below 1e-12 of the largest entry.
 */
export function smallInverse(matrix: Float64Array, n: number): Float64Array | undefined {
  const a = Float64Array.from(matrix);
  const b = new Float64Array(n * n);
  let largest = 0;
  for (let i = 0; i < n * n; i++) largest = Math.max(largest, Math.abs(at(a, i)));
  for (let i = 0; i < n; i++) b[i * n + i] = 1;
  for (let c = 0; c < n; c++) {
    let best = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(at(a, r * n + c)) > Math.abs(at(a, best * n + c))) best = r;
    if (!(Math.abs(at(a, best * n + c)) > 1e-12 * largest)) return undefined;
    swapRows(a, n, c, best);
    swapRows(b, n, c, best);
    const inverse = 1 / at(a, c * n + c);
    for (let k = 0; k < n; k++) {
      a[c * n + k] = at(a, c * n + k) * inverse;
      b[c * n + k] = at(b, c * n + k) * inverse;
    }
    for (let r = 0; r < n; r++) {
      const factor = at(a, r * n + c);
      if (r === c || factor === 0) continue;
      for (let k = 0; k < n; k++) {
        a[r * n + k] = at(a, r * n + k) - factor * at(a, c * n + k);
        b[r * n + k] = at(b, r * n + k) - factor * at(b, c * n + k);
      }
    }
  }
  return b;
}

function swapRows(a: Float64Array, n: number, i: number, j: number): void {
  if (i === j) return;
  for (let k = 0; k < n; k++) {
    const held = at(a, i * n + k);
    a[i * n + k] = at(a, j * n + k);
    a[j * n + k] = held;
  }
}
