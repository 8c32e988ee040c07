import { describe, expect, it } from 'vitest';
import {
  adjust,
  type Network,
  type NetworkPoint,
  type Solution,
  seededRandom,
} from '../../../src/core/adjust/index.ts';
import { bowJob, shadeJob } from '../../bench/adjust-jobs.ts';

function solved(network: Network, options = {}): Solution {
  const a = adjust(network, options);
  if (a.state !== 'solved') throw new Error(`ended as ${a.state}`);
  return a.solution;
}

const span = (s: Solution, a: string, b: string): number => {
  const [p, q] = [a, b].map((id) => s.points.find((x) => x.id === id)?.position ?? [0, 0, 0]);
  return Math.hypot(...(p ?? []).map((v, c) => v - (q?.[c] ?? 0)));
};

function sameShape(a: Solution, b: Solution, scale = 1): void {
  for (const p of a.points)
    for (const q of a.points) expect(span(b, p.id, q.id)).toBeCloseTo(scale * span(a, p.id, q.id), 4);
  for (const p of a.points) {
    const other = b.points.find((q) => q.id === p.id);
    expect(other?.relative95).toBeCloseTo(scale * (p.relative95 ?? 0), 5);
  }
  for (const r of a.readings) {
    const other = b.readings.find((q) => q.id === r.id);
    expect(other?.standardised).toBeCloseTo(r.standardised ?? 0, 5);
    expect(other?.redundancy).toBeCloseTo(r.redundancy, 7);
  }
}

const JOBS = [1, 2, 3].flatMap((seed) => [bowJob(seededRandom(seed)).network, shadeJob(seededRandom(seed)).network]);

describe('what must not matter does not', () => {
  it('the datum: marks or all points hold the frame', () => {
    for (const network of JOBS) sameShape(solved(network), solved(network, { datum: 'free' }));
  });
  it('the order of points and readings', () => {
    for (const network of JOBS) {
      const turned = { ...network, points: [...network.points].reverse(), readings: [...network.readings].reverse() };
      sameShape(solved(network), solved(turned));
    }
  });
  it('the unit: everything in inches is the same shape', () => {
    for (const network of JOBS) {
      const readings = network.readings.map((r) => ({ ...r, value: r.value / 25.4, sigma: r.sigma / 25.4 }));
      sameShape(solved(network), solved({ ...network, readings }), 1 / 25.4);
    }
  });
  it('a nominal layout that is far off, or none', () => {
    const random = seededRandom(9);
    for (const network of JOBS) {
      const points = network.points.map((p): NetworkPoint => ({ ...p, nominal: [900 * random(), 900 * random(), 0] }));
      sameShape(solved(network), solved({ ...network, points }));
    }
  });
  it('a warm start', () => {
    for (const network of JOBS) {
      const cold = solved(network);
      const start = new Map(cold.points.map((p) => [p.id, p.position]));
      sameShape(cold, solved(network, { start }));
    }
  });
});

describe('redundancy and reliability', () => {
  it('redundancy numbers add up to the degrees of freedom', () => {
    for (const network of JOBS) {
      const s = solved(network);
      expect(s.readings.reduce((sum, r) => sum + r.redundancy, 0)).toBeCloseTo(s.freedom, 6);
    }
  });
  it('a shade measured as its guide asks has one spare, a flat bow cover fourteen', () => {
    expect(solved(shadeJob(seededRandom(1)).network).freedom).toBe(1);
    expect(solved(bowJob(seededRandom(1)).network).freedom).toBe(14);
  });
  it('no reading more ever loosens a point', { timeout: 300_000 }, () => {
    for (const seed of [1, 2]) {
      const { network } = bowJob(seededRandom(seed));
      const full = solved(network);
      // The same shape with one tape fewer, at the same places: a priori nothing may be tighter.
      const exact = network.readings.map((r) => ({ ...r, value: span(full, r.points[0] ?? '', r.points[1] ?? '') }));
      const all = solved({ ...network, readings: exact });
      for (const left of exact) {
        const fewer = adjust({ ...network, readings: exact.filter((r) => r.id !== left.id) });
        if (!('solution' in fewer)) throw new Error(fewer.state);
        for (const p of all.points) {
          const without = fewer.solution.points.find((q) => q.id === p.id);
          expect(without?.relative95 ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual((p.relative95 ?? 0) - 1e-6);
        }
      }
    }
  });
  it('a slip of the smallest visible size shifts no point further than external reliability says', {
    timeout: 300_000,
  }, () => {
    const { network } = bowJob(seededRandom(5));
    const base = solved(network);
    const start = new Map(base.points.map((p) => [p.id, p.position]));
    for (const r of base.readings) {
      const slipped = network.readings.map((q) =>
        q.id === r.id ? { ...q, value: q.value + (r.minimalDetectableBias ?? 0) } : q,
      );
      const moved = adjust({ ...network, readings: slipped }, { start, seekShapes: false });
      if (!('solution' in moved)) throw new Error(moved.state);
      for (const p of base.points) {
        for (const m of base.points.filter((q) => q.id.startsWith('W'))) {
          const change = Math.abs(span(moved.solution, p.id, m.id) - span(base, p.id, m.id));
          const bound = (p.worstUnseen?.shift ?? 0) + (m.worstUnseen?.shift ?? 0);
          expect(change).toBeLessThanOrEqual(1.02 * bound + 0.05);
        }
      }
    }
  });
});
