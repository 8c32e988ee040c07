import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minimumDegree } from '../../../src/core/adjust/linear/ordering.ts';
import { smallInverse } from '../../../src/core/adjust/linear/small.ts';
import {
  blockPattern,
  denseInverse,
  factorise,
  newFactor,
  nullVectors,
  solveInPlace,
} from '../../../src/core/adjust/linear/sparse-ldl.ts';
import { symmetricEigen } from '../../../src/core/adjust/linear/symmetric-eigen.ts';
import { type Random, seededRandom } from '../../../src/core/adjust/random.ts';

const get = (a: Float64Array, i: number): number => a[i] ?? Number.NaN;

/** Random sparse JᵀJ over `nodes` blocks with the given edges, in dense form, plus its graph. */
function gramOf(nodes: number, block: number, edges: number[], random: Random, anchored: boolean) {
  const n = nodes * block;
  const dense = new Float64Array(n * n);
  const addRow = (entries: [number, number][]): void => {
    for (const [i, a] of entries) for (const [j, b] of entries) dense[i * n + j] = get(dense, i * n + j) + a * b;
  };
  const own = (node: number): [number, number][] =>
    Array.from({ length: block }, (_, c) => [node * block + c, 2 * random() - 1]);
  for (let e = 0; e < edges.length; e += 2) {
    for (let r = 0; r < block; r++) addRow([...own(edges[e] ?? 0), ...own(edges[e + 1] ?? 0)]);
  }
  if (anchored) for (let i = 0; i < n; i++) dense[i * n + i] = get(dense, i * n + i) + 1;
  return dense;
}

function factorOf(dense: Float64Array, nodes: number, block: number, edges: number[], tolerance = 1e-12) {
  const elimination = minimumDegree(nodes, edges, new Set());
  const pattern = blockPattern(block, elimination);
  const n = nodes * block;
  const original = (permuted: number): number =>
    (elimination.order[Math.trunc(permuted / block)] ?? 0) * block + (permuted % block);
  const values = new Float64Array(pattern.rowIndex.length);
  for (let j = 0; j < n; j++) {
    for (let p = pattern.columnStart[j] ?? 0; p < (pattern.columnStart[j + 1] ?? 0); p++) {
      values[p] = get(dense, original(pattern.rowIndex[p] ?? 0) * n + original(j));
    }
  }
  const factor = newFactor(pattern);
  factorise(factor, values, 0, tolerance);
  return { factor, original, n };
}

const graph = fc
  .record({ nodes: fc.integer({ min: 2, max: 12 }), block: fc.constantFrom(2, 3), seed: fc.nat() })
  .map(({ nodes, block, seed }) => {
    const random = seededRandom(seed);
    const edges: number[] = [];
    for (let a = 1; a < nodes; a++) edges.push(a, Math.floor(random() * a));
    for (let k = 0; k < nodes; k++) edges.push(Math.floor(random() * nodes), Math.floor(random() * nodes));
    return { nodes, block, edges: edges.filter((_, i) => edges[i - (i % 2)] !== edges[i - (i % 2) + 1]), random };
  });

