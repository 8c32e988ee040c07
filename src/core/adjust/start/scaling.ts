import { at } from '../array.ts';
import type { Problem } from '../problem.ts';
import type { Evidence } from './evidence.ts';

/**
 * Classical scaling on shortest paths (W. Torgerson 1952; Isomap's use of it, J. Tenenbaum and others 2000; from memory): missing
 * distances are the shortest way round, the largest eigenvectors of the doubly centred squares are the coordinates.
 * Rough, but sees the whole network at once. Heights over the frame's plane, where read, replace the third axis.
 */
export function classicalScaling(problem: Problem, evidence: Evidence): Float64Array {
  const n = problem.network.points.length;
  const heights = Array.from({ length: n }, (_, p) => at(evidence.frame, 3 * p + 2));
  const flat = heights.every((z) => !Number.isNaN(z));
  const distance = shortestPaths(evidence, n, flat ? heights : undefined);
  const b = doublyCentred(distance, n);
  const axes = flat ? 2 : 3;
  const x = new Float64Array(3 * n);
  for (let k = 0; k < axes; k++) {
    const { value, vector } = leadingEigen(b, n, k);
    const scale = Math.sqrt(Math.max(0, value));
    for (let i = 0; i < n; i++) {
      x[3 * i + k] = scale * at(vector, i);
      for (let j = 0; j < n; j++) b[i * n + j] = at(b, i * n + j) - value * at(vector, i) * at(vector, j);
    }
  }
  if (flat) for (let i = 0; i < n; i++) x[3 * i + 2] = heights[i] ?? 0;
  return x;
}

function shortestPaths(evidence: Evidence, n: number, heights: readonly number[] | undefined): Float64Array {
  const d = new Float64Array(n * n).fill(Number.POSITIVE_INFINITY);
  let longest = 1;
  evidence.spans.forEach((list, i) => {
    d[i * n + i] = 0;
    for (const s of list) {
      const dz = heights === undefined ? 0 : (heights[i] ?? 0) - (heights[s.to] ?? 0);
      const plan = Math.sqrt(Math.max(0, s.length * s.length - dz * dz));
      d[i * n + s.to] = Math.min(at(d, i * n + s.to), plan);
      longest = Math.max(longest, plan);
    }
  });
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      const ik = at(d, i * n + k);
      if (ik === Number.POSITIVE_INFINITY) continue;
      for (let j = 0; j < n; j++) {
        const way = ik + at(d, k * n + j);
        if (way < at(d, i * n + j)) d[i * n + j] = way;
      }
    }
  }
  return d.map((v) => (v === Number.POSITIVE_INFINITY ? longest : v));
}

function doublyCentred(distance: Float64Array, n: number): Float64Array {
  const b = distance.map((d) => d * d);
  const mean = new Float64Array(n);
  let all = 0;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += at(b, i * n + j);
    mean[i] = sum / n;
    all += sum / n / n;
  }
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) b[i * n + j] = -0.5 * (at(b, i * n + j) - at(mean, i) - at(mean, j) + all);
  }
  return b;
}

function leadingEigen(b: Float64Array, n: number, axis: number): { value: number; vector: Float64Array } {
  let v = Float64Array.from({ length: n }, (_, i) => Math.sin(1 + i * (axis + 1.3)));
  let value = 0;
  for (let pass = 0; pass < 60; pass++) {
    const w = new Float64Array(n);
    let size = 0;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let j = 0; j < n; j++) sum += at(b, i * n + j) * at(v, j);
      w[i] = sum;
      size += sum * sum;
    }
    size = Math.sqrt(size);
    if (size < 1e-12) return { value: 0, vector: w };
    let sign = 0;
    for (let i = 0; i < n; i++) sign += at(w, i) * at(v, i);
    value = sign;
    v = w.map((c) => c / size);
  }
  return { value, vector: v };
}
