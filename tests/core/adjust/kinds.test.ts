import { describe, expect, it } from 'vitest';
import type { NetworkReading } from '../../../src/core/adjust/index.ts';
import { KINDS } from '../../../src/core/adjust/kinds/index.ts';
import { evaluate, newEvaluation, prepare, settleKinds } from '../../../src/core/adjust/problem.ts';
import { seededRandom } from '../../../src/core/adjust/random.ts';
import { ReadingKind as JobReadingKind } from '../../../src/core/job/index.ts';

type ReadingKind = NetworkReading['kind'];

const IDS = ['A', 'B', 'C', 'D', 'E', 'F'];

function setUp(reading: Omit<NetworkReading, 'id' | 'sigma'>, dimension: 2 | 3) {
  return prepare({
    dimension,
    points: IDS.map((id) => ({ id, label: id })),
    readings: [{ id: 'r', sigma: 1, ...reading }],
  });
}

/** Shapes of reading each kind can take; every one gets a finite-difference check. */
const VARIANTS: Record<ReadingKind, Omit<NetworkReading, 'id' | 'sigma' | 'kind'>[]> = {
  straight: [{ points: ['A', 'B'], value: 0 }],
  girth: [
    { points: ['A', 'B', 'C', 'D'], value: 0, shape: 'straight' },
    { points: ['A', 'B', 'C'], value: 0, shape: 'arc' },
    { points: ['A', 'B', 'C', 'D', 'E', 'F'], value: 0, shape: 'arc' },
  ],
  height: [
    { points: ['A'], value: 0 },
    { points: ['A'], value: 0, baseline: ['B', 'C'] },
    { points: ['A'], value: 0, baseline: ['B', 'C', 'D'] },
  ],
  along: [
    { points: ['A'], value: 0 },
    { points: ['A'], value: 0, baseline: ['B', 'C'] },
  ],
  out: [
    { points: ['A'], value: 0 },
    { points: ['A'], value: 0, direction: 'starboard' },
    { points: ['A'], value: 0, baseline: ['B', 'C'] },
    { points: ['A'], value: 0, baseline: ['B', 'C'], direction: 'right' },
    { points: ['A'], value: 0, baseline: ['B', 'A'], direction: 'left' },
  ],
  running: [
    { points: ['A', 'B'], value: 0 },
    { points: ['A', 'B', 'C'], value: 0, shape: 'arc' },
    { points: ['A', 'B'], value: 0, baseline: ['C', 'D'] },
    { points: ['A', 'B'], value: 0, baseline: ['A', 'D'] },
  ],
  lean: [
    { points: ['A', 'B'], value: 0 },
    { points: ['A', 'B'], value: 0, direction: 'aft' },
    { points: ['A', 'B'], value: 0, direction: 'port' },
    { points: ['A', 'B'], value: 0, baseline: ['C', 'D', 'E'] },
  ],
  centre: [
    { points: ['A', 'B'], value: 0 },
    { points: ['A', 'B'], value: 0, baseline: ['C', 'D'] },
  ],
  mirror: [
    { points: ['A', 'B'], value: 0 },
    { points: ['A', 'B'], value: 0, baseline: ['C', 'D'] },
  ],
  level: [{ points: ['A', 'B', 'C'], value: 0 }],
  plumb: [{ points: ['A', 'B', 'C'], value: 0 }],
  flat: [{ points: IDS, value: 0 }],
  known: [
    { points: ['A'], value: 0, axis: 'x' },
    { points: ['A'], value: 0, axis: 'y' },
  ],
};

