import { describe, expect, it } from 'vitest';
import { adjust, type Network, nextTapes, seededRandom } from '../../../src/core/adjust/index.ts';
import { bowJob } from '../../bench/adjust-jobs.ts';

const truth: Record<string, readonly [number, number]> = { A: [0, 0], B: [3000, 0], C: [3000, 2000], D: [0, 2000] };
const box = (pairs: readonly string[]): Network => ({
  dimension: 2,
  points: Object.entries(truth).map(([id, [x, y]]) => ({
    id,
    label: id,
    needed: true,
    nominal: [x + 50, y * 1.1, 0] as const,
  })),
  readings: pairs.map((p) => {
    const [a, b] = [truth[p[0] ?? ''] ?? [0, 0], truth[p[1] ?? ''] ?? [0, 0]];
    return { id: p, kind: 'straight', points: [...p], value: Math.hypot(a[0] - b[0], a[1] - b[1]), sigma: 1.5 };
  }),
});

describe('the next best tape', () => {
  it('a box of four sides wants a diagonal, then the other to check it', () => {
    const net = box(['AB', 'BC', 'CD', 'DA']);
    const advice = nextTapes(net, adjust(net), { tolerance: () => 20 });
    expect(advice.now.loose).toBe(1);
    expect(advice.ranked[0]?.fixes).toBe(1);
    expect(advice.set).toHaveLength(2);
    expect(advice.set.map((t) => [t.from, t.to].join('')).sort()).toEqual(['AC', 'BD']);
    expect(advice.clears).toBe(true);
  });
  it('says nothing where all is fixed, tight and checked', () => {
    const net = box(['AB', 'BC', 'CD', 'DA', 'AC', 'BD']);
    const advice = nextTapes(net, adjust(net), { tolerance: () => 20 });
    expect(advice.set).toEqual([]);
    expect(advice.clears).toBe(true);
  });
  it('never proposes what is out of reach or already taken', () => {
    const net = box(['AB', 'BC', 'CD', 'DA']);
    const advice = nextTapes(net, adjust(net), { tolerance: () => 20, unreachable: [['C', 'A']] });
    expect(advice.ranked.map((t) => [t.from, t.to].join(''))).toEqual(['BD']);
    expect(advice.clears).toBe(false);
  });
  it('a cover measured as its guide asks passes the default gate', () => {
    for (let seed = 0; seed < 20; seed++) {
      const { network } = bowJob(seededRandom(seed));
      const advice = nextTapes(network, adjust(network));
      expect(advice.now).toEqual({ loose: 0, slack: 0, unchecked: 0 });
    }
  });
  it('a point that lost two of its tapes is tied down again by a small set', () => {
    const { network } = bowJob(seededRandom(4));
    const readings = network.readings.filter((r) => !(r.points.includes('P2') && !r.points.includes('W1')));
    const holed = { ...network, readings };
    const advice = nextTapes(holed, adjust(holed));
    expect(advice.now.loose).toBeGreaterThan(0);
    expect(advice.clears).toBe(true);
    expect(advice.set.length).toBeLessThanOrEqual(4);
    expect(advice.set.every((t) => t.from === 'P2' || t.to === 'P2')).toBe(true);
  });
});
