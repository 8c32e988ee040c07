import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tapeAround } from '../../src/screens/parts/pad/tape-marks.ts';

const INCH = { system: 'imperial', fraction: 16 } as const;
const METRIC = { system: 'metric', fraction: 16 } as const;
const WIDTH = 300;

describe('the tape as drawn', () => {
  it('has the reading in its middle, between the inches on both sides of it', () => {
    const { mark, numbers } = tapeAround(47.625 * 25.4, INCH, WIDTH);
    expect(mark).toBe(150);
    const inch = WIDTH / 2.5;
    expect(numbers.map(({ text, x }) => [text, x])).toEqual([
      ['47', 150 - 0.625 * inch],
      ['48', 150 + 0.375 * inch],
    ]);
  });

  it('says feet and inches beside the running inches, and whole feet in their own field', () => {
    const { numbers } = tapeAround(47.625 * 25.4, INCH, WIDTH);
    expect(numbers.map(({ beside, whole }) => [beside, whole])).toEqual([
      ['3′11', false],
      ['4 ft', true],
    ]);
    expect(tapeAround(6 * 25.4, INCH, WIDTH).numbers.every(({ beside }) => beside === '')).toBe(true);
  });

  it('says centimetres as a metric tape does, and the metre', () => {
    expect(tapeAround(1003, METRIC, WIDTH).numbers).toContainEqual({ x: 135, text: '100', beside: '1 m', whole: true });
    expect(tapeAround(476, METRIC, WIDTH).numbers.map(({ text }) => text)).toEqual([
      '45',
      '46',
      '47',
      '48',
      '49',
      '50',
    ]);
  });

  it('ranks halves over quarters over eighths over sixteenths', () => {
    const { ticks } = tapeAround(25.4, INCH, WIDTH);
    const inch = WIDTH / 2.5;
    const rankAt = (inches: number) => ticks.find(({ x }) => Math.abs(x - (150 + (inches - 1) * inch)) < 0.06)?.rank;
    expect([1, 1.5, 1.25, 1.125, 1.0625].map(rankAt)).toEqual([0, 1, 2, 3, 4]);
  });

  it('has thirty-seconds only on a tape that has them', () => {
    const count = (fraction: 8 | 16 | 32) => tapeAround(1000, { system: 'imperial', fraction }, WIDTH).ticks.length;
    expect([count(8), count(16), count(32)]).toEqual([24, 40, 64]);
  });

  it('begins at the hook and never left of it', () => {
    const { hook, ticks, mark } = tapeAround(6, INCH, WIDTH);
    expect(mark).toBe(150);
    expect(hook).toBeCloseTo(150 - (6 / 25.4 / 2.5) * WIDTH, 0);
    expect(Math.min(...ticks.map(({ x }) => x))).toBe(hook);
  });

  it('shows the hook and no mark while nothing is read', () => {
    const { hook, mark } = tapeAround(null, INCH, WIDTH);
    expect(mark).toBeNull();
    expect(hook).toBeGreaterThan(0);
  });

  it('lies on the other side for what is below: the tape itself has no minus', () => {
    expect(tapeAround(-111.125, INCH, WIDTH)).toEqual(tapeAround(111.125, INCH, WIDTH));
  });

  it('has every graduation in sight once and every number whole, wherever it is read', () => {
    const anywhere = fc.double({ min: 0, max: 200_000, noNaN: true });
    fc.assert(
      fc.property(anywhere, fc.constantFrom(INCH, METRIC), (mm, tape) => {
        const { ticks, numbers, mark } = tapeAround(mm, tape, WIDTH);
        expect(mark).toBe(150);
        expect(new Set(ticks.map(({ x }) => x)).size).toBe(ticks.length);
        for (const { x } of [...ticks, ...numbers]) expect(x >= 0 && x <= WIDTH).toBe(true);
        for (const { text, beside, x } of numbers) {
          expect(text).toMatch(/^\d+$/);
          if (beside !== '') expect(x).toBeLessThan(WIDTH - 50);
        }
      }),
    );
  });
});
