import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paperLength, practiceFactor, practiceSlip, sigmaOf } from '../../../src/core/check/index.ts';
import { practiceFactors } from '../../../src/core/check/practice.ts';
import {
  defaultInstruments,
  type Practice,
  type PracticeReading,
  type PracticeSide,
  type Who,
} from '../../../src/core/job/index.ts';
import { installer, owner } from './build.ts';

const SIDES = ['long', 'short', 'diagonal'] as const;
const read = (of: PracticeSide, value: number): PracticeReading => ({ of, text: '1', unit: 'mm', value });
const off = (...by: readonly number[]): Pick<Practice, 'paper' | 'readings'> => ({
  paper: 'letter',
  readings: SIDES.map((of, i) => read(of, paperLength('letter', of) + (by[i] ?? 0))),
});
const factor = (...by: readonly number[]): number => practiceFactor(off(...by), owner, defaultInstruments);
const done = (by: readonly number[], who: Who, entry = 'a'): Practice => ({ ...off(...by), entry, at: '', who });

describe('the size of paper', () => {
  // ANSI/ASME Y14.1 size A and ISO 216 A4; the diagonals by Pythagoras.
  it.each([
    ['letter', 'long', 279.4],
    ['letter', 'short', 215.9],
    ['letter', 'diagonal', 353.097],
    ['a4', 'long', 297],
    ['a4', 'short', 210],
    ['a4', 'diagonal', 363.742],
  ] as const)('%s, %s: %d mm', (paper, side, mm) => {
    expect(paperLength(paper, side)).toBeCloseTo(mm, 2);
  });
});

describe('what practice does to how far a person is trusted', () => {
  it.each([[[0, 0, 0]], [[2, -2, 2]], [[3, 3, 3]], [[-4, 4, 4]]])('nothing for readings off by %j mm', (by) => {
    expect(factor(...by)).toBe(1);
  });
  it('widens after a clear excess, and never beyond twice', () => {
    expect(factor(8, -8, 8)).toBeGreaterThan(1);
    expect(factor(8, -8, 8)).toBeLessThan(2);
    expect(factor(12, -8, 9)).toBeGreaterThan(factor(8, -8, 8));
    expect(factor(60, -60, 60)).toBe(2);
  });
  it('does nothing while there are no readings', () => {
    expect(practiceFactor({ paper: 'a4', readings: [] }, owner, defaultInstruments)).toBe(1);
  });
  it('takes the reading that was settled on, not the slip before it', () => {
    const { readings } = off(0, 0, 0);
    const slip = read('long', paperLength('letter', 'long') + 25.4);
    expect(practiceFactor({ paper: 'letter', readings: [slip, ...readings] }, owner, defaultInstruments)).toBe(1);
  });
  it('forgives a coarse scale its rounding', () => {
    const coarse = SIDES.map((of) => {
      const cm = Math.round(paperLength('a4', of) / 10 + 0.5);
      return { of, text: String(cm), unit: 'cm' as const, value: cm * 10 };
    });
    expect(coarse.some(({ of, value }) => Math.abs(value - paperLength('a4', of)) > 5)).toBe(true);
    expect(practiceFactor({ paper: 'a4', readings: coarse }, owner, defaultInstruments)).toBe(1);
    const fine = coarse.map((reading) => ({ ...reading, text: '1', unit: 'mm' as const }));
    expect(practiceFactor({ paper: 'a4', readings: fine }, owner, defaultInstruments)).toBeGreaterThan(1);
  });
  it('takes a slip with a name for no spread, and fewer than three sides for nothing', () => {
    expect(factor(25.4, 0, 0)).toBe(1);
    expect(factor(25.4, 8, -8)).toBe(1);
    expect(factor(40, 0, 0)).toBeGreaterThan(1);
    const { readings } = off(40, 40, 40);
    expect(practiceFactor({ paper: 'letter', readings: readings.slice(0, 2) }, owner, defaultInstruments)).toBe(1);
  });
  it('only ever widens', () => {
    const by = fc.double({ min: -400, max: 400, noNaN: true });
    fc.assert(
      fc.property(by, by, by, (a, b, c) => {
        expect(factor(a, b, c)).toBeGreaterThanOrEqual(1);
        expect(factor(a, b, c)).toBeLessThanOrEqual(2);
      }),
    );
  });
  it('widens the more the readings are off, as far as they are spread and no slips', () => {
    const by = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(by, by, by, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, c, less) => {
        expect(factor(a * less, b * less, c * less)).toBeLessThanOrEqual(factor(a, b, c) + 1e-9);
      }),
    );
  });
  it('is quiet for people who measure as an owner usually does: fewer than one in forty is widened', () => {
    const normal = gaussian(7);
    // Tape and paper together, as the tolerance has it.
    const usual = Math.hypot(
      sigmaOf({ kind: 'straight' }, { text: '1', unit: 'mm', value: 280, sigma: null }, owner),
      1,
    );
    const widened = Array.from({ length: 2000 }, () => factor(normal() * usual, normal() * usual, normal() * usual));
    const part = widened.filter((f) => f > 1).length / 2000;
    expect(part).toBeLessThan(1 / 40);
    expect(part).toBeGreaterThan(0);
  });
});

