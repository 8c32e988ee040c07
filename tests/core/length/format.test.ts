import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  type InchDenominator,
  type LengthStyle,
  mm,
  nearestFraction,
  parseLength,
  roundTo,
  type TapeFraction,
} from '../../../src/core/length';

const INCH = 25.4;
const imperial = (denominator: InchDenominator, feet: 'always' | 'over-foot' | 'never'): LengthStyle => ({
  system: 'imperial',
  denominator,
  feet,
});
const parsedMm = (text: string) => {
  const parsed = parseLength(text, 'mm');
  return parsed.ok ? parsed.mm : parsed.why;
};

describe('formatLength', () => {
  it.each([
    [147.5 * INCH, imperial(8, 'over-foot'), `12' 3 1/2"`],
    [47.625 * INCH, imperial(8, 'never'), `47 5/8"`],
    [47.625 * INCH, imperial(8, 'over-foot'), `3' 11 5/8"`],
    [11.625 * INCH, imperial(8, 'over-foot'), `11 5/8"`],
    [11.625 * INCH, imperial(8, 'always'), `0' 11 5/8"`],
    [0.625 * INCH, imperial(8, 'over-foot'), `5/8"`],
    [0.625 * INCH, imperial(8, 'always'), `0' 0 5/8"`],
    [144.5 * INCH, imperial(8, 'over-foot'), `12' 0 1/2"`],
    [144 * INCH, imperial(8, 'never'), `144"`],
    [0, imperial(16, 'over-foot'), `0"`],
    [-18 * INCH, imperial(16, 'over-foot'), `-1' 6"`],
    [-0.3, imperial(16, 'over-foot'), `0"`],
    [3755, { system: 'metric', unit: 'mm' }, '3755 mm'],
    [3755.2, { system: 'metric', unit: 'cm' }, '375.5 cm'],
    [3755, { system: 'metric', unit: 'm' }, '3.755 m'],
    [3755.24, { system: 'metric', unit: 'mm', decimals: 1 }, '3755.2 mm'],
    [0.5, { system: 'metric', unit: 'mm' }, '0 mm'],
    [1.5, { system: 'metric', unit: 'mm' }, '2 mm'],
    [-0.2, { system: 'metric', unit: 'mm' }, '0 mm'],
  ] as const)('writes %d mm in %o as %s', (length, style, text) => {
    expect(formatLength(length, style)).toBe(text);
  });

  it('carries a fraction that rounds up into inches and feet', () => {
    expect(formatLength((11 + 63 / 64) * INCH, imperial(16, 'over-foot'))).toBe(`1' 0"`);
    expect(formatLength((11 + 63 / 64) * INCH, imperial(16, 'never'))).toBe('12"');
  });

  it('refuses what is not a length', () => {
    expect(() => formatLength(Number.NaN, imperial(16, 'never'))).toThrow(RangeError);
    expect(() => formatLength(Number.POSITIVE_INFINITY, { system: 'metric', unit: 'mm' })).toThrow(RangeError);
    expect(() => mm(Number.NaN)).toThrow(RangeError);
  });
});

describe('nearestFraction', () => {
  it('takes the even graduation half way between two', () => {
    const thirtySecond = INCH / 32;
    expect(nearestFraction(thirtySecond, 16)).toMatchObject({ inches: 0, numerator: 0, denominator: 1 });
    expect(nearestFraction(3 * thirtySecond, 16)).toMatchObject({ inches: 0, numerator: 1, denominator: 8 });
  });

  it('gives the sign apart from the numbers', () => {
    const expected: TapeFraction = { negative: true, feet: 12, inches: 3, numerator: 1, denominator: 2 };
    expect(nearestFraction(-147.5 * INCH, 16)).toEqual(expected);
  });
});

describe('roundTo', () => {
  it.each([
    [3757, 5, 3755],
    [2.5, 1, 2],
    [3.5, 1, 4],
    [-2.5, 1, -2],
    [0.31, 0.1, 0.3],
    [1, 25.4 / 16, 1.5875],
  ])('rounds %d to a multiple of %d: %d', (value, step, expected) => {
    expect(roundTo(value, step)).toBe(expected);
  });

  it('refuses a step that is none', () => {
    expect(() => roundTo(1, 0)).toThrow(RangeError);
    expect(() => roundTo(1, Number.NaN)).toThrow(RangeError);
    expect(() => roundTo(Number.NaN, 1)).toThrow(RangeError);
  });
});

describe('formatLength and parseLength', () => {
  const denominators = fc.constantFrom<InchDenominator>(2, 4, 8, 16, 32, 64);
  const feet = fc.constantFrom('always', 'over-foot', 'never');

  it('come back to the same bits from every graduation of an inch tape', () => {
    fc.assert(
      fc.property(denominators, feet, fc.integer({ min: -7000, max: 7000 }), (denominator, feetStyle, steps) => {
        const length = (steps * 127) / (5 * denominator);
        expect(parsedMm(formatLength(length, imperial(denominator, feetStyle)))).toBe(length === 0 ? 0 : length);
      }),
    );
  });

  it('come back to the same bits from every millimetre', () => {
    fc.assert(
      fc.property(fc.constantFrom('mm', 'cm', 'm'), fc.integer({ min: -200_000, max: 200_000 }), (unit, length) => {
        expect(parsedMm(formatLength(length, { system: 'metric', unit }))).toBe(length === 0 ? 0 : length);
      }),
    );
  });

  it('come back within half a graduation from any length, and the fraction is reduced and below one', () => {
    const lengths = fc.double({ min: -99_000, max: 99_000, noNaN: true });
    fc.assert(
      fc.property(denominators, feet, lengths, (denominator, feetStyle, length) => {
        const back = parsedMm(formatLength(length, imperial(denominator, feetStyle)));
        expect(Math.abs(Number(back) - length)).toBeLessThanOrEqual(INCH / denominator / 2 + 1e-6);
        const fraction = nearestFraction(length, denominator);
        expect(fraction.inches).toBeLessThan(12);
        expect(fraction.numerator).toBeLessThan(fraction.denominator);
        expect(fraction.numerator % 2 === 1 || fraction.denominator === 1).toBe(true);
      }),
    );
  });

  it('agree with roundTo about the nearest graduation', () => {
    const lengths = fc.double({ min: 0, max: 99_000, noNaN: true });
    fc.assert(
      fc.property(denominators, lengths, (denominator, length) => {
        const text = formatLength(length, imperial(denominator, 'never'));
        expect(parsedMm(text)).toBeCloseTo(roundTo(length, INCH / denominator), 6);
      }),
    );
  });
});
