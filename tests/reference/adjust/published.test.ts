import { describe, expect, it } from 'vitest';
import { type Adjustment, adjust, type Network, type Solution } from '../../../src/core/adjust/index.ts';

/** A network as printed: distances, fixed points, approximate coordinates of the rest. Any unit, all alike. */
function network(
  dimension: 2 | 3,
  fixed: Record<string, number[]>,
  near: Record<string, number[]>,
  distances: readonly (readonly [string, string, number])[],
  sigma = 0.01,
  withNominal = true,
): Network {
  const vector = (v: number[]) => [v[0] ?? 0, v[1] ?? 0, v[2] ?? 0] as const;
  return {
    dimension,
    points: [
      ...Object.entries(fixed).map(([id, v]) => ({ id, label: id, known: vector(v) })),
      ...Object.entries(near).map(([id, v]) => ({ id, label: id, ...(withNominal ? { nominal: vector(v) } : {}) })),
    ],
    readings: distances.map(([a, b, value]) => ({ id: `${a}-${b}`, kind: 'straight', points: [a, b], value, sigma })),
  };
}

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

describe('distance networks, as compiled in F. Krumm, Geodetic Network Adjustment Examples, rev. 3.5, 2020', () => {
  // G. Strang, K. Borre, Linear Algebra, Geodesy, and GPS, 1997, Ex. 10.1, p. 345.
  const strang = network(2, { '1': [170.71, 270.71], '2': [100, 100], '3': [241.42, 100] }, { P: [170.71, 170.71] }, [
    ['1', 'P', 100.01],
    ['2', 'P', 100.02],
    ['3', 'P', 100.03],
  ]);
  it('Strang and Borre 10.1: one point, three distances', () => {
    const s = solved(adjust(strang));
    const p = at(s, 'P');
    expect(p.position[0]).toBeCloseTo(170.7029, 4);
    expect(p.position[1]).toBeCloseTo(170.7234, 4);
    expect(p.sd[0]).toBeCloseTo(0.03303, 5);
    expect(p.sd[1]).toBeCloseTo(0.02335, 4);
    expect(s.freedom).toBe(1);
    expect(s.weightedSquare).toBeCloseTo(10.90936, 4);
    expect(s.readings.map((r) => Math.abs(r.tau ?? 0))).toEqual([1, 1, 1].map((v) => expect.closeTo(v, 6)));
    expect(s.readings.map((r) => r.redundancy)).toEqual([0.5, 0.25, 0.2499].map((v) => expect.closeTo(v, 4)));
  });

  it('finds the same point with no approximate coordinates at all', () => {
    const bare = {
      ...strang,
      points: strang.points.map(({ id, label, known }) => ({ id, label, ...(known ? { known } : {}) })),
    };
    expect(at(solved(adjust(bare)), 'P').position[0]).toBeCloseTo(170.7029, 4);
  });

  // Same book, Ex. 12.4, p. 411.
  it('Strang and Borre 12.4: free network, inner constraints', () => {
    const net = network(2, {}, { P: [170.71, 170.71], '1': [170.71, 270.71], '2': [100, 100], '3': [241.42, 100] }, [
      ['1', 'P', 100.01],
      ['2', 'P', 100.02],
      ['3', 'P', 100.03],
      ['1', '2', 184.785],
      ['2', '3', 141.44],
      ['1', '3', 184.805],
    ]);
    const s = solved(adjust(net, { datum: 'free' }));
    const printed: Record<string, number[]> = {
      P: [170.7123, 170.7185, 1.079, 0.682],
      '1': [170.7032, 270.7213, 0.81, 0.551],
      '2': [99.9912, 99.9971, 0.6405, 0.705],
      '3': [241.4333, 99.983, 0.6405, 0.705],
    };
    for (const [id, [x = 0, y = 0, sx = 0, sy = 0]] of Object.entries(printed)) {
      const p = at(s, id);
      // Half a unit of the last printed digit.
      expect(Math.abs((p.position[0] ?? 0) - x)).toBeLessThan(0.6e-4);
      expect(Math.abs((p.position[1] ?? 0) - y)).toBeLessThan(0.6e-4);
      expect(Math.abs(100 * (p.sd[0] ?? 0) - sx)).toBeLessThan(0.6e-3);
      expect(Math.abs(100 * (p.sd[1] ?? 0) - sy)).toBeLessThan(0.6e-3);
    }
    expect(s.weightedSquare).toBeCloseTo(1.383829, 5);
    expect(s.unitError).toBeCloseTo(1.176363, 5);
  });

  // C. D. Ghilani, Adjustment Computations, 5th ed., 2010, Ex. 14.5, p. 251, and 19.3, p. 404 (US feet).
  const ghilani = (badgerWisconsin: number) =>
    network(
      2,
      { Bucky: [2411820, 386881.222], Badger: [2410000, 390000] },
      { Wisconsin: [2415776.819, 391043.461], Campus: [2416892.67, 387603.45] },
      [
        ['Badger', 'Wisconsin', badgerWisconsin],
        ['Badger', 'Campus', 7297.588],
        ['Wisconsin', 'Campus', 3616.434],
        ['Wisconsin', 'Bucky', 5742.878],
        ['Campus', 'Bucky', 5123.76],
      ],
    );
  it('Ghilani 14.5: coordinates and standard deviations', () => {
    const s = solved(adjust(ghilani(5870.302)));
    const w = at(s, 'Wisconsin');
    const c = at(s, 'Campus');
    expect(w.position).toEqual([2415776.9044, 391043.2945, 0].map((v) => expect.closeTo(v, 4)));
    expect(c.position).toEqual([2416892.6955, 387603.2551, 0].map((v) => expect.closeTo(v, 4)));
    expect(w.sd.slice(0, 2)).toEqual([0.14879, 0.22061].map((v) => expect.closeTo(v, 5)));
    expect(c.sd.slice(0, 2)).toEqual([0.10378, 0.27054].map((v) => expect.closeTo(v, 5)));
    expect(s.weightedSquare).toBeCloseTo(184.70266, 4);
  });
  it('its one spare rejects the whole and singles nobody out', () => {
    const s = solved(adjust(ghilani(5870.302)));
    expect(s.globalTest.verdict).toBe('fails');
    expect(s.readings.every((r) => Math.abs(Math.abs(r.tau ?? 0) - 1) < 1e-6)).toBe(true);
    expect(s.readings.map((r) => r.estimatedError)).toEqual(
      [-0.338, 0.234, -0.503, 0.3, -0.289].map((v) => expect.closeTo(v, 3)),
    );
  });
  it('with the distance that fits it passes', () => {
    const s = solved(adjust(ghilani(5870.64)));
    expect(s.globalTest.verdict).toBe('passes');
    expect(s.weightedSquare).toBeCloseTo(0.000085, 6);
    expect(at(s, 'Wisconsin').position[0]).toBeCloseTo(2415777.23335, 4);
  });

  // H. Wolf, Ausgleichungsrechnung II, 1979, p. 87.
  it('Wolf: a point in space from four distances', () => {
    const net = network(
      3,
      { '1': [1200, 900, 900], '2': [900, 600, 900], '3': [600, 900, 900], '4': [900, 1200, 900] },
      { P: [900, 900, 1300] },
      [
        ['1', 'P', 499.99],
        ['2', 'P', 500],
        ['3', 'P', 500.01],
        ['4', 'P', 500.02],
      ],
    );
    const s = solved(adjust(net));
    const p = at(s, 'P');
    expect(p.position).toEqual([900.0167, 899.9833, 1300.00625].map((v) => expect.closeTo(v, 4)));
    expect(p.sd).toEqual([0.01179, 0.01179, 0.00625].map((v) => expect.closeTo(v, 5)));
    expect(s.unitError).toBeCloseTo(1, 5);
    expect(s.readings.map((r) => r.residual)).toEqual([0.005, -0.005, 0.005, -0.005].map((v) => expect.closeTo(v, 6)));
    // Its mirror image under the four fixed points fits as well; only the layout says which is meant.
    expect(s.handedness).toBe('nominal');
  });

  // A. Norrdine, An Algebraic Solution to the Multilateration Problem, IPIN 2012, example A.
  it('Norrdine A: three spheres, both solutions', () => {
    const centres = { '1': [27.297, -4.953, 1.47], '2': [25.475, -6.124, 2.36], '3': [22.59, 0.524, 1.2] };
    const radii = [
      ['1', 'P', 3.851],
      ['2', 'P', 3.875],
      ['3', 'P', 3.514],
    ] as const;
    for (const printed of [
      [24.31229, -2.52045, 1.53649],
      [24.35062, -2.48109, 1.66673],
    ]) {
      const s = solved(adjust(network(3, centres, { P: printed }, radii, 0.001)));
      expect(at(s, 'P').position).toEqual(printed.map((v) => expect.closeTo(v, 5)));
      expect(s.globalTest.verdict).toBe('cannot tell');
      expect(s.readings.every((r) => r.control === 'unchecked')).toBe(true);
    }
  });
});
