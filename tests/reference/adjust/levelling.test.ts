import { describe, expect, it } from 'vitest';
import {
  type Adjustment,
  adjust,
  type Network,
  type NetworkReading,
  type Solution,
} from '../../../src/core/adjust/index.ts';

function solved(adjustment: Adjustment): Solution {
  if (adjustment.state !== 'solved') throw new Error(`ended as ${adjustment.state}`);
  return adjustment.solution;
}

/** Position and a posteriori standard deviations of a point. */
function at(solution: Solution, id: string) {
  const p = solution.points.find((q) => q.id === id);
  const c = p?.covariance ?? [Number.NaN, 0, 0, Number.NaN, 0, Number.NaN];
  const sd = [c[0], c[3], c[5]].map((v) => Math.sqrt(v) * (solution.unitError ?? 1));
  return { position: p?.position ?? [], sd };
}

const reading = (solution: Solution, id: string) => {
  const found = solution.readings.find((r) => r.id === id);
  if (found === undefined) throw new Error(`no reading ${id}`);
  return found;
};

/**
 * Levelling as stations along a line: `running` between two fixed baseline points gives differences, `out` keeps the
 * points on the line (and nothing checks it).
 */
function levelling(
  fixed: Record<string, number>,
  free: readonly string[],
  differences: readonly (readonly [string, string, number, number])[],
): Network {
  const readings: NetworkReading[] = differences.map(([a, b, value, sigma]) => ({
    id: `${a}-${b}`,
    kind: 'running',
    points: [a, b],
    baseline: ['zero', 'far'],
    value,
    sigma,
  }));
  for (const id of free) readings.push({ id: `line-${id}`, kind: 'out', points: [id], value: 0, sigma: 0.001 });
  return {
    dimension: 2,
    points: [
      { id: 'zero', label: 'zero', known: [0, 0, 0] },
      { id: 'far', label: 'far', known: [1000, 0, 0] },
      ...Object.entries(fixed).map(([id, h]) => ({ id, label: id, known: [h, 0, 0] as const })),
      ...free.map((id) => ({ id, label: id, nominal: [0, 0, 0] as const })),
    ],
    readings,
  };
}