describe('every kind has the exact derivatives of its equation', () => {
  // A size fixes no point, so the engine is never given one.
  for (const kind of JobReadingKind.options.filter((option) => option !== 'size')) {
    for (const [n, variant] of VARIANTS[kind].entries()) {
      for (const dimension of [2, 3] as const) {
        const reading = { kind, ...variant };
        if (KINDS[kind].unusable({ id: 'r', sigma: 1, ...reading }, dimension) !== undefined) continue;
        it(`${kind} ${n} in ${dimension} dimensions`, () => {
          const problem = setUp(reading, dimension);
          expect(problem.rejected).toEqual([]);
          const random = seededRandom(7 + n);
          for (let trial = 0; trial < 5; trial++) {
            const x = Float64Array.from({ length: 18 }, (_, c) =>
              dimension === 2 && c % 3 === 2 ? 0 : 2000 * (random() - 0.5),
            );
            settleKinds(problem, x);
            const exact = newEvaluation(problem);
            evaluate(problem, x, exact);
            const step = 1e-3;
            for (let p = 0; p < 6; p++) {
              for (let c = 0; c < dimension; c++) {
                const [up, down] = [1, -1].map((sign) => {
                  const y = Float64Array.from(x);
                  y[3 * p + c] = (y[3 * p + c] ?? 0) + sign * step;
                  const e = newEvaluation(problem);
                  evaluate(problem, y, e);
                  return e.computed;
                });
                for (let row = 0; row < problem.rows; row++) {
                  const refs = problem.prepared[0]?.refs ?? new Int32Array(0);
                  let analytic = 0;
                  refs.forEach((ref, k) => {
                    if (ref === 3 * p) analytic += exact.jacobian[(row * refs.length + k) * 3 + c] ?? 0;
                  });
                  const numeric = ((up?.[row] ?? 0) - (down?.[row] ?? 0)) / (2 * step);
                  expect(Math.abs(analytic - numeric)).toBeLessThan(2e-6);
                }
              }
            }
          }
        });
      }
    }
  }
});

