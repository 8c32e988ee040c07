import { at, ix } from '../array.ts';
import type { Elimination } from './ordering.ts';

/**
 * A symmetric positive semidefinite matrix with square blocks (one per point) and its factors L D Lᵀ, in the pattern an
 * elimination order gives. Scalar columns, block (k, later[k]) pattern; the unknown of component c of the k-th
 * eliminated node is k * block + c ("permuted index").
 *
 * Why not dense: points hang on a few marks and their neighbours, so the factor of a 200-point job is mostly zeros.
 */
export interface BlockPattern {
  readonly block: number;
  readonly size: number;
  readonly elimination: Elimination;
  /** Start of each scalar column in the value array; size + 1 entries. */
  readonly columnStart: Int32Array;
  /** Permuted row index of every stored entry; the diagonal comes first in its column. */
  readonly rowIndex: Int32Array;
}

export function blockPattern(block: number, elimination: Elimination): BlockPattern {
  const nodes = elimination.order.length;
  const size = nodes * block;
  const columnStart = new Int32Array(size + 1);
  for (let k = 0; k < nodes; k++) {
    const below = (elimination.later[k]?.length ?? 0) * block;
    for (let c = 0; c < block; c++) {
      const column = k * block + c;
      columnStart[column + 1] = ix(columnStart, column) + block - c + below;
    }
  }
  const rowIndex = new Int32Array(ix(columnStart, size));
  let p = 0;
  for (let k = 0; k < nodes; k++) {
    const later = elimination.later[k] ?? new Int32Array(0);
    for (let c = 0; c < block; c++) {
      for (let r = c; r < block; r++) rowIndex[p++] = k * block + r;
      for (const node of later) for (let r = 0; r < block; r++) rowIndex[p++] = node * block + r;
    }
  }
  return { block, size, elimination, columnStart, rowIndex };
}

/** Index of `row` (a node's position) among the nodes later than `column`, or -1. */
export function laterIndex(pattern: BlockPattern, column: number, row: number): number {
  const later = pattern.elimination.later[column];
  if (later === undefined) return -1;
  let low = 0;
  let high = later.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = ix(later, middle);
    if (found === row) return middle;
    if (found < row) low = middle + 1;
    else high = middle - 1;
  }
  return -1;
}

export interface Factor {
  readonly pattern: BlockPattern;
  /** Unit lower factor, same layout as the matrix; the diagonal slots hold D. */
  readonly values: Float64Array;
  readonly inverseD: Float64Array;
  /** Permuted indices whose pivot vanished: unknowns the matrix says nothing about once later ones are given. */
  readonly nullPivots: number[];
  readonly head: Int32Array;
  readonly next: Int32Array;
  readonly cursor: Int32Array;
  readonly work: Float64Array;
}

export function newFactor(pattern: BlockPattern): Factor {
  const { size } = pattern;
  return {
    pattern,
    values: new Float64Array(pattern.rowIndex.length),
    inverseD: new Float64Array(size),
    nullPivots: [],
    head: new Int32Array(size),
    next: new Int32Array(size),
    cursor: new Int32Array(size),
    work: new Float64Array(size),
  };
}

/**
 * Factors `matrix` (values in the pattern's layout), with `damping` times its diagonal added. Left-looking. A pivot
 * below `tolerance` times its original diagonal is set aside: its unknown stays put in solves (inverse 0).
 */
export function factorise(factor: Factor, matrix: Float64Array, damping: number, tolerance: number): void {
  const { pattern, values, inverseD, nullPivots, head, next, cursor, work } = factor;
  const { size, columnStart, rowIndex } = pattern;
  nullPivots.length = 0;
  head.fill(-1);
  for (let j = 0; j < size; j++) {
    const start = ix(columnStart, j);
    const end = ix(columnStart, j + 1);
    for (let p = start; p < end; p++) work[ix(rowIndex, p)] = at(matrix, p);
    const original = at(matrix, start) * (1 + damping);
    work[j] = original;
    let k = ix(head, j);
    while (k !== -1) {
      const following = ix(next, k);
      const from = ix(cursor, k);
      const to = ix(columnStart, k + 1);
      const scale = at(values, from) * at(values, ix(columnStart, k));
      for (let p = from; p < to; p++) {
        const i = ix(rowIndex, p);
        work[i] = at(work, i) - at(values, p) * scale;
      }
      queue(k, from + 1, to, rowIndex, head, next, cursor);
      k = following;
    }
    const pivot = at(work, j);
    if (!(pivot > tolerance * original) || original <= 0) {
      nullPivots.push(j);
      inverseD[j] = 0;
      for (let p = start; p < end; p++) values[p] = 0;
      continue;
    }
    const inverse = 1 / pivot;
    values[start] = pivot;
    inverseD[j] = inverse;
    for (let p = start + 1; p < end; p++) values[p] = at(work, ix(rowIndex, p)) * inverse;
    queue(j, start + 1, end, rowIndex, head, next, cursor);
  }
}

