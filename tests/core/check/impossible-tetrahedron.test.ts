import { describe, expect, it } from 'vitest';
import { distances, Job, readingId } from './build.ts';

const key = 'impossible-tetrahedron';
const NAMES = ['A-B', 'A-C', 'B-C', 'C-D', 'B-D', 'A-D'] as const;
function six(lengths: readonly number[], scale: number, boxes: [string, string, string, string][] = []): Job {
  const job = new Job().piece({ points: { A: null, B: null, C: null, D: null }, readings: [...NAMES], boxes });
  return job.takes(Object.fromEntries(NAMES.map((name, index) => [name, (lengths[index] ?? 0) * scale])));
}

/**
 * Perfect tetrahedra, columns AB AC BC CD BD AD: OEIS A272388 after R. H. Buchholz, "Perfect pyramids",
 * Bull. Austral. Math. Soc. 45 (1992).
 */
const BUCHHOLZ: readonly (readonly number[])[] = [
  [117, 84, 51, 52, 53, 80],
  [160, 153, 25, 39, 56, 120],
  [203, 195, 148, 203, 195, 148],
  [225, 200, 65, 119, 156, 87],
  [234, 168, 102, 104, 106, 160],
  [318, 221, 203, 42, 175, 221],
  [319, 318, 175, 175, 210, 221],
  [319, 318, 175, 203, 252, 221],
  [320, 306, 50, 78, 112, 240],
  [351, 252, 153, 156, 159, 240],
];

describe(key, () => {
  it.each(BUCHHOLZ)('says nothing about the perfect tetrahedron %i %i %i %i %i %i', (...lengths) => {
    expect(six(lengths, 10).findings()).toEqual([]);
  });
  it('says nothing about a flat 3 by 4 rectangle with diagonals of 5', () => {
    expect(six([3, 5, 4, 3, 5, 4], 500).findings()).toEqual([]);
  });
  it('says nothing about a flat square read to the millimetre', () => {
    expect(six([1, Math.SQRT2, 1, 1, Math.SQRT2, 1], 1234).findings()).toEqual([]);
  });
  it('says nothing about four marks in a line', () => {
    expect(six([1, 2, 1, 1, 2, 3], 700).findings()).toEqual([]);
  });
  it('says nothing about a flat set whose diagonal was read 5 mm long', () => {
    const flat = distances({ A: [0, 0, 0], B: [2000, 0, 0], C: [2000, 1500, 0], D: [0, 1500, 0] });
    const job = new Job().piece({ points: { A: null, B: null, C: null, D: null }, readings: [...NAMES] });
    expect(job.takes({ ...flat, 'B-D': (flat['B-D'] ?? 0) + 5 }).findings()).toEqual([]);
  });
  it('leaves a declared box to box-diagonals', () => {
    expect(
      six([4, 4, 4, 2.25, 2.25, 2.25], 500, [['A', 'B', 'C', 'D']])
        .findings()
        .map(({ rule }) => rule),
    ).toEqual(['box-diagonals']);
  });
  it('is silent where a face already fails', () => {
    expect(
      six([4, 4, 4, 1.5, 1.5, 1.5], 500)
        .findings()
        .map(({ rule }) => rule),
    ).not.toContain(key);
  });

  // Every face closes, yet the apex cannot reach: 9/4 < 4/√3. Cayley-Menger determinant -416; likewise 10 and 5.5: -185000.
  it.each([
    [[4, 4, 4, 9 / 4, 9 / 4, 9 / 4], 500],
    [[10, 10, 10, 5.5, 5.5, 5.5], 200],
  ])('stops at six lengths whose faces close but which cannot stand together', (lengths, scale) => {
    expect(six(lengths, scale).findings()).toMatchObject([
      { rule: key, severity: 'stop', numbers: { limit: 4, failing: 1, suspect: null } },
    ]);
  });
  it('says nothing about the same base with sides that do reach (10 and 6)', () => {
    expect(six([10, 10, 10, 6, 6, 6], 200).findings()).toEqual([]);
  });
  it('leaves the word to the engine where that names the one reading several failing sets share', () => {
    // Three points round the line B-D, which is then read 300 mm long: each face still closes.
    const round = distances({
      A: [1000, 600, 0],
      B: [0, 0, 0],
      C: [1000, -300, 520],
      D: [2000, 0, 0],
      E: [1000, -300, -520],
    });
    const points = { A: null, B: null, C: null, D: null, E: null };
    const job = new Job().piece({ points, readings: Object.keys(round) });
    const findings = job.takes({ ...round, 'B-D': 2300 }).all();
    expect(findings.filter(({ severity }) => severity === 'stop')).toMatchObject([
      { rule: 'reading-doubted', slot: 'B-D', subjects: [{ id: readingId('B-D') }] },
    ]);
    expect(job.of(key)).toEqual([]);
  });
});
