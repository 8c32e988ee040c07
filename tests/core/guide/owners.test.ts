import { describe, expect, it } from 'vitest';
import { type Owners, oneOwner } from '../../bench/owners.ts';
import { guideNamed } from '../check/demo-bow.ts';

/** The small, fixed version of `npm run bench owners`: the same people each time. */
const some = (count: number, more: Pick<Owners, 'rate' | 'looks'>) =>
  Array.from({ length: count }, (_, k) =>
    oneOwner({ guide: guideNamed('tension-shade'), answers: { cord: 'no-cord' }, ...more }, 7 * k + 1),
  );

describe('owners who slip, at a shade', () => {
  it('at one attempt in twenty: most are cleared after one ask at most, and none of those is wrong', () => {
    const outcomes = some(30, { rate: 0.05 });
    expect(outcomes.filter(({ wrong }) => wrong > 0).length).toBeGreaterThan(10);
    const cleared = outcomes.filter(({ rounds }) => rounds !== null);
    expect(cleared.filter(({ rounds }) => (rounds ?? 9) <= 1).length).toBeGreaterThanOrEqual(0.7 * outcomes.length);
    expect(cleared.filter(({ bad }) => bad).map(({ worst }) => worst)).toEqual([]);
  }, 60_000);
  it('without a slip: nobody is asked again, and everything is read twice', () => {
    for (const { asked, rounds, takes } of some(5, { rate: 0 })) {
      expect({ asked, rounds }).toEqual({ asked: 0, rounds: 0 });
      expect(takes).toBeGreaterThanOrEqual(20);
    }
  }, 60_000);
});