describe('sparse L D Lᵀ', () => {
  it('solves random positive definite systems', () => {
    fc.assert(
      fc.property(graph, ({ nodes, block, edges, random }) => {
        const dense = gramOf(nodes, block, edges, random, true);
        const { factor, original, n } = factorOf(dense, nodes, block, edges);
        const truth = Float64Array.from({ length: n }, () => random() - 0.5);
        const x = new Float64Array(n);
        for (let i = 0; i < n; i++) {
          let sum = 0;
          for (let j = 0; j < n; j++) sum += get(dense, original(i) * n + original(j)) * get(truth, j);
          x[i] = sum;
        }
        solveInPlace(factor, x);
        for (const [i, v] of x.entries()) expect(v).toBeCloseTo(get(truth, i), 8);
        expect(factor.nullPivots).toEqual([]);
      }),
      { numRuns: 50, seed: 1 },
    );
  });

  it('gives the whole inverse', () => {
    fc.assert(
      fc.property(graph, ({ nodes, block, edges, random }) => {
        const dense = gramOf(nodes, block, edges, random, true);
        const { factor, original, n } = factorOf(dense, nodes, block, edges);
        const z = denseInverse(factor);
        for (let i = 0; i < n; i++) {
          for (let j = 0; j < n; j++) {
            let sum = 0;
            for (let k = 0; k < n; k++) sum += get(dense, original(i) * n + original(k)) * get(z, k * n + j);
            expect(sum).toBeCloseTo(i === j ? 1 : 0, 8);
          }
        }
      }),
      { numRuns: 30, seed: 2 },
    );
  });

  it('finds the null space of a matrix that lacks rank', () => {
    // A chain of springs along one axis: nothing holds the whole, so one translation is free.
    const n = 6;
    const dense = new Float64Array(n * n);
    const edges: number[] = [];
    for (let a = 0; a + 1 < n; a++) {
      edges.push(a, a + 1);
      for (const [i, j, v] of [
        [a, a, 1],
        [a + 1, a + 1, 1],
        [a, a + 1, -1],
        [a + 1, a, -1],
      ] as const) {
        dense[i * n + j] = get(dense, i * n + j) + v;
      }
    }
    const { factor } = factorOf(dense, n, 1, edges, 1e-10);
    const [z, ...more] = nullVectors(factor);
    expect(more).toEqual([]);
    expect([...(z ?? [])]).toEqual(Array(n).fill(expect.closeTo(1, 12)));
  });

  it('keeps a Hilbert matrix (condition 5e5 at order 5) to ten digits', () => {
    const n = 5;
    const dense = Float64Array.from({ length: n * n }, (_, k) => 1 / (Math.trunc(k / n) + (k % n) + 1));
    const edges = [0, 1, 0, 2, 0, 3, 0, 4, 1, 2, 1, 3, 1, 4, 2, 3, 2, 4, 3, 4];
    const { factor, original } = factorOf(dense, n, 1, edges);
    const z = denseInverse(factor);
    // The inverse's corner entries are whole numbers: 25 and 44100 (closed form of the inverse Hilbert matrix; CALC).
    const place = Array.from({ length: n }, (_, i) => original(i));
    const at0 = place.indexOf(0);
    const at4 = place.indexOf(4);
    expect(get(z, at0 * n + at0) / 25).toBeCloseTo(1, 9);
    expect(get(z, at4 * n + at4) / 44100).toBeCloseTo(1, 9);
  });
});

describe('symmetric eigenvalues', () => {
  it('rebuild the matrix they came from', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.nat(), (n, seed) => {
        const random = seededRandom(seed);
        const a = new Float64Array(n * n);
        for (let i = 0; i < n; i++) for (let j = i; j < n; j++) a[i * n + j] = a[j * n + i] = random() - 0.5;
        const { values, vectors } = symmetricEigen(a, n);
        for (let i = 0; i < n; i++) {
          for (let j = 0; j < n; j++) {
            let sum = 0;
            for (let k = 0; k < n; k++) sum += get(values, k) * get(vectors, i * n + k) * get(vectors, j * n + k);
            expect(sum).toBeCloseTo(get(a, i * n + j), 11);
          }
        }
        for (let k = 1; k < n; k++) expect(get(values, k)).toBeGreaterThanOrEqual(get(values, k - 1));
      }),
      { numRuns: 50, seed: 3 },
    );
  });
});

describe('small inverse', () => {
  it('inverts, and refuses a singular matrix', () => {
    const inverse = smallInverse(Float64Array.of(0, 2, 4, 1), 2);
    expect([...(inverse ?? [])]).toEqual([-0.125, 0.25, 0.5, 0]);
    expect(smallInverse(Float64Array.of(1, 2, 2, 4), 2)).toBeUndefined();
  });
});
