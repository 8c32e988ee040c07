import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agreement } from '../../../src/core/job/index.ts';
import { outvoted } from '../../../src/core/job/outvoted.ts';
import { Job, owner, readingId } from '../check/build.ts';

/** Looks with a spread of 1 mm each: two agree within 3.3 · √2 = 4.67 mm. */
const looks = (...values: number[]) => values.map((value) => ({ value, sigma: 1 }));
const counting = (...values: number[]) => agreement(looks(...values))?.map(({ value }) => value) ?? null;

describe('the looks that count', () => {
  it('are all of them where they agree', () => {
    expect(counting(3000)).toEqual([3000]);
    expect(counting(3000, 3004)).toEqual([3000, 3004]);
    expect(counting(3000, 3004, 3001)).toEqual([3000, 3004, 3001]);
  });
  it('are none where two differ', () => {
    expect(counting(3000, 3005)).toBeNull();
  });
  it('are the two of three that agree, whichever came first', () => {
    expect(counting(3000, 3300, 3001)).toEqual([3000, 3001]);
    expect(counting(3300, 3000, 3001)).toEqual([3000, 3001]);
  });
  it('are all three where the third lies between two that nearly agree', () => {
    expect(counting(3000, 3006, 3003)).toEqual([3000, 3006, 3003]);
  });
  it('are none where all three differ', () => {
    expect(counting(3000, 3300, 2000)).toBeNull();
  });
  it('are none where the last saw something else than those before it', () => {
    expect(counting(3000, 3001, 3300)).toBeNull();
    expect(counting(3000, 3001, 3300, 3002)).toEqual([3000, 3001, 3002]);
  });
  it('are none where two stand against two, until a fifth joins one side', () => {
    expect(counting(3300, 3301, 3000, 3001)).toBeNull();
    expect(counting(3300, 3301, 3000, 3001, 3002)).toEqual([3000, 3001, 3002]);
  });
  it('always hold the last look, and are never made up', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 6 }), (values) => {
        const all = looks(...values);
        const group = agreement(all);
        expect(outvoted(all).size).toBe(group === null ? 0 : all.length - group.length);
        if (group === null) return;
        expect(all).toEqual(expect.arrayContaining([...group]));
        expect(group).toContain(all.at(-1));
      }),
    );
  });
  it('are the same wherever the tape begins to count', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 6 }), (values) => {
        const moved = counting(...values.map((value) => value + 1000));
        expect(moved?.map((value) => value - 1000) ?? null).toEqual(counting(...values));
      }),
    );
  });
});

describe('the value of a reading looked at three times', () => {
  const job = new Job({ who: owner }).piece({ points: { A: null, B: null }, readings: ['A-B'] });
  const ids = [3300, 3000, 3002].map((mm) => job.take('A-B', mm));
  const reading = job.sheet().readings.find(({ id }) => id === readingId('A-B'));
  it('is the mean of the two that agree', () => {
    expect(reading?.value).toBe(3001);
  });
  it('keeps the odd look, struck by nobody, and says that it does not count', () => {
    expect(reading?.takes.map(({ id }) => id)).toEqual(ids);
    expect(reading?.takes.map(({ outvoted }) => outvoted ?? false)).toEqual([true, false, false]);
    expect(reading?.takes.every(({ struck }) => struck === null)).toBe(true);
  });
  it('is the mean of all while nothing is settled, as ever', () => {
    const open = new Job({ who: owner }).piece({ points: { A: null, B: null }, readings: ['A-B'] });
    for (const mm of [3300, 3000]) open.take('A-B', mm);
    expect(open.sheet().readings[0]?.value).toBe(3150);
  });
});
