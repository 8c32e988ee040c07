import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { adjust, type Network, seededRandom } from '../../../src/core/adjust/index.ts';
import { normalDeviate, type Random } from '../../../src/core/adjust/random.ts';

const PYTHON = '/usr/bin/python3';
const available = spawnSync(PYTHON, ['-c', 'import scipy']).status === 0;

interface Made {
  readonly network: Network;
  readonly problem: { dimension: number; known: number[][]; start: number[][]; rows: number[][] };
}

/** Known points round about, free points among them, each taped to all known ones and to some of the others. */
function randomNetwork(random: Random, dimension: 2 | 3): Made {
  const place = (size: number): number[] => [0, 1, 2].map((c) => (c < dimension ? size * (random() - 0.5) : 0));
  const known = Array.from({ length: dimension + 1 }, () => place(6000));
  const free = Array.from({ length: 3 + Math.floor(8 * random()) }, () => place(4000));
  const all = [...known, ...free];
  const rows: number[][] = [];
  all.forEach((p, j) => {
    all.slice(0, j).forEach((q, i) => {
      if (j < known.length || (i >= known.length && random() < 0.5)) return;
      const d = Math.hypot(...p.map((v, c) => v - (q[c] ?? 0)));
      const sigma = 1 + 0.3e-3 * d;
      rows.push([i, j, d + 2 * sigma * normalDeviate(random), sigma]);
    });
  });
  const start = free.map((p) => p.map((v, c) => (c < dimension ? v + 40 * normalDeviate(random) : 0)));
  const vector = (v: readonly number[]) => [v[0] ?? 0, v[1] ?? 0, v[2] ?? 0] as const;
  return {
    problem: { dimension, known, start, rows },
    network: {
      dimension,
      points: all.map((_, k) => ({
        id: `${k}`,
        label: `${k}`,
        ...(k < known.length ? { known: vector(known[k] ?? []) } : { nominal: vector(start[k - known.length] ?? []) }),
      })),
      readings: rows.map(([i = 0, j = 0, value = 0, sigma = 1], r) => ({
        id: `${r}`,
        kind: 'straight',
        points: [`${i}`, `${j}`],
        value,
        sigma,
      })),
    },
  };
}

describe.skipIf(!available)('scipy.optimize.least_squares as an independent solver', () => {
  it('same minimum, coordinates and covariance on 200 random networks', { timeout: 120_000 }, () => {
    const random = seededRandom(2024);
    const made = Array.from({ length: 200 }, (_, k) => randomNetwork(random, k % 2 === 0 ? 2 : 3));
    const script = fileURLToPath(new URL('./scipy_solve.py', import.meta.url));
    const run = spawnSync(PYTHON, [script], { input: JSON.stringify(made.map((m) => m.problem)), maxBuffer: 1e9 });
    expect(run.status).toBe(0);
    const answers: { square: number; x: number[]; covariance: number[][] }[] = JSON.parse(run.stdout.toString());
    expect(answers).toHaveLength(200);
    made.forEach(({ network, problem }, k) => {
      const theirs = answers[k];
      const ours = adjust(network);
      if (!('solution' in ours) || theirs === undefined) throw new Error(`network ${k} ended as ${ours.state}`);
      const { solution } = ours;
      expect(Math.abs(solution.weightedSquare / theirs.square - 1)).toBeLessThan(1e-6);
      const n = network.dimension;
      const first = problem.known.length;
      problem.start.forEach((_, p) => {
        const point = solution.points[first + p];
        const c = point?.covariance ?? [0, 0, 0, 0, 0, 0];
        const packed = [0, 1, 2, 1, 3, 4, 2, 4, 5];
        for (let a = 0; a < n; a++) {
          expect(Math.abs((point?.position[a] ?? 0) - (theirs.x[n * p + a] ?? 0))).toBeLessThan(1e-3);
          for (let b = 0; b < n; b++) {
            const scale = Math.sqrt(
              (theirs.covariance[n * p + a]?.[n * p + a] ?? 0) * (theirs.covariance[n * p + b]?.[n * p + b] ?? 0),
            );
            const mine = c[packed[3 * a + b] ?? 0] ?? 0;
            expect(Math.abs(mine - (theirs.covariance[n * p + a]?.[n * p + b] ?? 0)) / scale).toBeLessThan(1e-5);
          }
        }
      });
      const r = solution.readings.reduce((sum, one) => sum + one.redundancy, 0);
      expect(r).toBeCloseTo(solution.freedom, 6);
    });
  });
});
