import { at, ix } from './array.ts';
import { minimumDegree } from './linear/ordering.ts';
import { type BlockPattern, blockPattern, type Factor, laterIndex, newFactor } from './linear/sparse-ldl.ts';
import type { Evaluation, Problem } from './problem.ts';

/**
 * N = Jᵀ W J and g = Jᵀ W v in sparse block form, with the places every reading adds to worked out once.
 */
export interface NormalEquations {
  readonly problem: Problem;
  readonly pattern: BlockPattern;
  readonly matrix: Float64Array;
  readonly gradient: Float64Array;
  readonly factor: Factor;
  /** First permuted unknown of each point, or -1. */
  readonly unknownOf: Int32Array;
  /** Four numbers per pair of refs of each prepared reading: ref k, ref l, column position, later index (-1: same node). */
  readonly pairs: readonly Int32Array[];
}

/** @param clique points that must be coupled to each other besides what readings couple (the datum's points) */
export function newNormalEquations(problem: Problem, clique: readonly number[]): NormalEquations {
  const { nodeOf, dimension, prepared, network } = problem;
  const edges: number[] = [];
  const couple = (points: readonly number[]): void => {
    for (const a of points) for (const b of points) if (a < b) edges.push(a, b);
  };
  for (const p of prepared) couple([...new Set([...p.refs].map((o) => ix(nodeOf, o / 3)))].filter((n) => n >= 0));
  couple(clique.map((p) => ix(nodeOf, p)).filter((n) => n >= 0));
  const last = new Set(clique.map((p) => ix(nodeOf, p)));
  network.points.forEach((p, i) => {
    if (p.role === 'mark') last.add(ix(nodeOf, i));
  });
  const elimination = minimumDegree(problem.pointOf.length, edges, last);
  const pattern = blockPattern(dimension, elimination);
  const unknownOf = Int32Array.from(nodeOf, (n) => (n < 0 ? -1 : ix(elimination.position, n) * dimension));
  const pairs = prepared.map((p) => pairsOf(p.refs, nodeOf, pattern));
  return {
    problem,
    pattern,
    matrix: new Float64Array(pattern.rowIndex.length),
    gradient: new Float64Array(pattern.size),
    factor: newFactor(pattern),
    unknownOf,
    pairs,
  };
}

function pairsOf(refs: Int32Array, nodeOf: Int32Array, pattern: BlockPattern): Int32Array {
  const list: number[] = [];
  for (let k = 0; k < refs.length; k++) {
    const nodeK = ix(nodeOf, ix(refs, k) / 3);
    if (nodeK < 0) continue;
    const pk = ix(pattern.elimination.position, nodeK);
    for (let l = k; l < refs.length; l++) {
      const nodeL = ix(nodeOf, ix(refs, l) / 3);
      if (nodeL < 0) continue;
      const pl = ix(pattern.elimination.position, nodeL);
      // The column's ref comes first.
      if (pk === pl) list.push(k, l, pk, -1);
      else if (pk < pl) list.push(k, l, pk, laterIndex(pattern, pk, pl));
      else list.push(l, k, pl, laterIndex(pattern, pl, pk));
    }
  }
  return Int32Array.from(list);
}

/** Fills matrix and gradient from an evaluation and row weights. */
export function assemble(ne: NormalEquations, evaluation: Evaluation, weight: Float64Array): void {
  const { problem, matrix, gradient, unknownOf } = ne;
  const { prepared, rowStart, slotStart, dimension } = problem;
  const { jacobian, residual } = evaluation;
  matrix.fill(0);
  gradient.fill(0);
  for (let i = 0; i < prepared.length; i++) {
    const refs = (prepared[i] as { refs: Int32Array }).refs;
    const pairs = ne.pairs[i] as Int32Array;
    const width = 3 * refs.length;
    let slot = ix(slotStart, i);
    for (let r = ix(rowStart, i); r < ix(rowStart, i + 1); r++, slot += width) {
      const w = at(weight, r);
      if (w === 0) continue;
      const wv = w * at(residual, r);
      for (let k = 0; k < refs.length; k++) {
        const u = ix(unknownOf, ix(refs, k) / 3);
        if (u < 0) continue;
        for (let c = 0; c < dimension; c++) {
          gradient[u + c] = at(gradient, u + c) + wv * at(jacobian, slot + 3 * k + c);
        }
      }
      for (let q = 0; q < pairs.length; q += 4) {
        addBlock(
          ne,
          jacobian,
          w,
          slot + 3 * ix(pairs, q),
          slot + 3 * ix(pairs, q + 1),
          ix(pairs, q + 2),
          ix(pairs, q + 3),
        );
      }
    }
  }
}

function addBlock(
  ne: NormalEquations,
  jacobian: Float64Array,
  w: number,
  columnSlot: number,
  rowSlot: number,
  column: number,
  later: number,
): void {
  const { matrix, pattern } = ne;
  const { block, columnStart } = pattern;
  for (let c = 0; c < block; c++) {
    const start = ix(columnStart, column * block + c);
    const wc = w * at(jacobian, columnSlot + c);
    if (later < 0) {
      const wr = w * at(jacobian, rowSlot + c);
      for (let r = c; r < block; r++) {
        const p = start + r - c;
        // Two refs of one reading may be the same point; then both cross terms fall on its diagonal block.
        const cross = columnSlot === rowSlot ? 0 : wr * at(jacobian, columnSlot + r);
        matrix[p] = at(matrix, p) + wc * at(jacobian, rowSlot + r) + cross;
      }
    } else {
      const base = start + block - c + later * block;
      for (let r = 0; r < block; r++) matrix[base + r] = at(matrix, base + r) + wc * at(jacobian, rowSlot + r);
    }
  }
}

/** x + step, the step given per permuted unknown; known points stay. */
export function moved(ne: NormalEquations, x: Float64Array, step: Float64Array, into: Float64Array): void {
  const { unknownOf, problem } = ne;
  for (let p = 0; p < unknownOf.length; p++) {
    const u = ix(unknownOf, p);
    for (let c = 0; c < 3; c++) {
      into[3 * p + c] = at(x, 3 * p + c) + (u >= 0 && c < problem.dimension ? at(step, u + c) : 0);
    }
  }
}