describe('whose takes it widens', () => {
  const factors = practiceFactors(
    [done([30, 30, 30], owner), done([0, 0, 0], { ...owner, name: 'Ona' }), done([0, 0, 0], installer)],
    defaultInstruments,
  );
  it('those of the person who practised', () => {
    expect(factors(owner)).toBe(2);
    expect(factors({ ...owner, name: 'Ona' })).toBe(1);
    expect(factors({ ...owner, role: 'installer' })).toBe(1);
    expect(factors({ name: 'Nobody', role: 'owner' })).toBe(1);
  });
  it('by the latest practice', () => {
    const again = practiceFactors([done([30, 30, 30], owner), done([0, 0, 0], owner, 'b')], defaultInstruments);
    expect(again(owner)).toBe(1);
  });
  it('never narrows, and leaves an angle and a stated figure alone', () => {
    const take = { value: 1000, text: '1000', unit: 'mm', sigma: null } as const;
    const plain = sigmaOf({ kind: 'straight' }, take, owner);
    expect(sigmaOf({ kind: 'straight' }, take, owner, defaultInstruments, 16, 2)).toBeCloseTo(2 * plain, 12);
    expect(sigmaOf({ kind: 'straight' }, take, owner, defaultInstruments, 16, 0.5)).toBe(plain);
    expect(sigmaOf({ kind: 'lean' }, { ...take, unit: 'deg' }, owner, defaultInstruments, 16, 2)).toBe(
      sigmaOf({ kind: 'lean' }, { ...take, unit: 'deg' }, owner),
    );
    expect(sigmaOf({ kind: 'straight' }, { ...take, sigma: 0.5 }, owner, defaultInstruments, 16, 2)).toBe(0.5);
  });
});

describe('which slip a reading looks like', () => {
  it.each([
    ['letter', 'long', 279.4, 'close'],
    ['letter', 'short', 215.9 + 3, 'close'],
    ['letter', 'long', 279.4 + 25.4, 'started-at-one'],
    ['a4', 'short', 220, 'started-at-one'],
    ['a4', 'long', 397, 'started-at-one'],
    ['a4', 'long', 210, 'other-side'],
    ['letter', 'diagonal', 279.4, 'other-side'],
    ['a4', 'long', 2970, 'unit'],
    ['a4', 'short', 21, 'unit'],
    ['letter', 'long', 11, 'unit'],
    ['letter', 'long', 279.4 - 7, 'hook'],
    ['letter', 'long', 279.4 - 40, 'far'],
  ] as const)('%s, %s, %d mm: %s', (paper, of, value, slip) => {
    expect(practiceSlip(paper, { of, value })).toBe(slip);
  });
});

/** Normal deviates from a small generator with a seed: Box and Muller. */
function gaussian(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