/** Puts column k on the list of the row it next contributes to. */
function queue(
  k: number,
  from: number,
  to: number,
  rowIndex: Int32Array,
  head: Int32Array,
  next: Int32Array,
  cursor: Int32Array,
): void {
  if (from >= to) return;
  const row = ix(rowIndex, from);
  cursor[k] = from;
  next[k] = ix(head, row);
  head[row] = k;
}

/** Overwrites x (permuted) with the solution of L D Lᵀ x = b. */
export function solveInPlace(factor: Factor, x: Float64Array): void {
  const { pattern, values, inverseD } = factor;
  const { size, columnStart, rowIndex } = pattern;
  for (let j = 0; j < size; j++) {
    const xj = at(x, j);
    if (xj === 0) continue;
    const end = ix(columnStart, j + 1);
    for (let p = ix(columnStart, j) + 1; p < end; p++) {
      const i = ix(rowIndex, p);
      x[i] = at(x, i) - at(values, p) * xj;
    }
  }
  for (let j = 0; j < size; j++) x[j] = at(x, j) * at(inverseD, j);
  backSubstitute(factor, x, size - 1);
}

/** Lᵀ x = b in place for columns `from` down to 0. */
function backSubstitute(factor: Factor, x: Float64Array, from: number): void {
  const { pattern, values } = factor;
  const { columnStart, rowIndex } = pattern;
  for (let j = from; j >= 0; j--) {
    let sum = at(x, j);
    const end = ix(columnStart, j + 1);
    for (let p = ix(columnStart, j) + 1; p < end; p++) sum -= at(values, p) * at(x, ix(rowIndex, p));
    x[j] = sum;
  }
}

/** One null vector (permuted, not normalised) for each vanished pivot. */
export function nullVectors(factor: Factor): Float64Array[] {
  return factor.nullPivots.map((pivot) => {
    const z = new Float64Array(factor.pattern.size);
    z[pivot] = 1;
    for (const other of factor.nullPivots) if (other !== pivot) z[other] = 0;
    backSubstitute(factor, z, pivot - 1);
    return z;
  });
}

/**
 * The whole inverse, dense, row-major, permuted indices. Rows are built from the last column back
 * (K. Takahashi, J. Fagan, M. Chen 1973; from memory), so the cost is entries of L times size, not size cubed.
 * Unknowns with a vanished pivot count as held: their rows and columns are 0.
 */
export function denseInverse(factor: Factor): Float64Array {
  const { pattern, values, inverseD } = factor;
  const { size, columnStart, rowIndex } = pattern;
  const z = new Float64Array(size * size);
  for (let j = size - 1; j >= 0; j--) {
    const start = ix(columnStart, j) + 1;
    const end = ix(columnStart, j + 1);
    const rowJ = j * size;
    for (let p = start; p < end; p++) {
      const l = at(values, p);
      if (l === 0) continue;
      const rowK = ix(rowIndex, p) * size;
      for (let i = j + 1; i < size; i++) z[rowJ + i] = at(z, rowJ + i) - l * at(z, rowK + i);
    }
    let diagonal = at(inverseD, j);
    for (let p = start; p < end; p++) diagonal -= at(values, p) * at(z, rowJ + ix(rowIndex, p));
    z[rowJ + j] = diagonal;
    for (let i = j + 1; i < size; i++) z[i * size + j] = at(z, rowJ + i);
  }
  return z;
}
