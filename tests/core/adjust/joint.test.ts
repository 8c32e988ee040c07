import { describe, expect, it } from 'vitest';
import {
  adjust,
  jointOf,
  type Network,
  type Slopes,
  seededRandom,
  type Vector,
} from '../../../src/core/adjust/index.ts';
import { bowJob, shadeJob } from '../../bench/adjust-jobs.ts';

const placesOf = (network: Network): Map<string, Vector> => {
  const adjustment = adjust(network, { seekShapes: false });
  if (adjustment.state !== 'solved') throw new Error(`ended as ${adjustment.state}`);
  return new Map(adjustment.solution.points.map(({ id, position }) => [id, position]));
};

/** How the straight distance between two points changes with each. */
function bySpan(places: ReadonlyMap<string, Vector>, a: string, b: string): Slopes {
  const [p, q] = [places.get(a) ?? [0, 0, 0], places.get(b) ?? [0, 0, 0]];
  const way = [q[0] - p[0], q[1] - p[1], q[2] - p[2]] as const;
  const length = Math.hypot(...way);
  const unit = (sign: number): Vector => [(sign * way[0]) / length, (sign * way[1]) / length, (sign * way[2]) / length];
  return new Map([
    [a, unit(-1)],
    [b, unit(1)],
  ]);
}

/** Two marks and a third point by two tapes: no spare reading. */
const triangle = (sigmas: readonly [number, number, number]): Network => ({
  dimension: 2,
  points: ['A', 'B', 'C'].map((id) => ({ id, label: id, sides: id === 'C' ? (['port'] as const) : [] })),
  readings: [
    { id: 'AB', kind: 'straight', points: ['A', 'B'], value: 3000, sigma: sigmas[0] },
    { id: 'AC', kind: 'straight', points: ['A', 'C'], value: 4000, sigma: sigmas[1] },
    { id: 'BC', kind: 'straight', points: ['B', 'C'], value: 5000, sigma: sigmas[2] },
  ],
});

describe('the variance of a value that depends on several places', () => {
  it('of a distance that was taped, and nothing checks it, is that of the tape', () => {
    const network = triangle([2, 3, 5]);
    const places = placesOf(network);
    const joint = jointOf(network, places);
    expect(joint.varianceOf(bySpan(places, 'A', 'B'))).toBeCloseTo(4, 6);
    expect(joint.varianceOf(bySpan(places, 'A', 'C'))).toBeCloseTo(9, 6);
    expect(joint.varianceOf(bySpan(places, 'B', 'C'))).toBeCloseTo(25, 6);
  });

  it('of a height from the base is what the three sides make of it', () => {
    // In a right triangle 3-4-5 with its right angle at A the height of C over AB is AC up to the first order.
    const network = triangle([2, 3, 5]);
    const places = placesOf(network);
    const [a = [0, 0, 0], b = [0, 0, 0]] = [places.get('A'), places.get('B')];
    const normal: Vector = [-(b[1] - a[1]) / 3000, (b[0] - a[0]) / 3000, 0];
    // The height over AB: C moves it by the normal; A, under C, carries all of the base with it, B nothing.
    const slopes: Slopes = new Map([
      ['C', normal],
      ['A', [-normal[0], -normal[1], 0]],
    ]);
    expect(Math.abs(Number(jointOf(network, places).varianceOf(slopes)) - 9)).toBeLessThan(1e-6);
  });

  it('is the same whichever marks the datum lies in', () => {
    for (const seed of [1, 2, 3])
      for (const { network } of [bowJob(seededRandom(seed)), shadeJob(seededRandom(seed))]) {
        const places = placesOf(network);
        const own = jointOf(network, places);
        const ids = network.points.map(({ id }) => id);
        // Marks hold the datum: with others for marks, another covariance matrix says the same of every distance.
        const others = network.points.map((point, i) => ({
          ...point,
          role: i % 2 ? ('mark' as const) : ('edge' as const),
        }));
        const other = jointOf({ ...network, points: others }, places);
        for (const a of ids)
          for (const b of ids.filter((id) => id > a)) {
            const slopes = bySpan(places, a, b);
            const variance = Number(own.varianceOf(slopes));
            expect(variance).toBeGreaterThan(0);
            expect(Number(other.varianceOf(slopes)) / variance).toBeCloseTo(1, 6);
          }
      }
  });

  it('is less than neighbours would have that erred each for itself', () => {
    const { network } = bowJob(seededRandom(4));
    const places = placesOf(network);
    const joint = jointOf(network, places);
    const adjustment = adjust(network, { datum: 'free' });
    if (adjustment.state !== 'solved') throw new Error(adjustment.state);
    const differs = network.points.slice(1).map(({ id }) => {
      const slopes = bySpan(places, 'W1', id);
      const alone = ['W1', id].reduce((sum, end) => {
        const [xx, xy, , yy] = adjustment.solution.points.find((p) => p.id === end)?.covariance ?? [0, 0, 0, 0];
        const [x, y] = slopes.get(end) ?? [0, 0];
        return sum + x * x * xx + 2 * x * y * xy + y * y * yy;
      }, 0);
      return Math.abs(alone / Number(joint.varianceOf(slopes)) - 1);
    });
    expect(Math.max(...differs)).toBeGreaterThan(0.1);
  });

  it('has no answer where the readings give none', () => {
    const network = triangle([2, 3, 5]);
    const places = placesOf(network);
    const joint = jointOf(network, places);
    expect(joint.varianceOf(new Map([['A', [1, 0, 0]]]))).toBe('not-fixed');
    expect(joint.varianceOf(new Map([['Z', [1, 0, 0]]]))).toBe('unknown');
    const loose: Network = {
      ...network,
      points: [...network.points, { id: 'D', label: 'D', nominal: [1000, 1000, 0] }],
      readings: [...network.readings, { id: 'AD', kind: 'straight', points: ['A', 'D'], value: 1500, sigma: 2 }],
    };
    const around = new Map<string, Vector>([...places, ['D', [1000, 1118, 0]]]);
    expect(jointOf(loose, around).varianceOf(bySpan(around, 'B', 'D'))).toBe('floats');
    expect(jointOf(loose, around).varianceOf(bySpan(around, 'A', 'B'))).toBeCloseTo(4, 6);
  });

  it('of heights does not depend on how the shape lies in plan, which no reading says', () => {
    const { network } = shadeJob(seededRandom(5));
    const places = placesOf(network);
    const joint = jointOf(network, places);
    const rise: Slopes = new Map([
      ['A', [0, 0, -1]],
      ['C', [0, 0, 1]],
    ]);
    expect(joint.varianceOf(rise)).toBeGreaterThan(0);
    expect(joint.varianceOf(new Map([['A', [1, 0, 0]]]))).toBe('not-fixed');
  });
});