describe('worked residuals', () => {
  // Corner of a box: A at the origin, B 3 m ahead, C 4 m to port of A, D 12 m above B.
  const x = Float64Array.from([0, 0, 0, 3000, 0, 0, 0, 4000, 0, 3000, 0, 12000, 1000, 500, 250, 3000, 4000, 0]);
  const value = (reading: Omit<NetworkReading, 'id' | 'sigma'>, dimension: 2 | 3 = 3): number[] => {
    const problem = setUp(reading, dimension);
    settleKinds(problem, x);
    const e = newEvaluation(problem);
    evaluate(problem, x, e);
    return [...e.residual];
  };

  it('straight: the 3-4-5 triangle, read 10 mm long', () => {
    expect(value({ kind: 'straight', points: ['B', 'C'], value: 5010 })[0]).toBeCloseTo(-10, 9);
  });
  it('girth declared straight adds its chords, 3 m and 5 m', () => {
    expect(value({ kind: 'girth', points: ['A', 'B', 'C'], value: 0, shape: 'straight' })[0]).toBeCloseTo(8000, 9);
  });
  it('girth declared an arc: a right angle at the middle is half a circle on the hypotenuse', () => {
    const half = (Math.PI * 5000) / 2;
    expect(value({ kind: 'girth', points: ['B', 'A', 'C'], value: 0, shape: 'arc' })[0]).toBeCloseTo(half, 6);
  });
  it('an undeclared girth gives no equation', () => {
    expect(value({ kind: 'girth', points: ['A', 'B'], value: 3000 })).toEqual([]);
  });
  it('height over the frame, a plane (up positive whichever way round it is named), a string', () => {
    expect(value({ kind: 'height', points: ['E'], value: 200 })[0]).toBeCloseTo(50, 9);
    for (const baseline of [
      ['A', 'B', 'C'],
      ['A', 'C', 'B'],
    ]) {
      expect(value({ kind: 'height', points: ['E'], value: 200, baseline })[0]).toBeCloseTo(50, 9);
    }
    expect(value({ kind: 'height', points: ['E'], value: 0, baseline: ['A', 'B'] })[0]).toBeCloseTo(
      Math.hypot(500, 250),
      9,
    );
  });
  it('along and out from a baseline', () => {
    expect(value({ kind: 'along', points: ['E'], value: 0, baseline: ['A', 'B'] })[0]).toBeCloseTo(1000, 9);
    const out = { kind: 'out', points: ['E'], value: 0, baseline: ['A', 'B'] } as const;
    expect(value({ ...out, direction: 'left' }, 2)[0]).toBeCloseTo(500, 9);
    expect(value({ ...out, direction: 'right' }, 2)[0]).toBeCloseTo(-500, 9);
    expect(value({ ...out, direction: 'port' }, 2)[0]).toBeCloseTo(500, 9);
  });
  it('running counts from its start', () => {
    expect(value({ kind: 'running', points: ['A', 'B'], value: 2990 })[0]).toBeCloseTo(10, 9);
    expect(value({ kind: 'running', points: ['E', 'B'], value: 0, baseline: ['A', 'B'] })[0]).toBeCloseTo(2000, 9);
  });
  it('lean: 12 m up and 3 m ahead', () => {
    const angle = Math.atan2(3, 12);
    expect(value({ kind: 'lean', points: ['A', 'D'], value: 0 })[0]).toBeCloseTo(angle, 12);
    expect(value({ kind: 'lean', points: ['A', 'D'], value: 0, direction: 'forward' })).toEqual([
      expect.closeTo(angle, 12),
      expect.closeTo(0, 12),
    ]);
    expect(value({ kind: 'lean', points: ['A', 'D'], value: 0, direction: 'aft' })[0]).toBeCloseTo(-angle, 12);
    expect(value({ kind: 'lean', points: ['A', 'D'], value: 0, baseline: ['A', 'C', 'B'] })[0]).toBeCloseTo(angle, 12);
  });
  it('facts: centre, mirror, level, plumb, flat', () => {
    expect(value({ kind: 'centre', points: ['B', 'C'], value: 0 })).toEqual([0, 4000]);
    expect(value({ kind: 'mirror', points: ['B', 'F'], value: 0 })).toEqual([0, 4000, 0]);
    expect(value({ kind: 'level', points: ['A', 'E', 'D'], value: 0 })).toEqual([250, 12000]);
    expect(value({ kind: 'plumb', points: ['B', 'D'], value: 0 })).toEqual([0, 0]);
    expect(Math.abs(value({ kind: 'flat', points: ['A', 'B', 'C', 'F', 'E'], value: 0 }).at(-1) ?? 0)).toBeGreaterThan(
      100,
    );
  });
});

describe('readings that cannot be used are set aside with a reason', () => {
  const why = (reading: Omit<NetworkReading, 'id' | 'sigma'>, sigma = 1, dimension: 2 | 3 = 3): string | undefined =>
    prepare({
      dimension,
      points: IDS.map((id) => ({ id, label: id })),
      readings: [{ id: 'r', sigma, ...reading }],
    }).rejected[0]?.why;
  it('says nothing about a sound one', () => {
    expect(why({ kind: 'straight', points: ['A', 'B'], value: 1 })).toBeUndefined();
  });
  it('names what is wrong', () => {
    expect(why({ kind: 'straight', points: ['A', 'Z'], value: 1 })).toContain('Z');
    expect(why({ kind: 'straight', points: ['A', 'A'], value: 1 })).toContain('different');
    expect(why({ kind: 'straight', points: ['A'], value: 1 })).toContain('2 points');
    expect(why({ kind: 'straight', points: ['A', 'B'], value: Number.NaN })).toContain('number');
    expect(why({ kind: 'straight', points: ['A', 'B'], value: 1 }, 0)).toContain('sigma');
    expect(why({ kind: 'height', points: ['A'], value: 1 }, 1, 2)).toContain('flat');
    expect(why({ kind: 'known', points: ['A'], value: 1 })).toContain('axis');
  });
});