describe('levelling: outlier tests with printed redundancy and smallest detectable errors', () => {
  // Program output for a HU Utrecht exercise (repository sgielkens/geodata, opgave_20): alpha 0.001, power 0.80.
  const ring = levelling(
    { A: 5 },
    ['B', 'C', 'D'],
    [
      ['D', 'B', 17.309, 0.001],
      ['B', 'A', -7.451, 0.001],
      ['B', 'C', 29.783, 0.001],
      ['A', 'D', -9.841, 0.001],
      ['A', 'C', 37.232, 0.001],
    ],
  );
  const options = { readingAlpha: 0.001, globalAlpha: 0.05 } as const;
  it('ring of five: residuals, redundancy, W, estimated error, MDB, BNR', () => {
    const s = solved(adjust(ring, options));
    const printed: Record<string, number[]> = {
      'D-B': [-0.00663, 0.375, 10.82, 0.01767, 0.00675, 5.3],
      'B-A': [-0.00375, 0.5, 5.3, 0.0075, 0.00584, 4.1],
      'B-C': [-0.00288, 0.375, 4.695, 0.00767, 0.00675, 5.3],
      'A-D': [-0.00663, 0.375, 10.82, 0.01767, 0.00675, 5.3],
      'A-C': [0.00288, 0.375, 4.695, -0.00767, 0.00675, 5.3],
    };
    for (const [id, [v = 0, r = 0, w = 0, error = 0, mdb = 0, bnr = 0]] of Object.entries(printed)) {
      const one = reading(s, id);
      expect(Math.abs(one.residual - v)).toBeLessThan(0.6e-5);
      expect(one.redundancy).toBeCloseTo(r, 3);
      expect(Math.abs(one.standardised ?? 0)).toBeCloseTo(w, 2);
      expect(Math.abs((one.estimatedError ?? 0) - error)).toBeLessThan(0.6e-5);
      expect(Math.abs((one.minimalDetectableBias ?? 0) - mdb)).toBeLessThan(0.6e-5);
      expect(one.biasToNoise).toBeCloseTo(bnr, 1);
    }
    expect(s.readingTest.critical).toBeCloseTo(3.29, 2);
    expect(at(s, 'C').position[0]).toBeCloseTo(42.2349, 4);
    expect(at(s, 'D').position[0]).toBeCloseTo(-4.8476, 4);
    expect(s.weightedSquare / s.freedom).toBeCloseTo(59.1875, 3);
    expect(s.globalTest.verdict).toBe('fails');
  });
  // opgave_42 of the same source.
  it('triangle: every W equal, so nothing can be told apart', () => {
    const s = solved(
      adjust(
        levelling(
          { A: 2.334 },
          ['B', 'C'],
          [
            ['A', 'B', 3.425, 0.0028284],
            ['C', 'B', 2.783, 0.004],
            ['A', 'C', 0.666, 0.0028284],
          ],
        ),
        options,
      ),
    );
    expect(at(s, 'B').position[0]).toBeCloseTo(5.765, 4);
    expect(at(s, 'C').position[0]).toBeCloseTo(2.994, 4);
    for (const id of ['A-B', 'C-B', 'A-C']) {
      expect(Math.abs(reading(s, id).standardised ?? 0)).toBeCloseTo(4.24, 2);
      expect(reading(s, id).minimalDetectableBias).toBeCloseTo(0.023375, 5);
    }
    expect(s.readings.slice(0, 3).map((r) => r.redundancy)).toEqual([0.25, 0.5, 0.25].map((v) => expect.closeTo(v, 4)));
    expect(s.weightedSquare).toBeCloseTo(18, 2);
  });
  // C. D. Ghilani 2010, Ex. 12.6, p. 218.
  it('Ghilani 12.6: weighted levelling', () => {
    const s = solved(
      adjust(
        levelling(
          { A: 437.596 },
          ['B', 'C', 'D'],
          [
            ['A', 'B', 10.509, 0.006],
            ['B', 'C', 5.36, 0.004],
            ['C', 'D', -8.523, 0.005],
            ['D', 'A', -7.348, 0.003],
            ['B', 'D', -3.167, 0.004],
            ['A', 'C', 15.881, 0.012],
          ],
        ),
        options,
      ),
    );
    expect(['B', 'C', 'D'].map((id) => at(s, id).position[0])).toEqual(
      [448.1087, 453.4685, 444.9436].map((v) => expect.closeTo(v, 4)),
    );
    expect(['B', 'C', 'D'].map((id) => at(s, id).sd[0])).toEqual(
      [0.0023, 0.00264, 0.00176].map((v) => expect.closeTo(v, 5)),
    );
    expect(s.weightedSquare).toBeCloseTo(1.272123, 4);
    expect(s.readings.slice(0, 6).map((r) => r.redundancy)).toEqual(
      [0.6549, 0.3294, 0.5092, 0.1877, 0.4326, 0.8862].map((v) => expect.closeTo(v, 4)),
    );
  });
  // GNU Gama's one-dimensional sample (page at vrmapper.com): a priori standard deviations there.
  it('eight-leg levelling sample', () => {
    const s = solved(
      adjust(
        levelling(
          { a: 1000 },
          ['2', '3', '4'],
          [
            ['a', '4', -1.225, 0.005],
            ['4', '3', -0.848, 0.005],
            ['3', '2', 1.342, 0.005],
            ['2', 'a', 0.72, 0.005],
            ['a', '2', -0.724, 0.005],
            ['2', '3', -1.335, 0.005],
            ['3', '4', 0.842, 0.005],
            ['4', 'a', 1.231, 0.005],
          ],
        ),
        options,
      ),
    );
    expect(['4', '3', '2'].map((id) => at(s, id).position[0])).toEqual(
      [998.77513, 997.93325, 999.27487].map((v) => expect.closeTo(v, 5)),
    );
    expect((s.unitError ?? 0) * 5).toBeCloseTo(5.42, 2);
    expect(s.readings.slice(0, 8).map((r) => r.redundancy)).toEqual(Array(8).fill(expect.closeTo(0.625, 4)));
    expect(Math.max(...s.readings.map((r) => Math.abs(r.standardised ?? 0)))).toBeCloseTo(1.68, 2);
  });
});
