import { describe, expect, it } from 'vitest';
import { formatLength, type InchDenominator, parseLength } from '../../src/core/length';

const mmOf = (text: string) => {
  const parsed = parseLength(text, 'in');
  return parsed.ok ? parsed.mm : Number.NaN;
};
const inSixteenths = (length: number, denominator: InchDenominator = 16) =>
  formatLength(length, { system: 'imperial', denominator, feet: 'over-foot' });

describe('exact factors', () => {
  // Yard and pound agreement of 1959; NIST SP 811, appendix B: 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 yd = 0.9144 m, all exact.
  it.each([
    ['1 in', 25.4],
    ['1 ft', 304.8],
    ['3 ft', 914.4],
  ])('%s is %d mm', (text, expected) => expect(mmOf(text)).toBe(expected));

  // NIST LC 1137 (metric style guide), before its rounding: 36 in = 91.44 cm, 40.1 in = 101.854 cm.
  it.each([
    ['36 in', 914.4],
    ['40.1 in', 1018.54],
  ])('%s is %d mm', (text, expected) => expect(mmOf(text)).toBe(expected));
});

describe('inch fractions', () => {
  // Follow from 1 in = 25.4 mm by arithmetic; binary marks down to 1/64 as NIST Handbook 44 describes tapes.
  it.each([
    ['1/16', 1.5875],
    ['1/32', 0.79375],
    ['1/64', 0.396875],
    ['19 3/8', 492.125],
    [`6' 2 1/2"`, 1892.3],
    [`5'3`, 1600.2],
  ])('%s is %d mm', (text, expected) => expect(mmOf(text)).toBe(expected));

  it('tells 5 ft 3 in from 5.3 ft', () => expect(mmOf('5.3 ft')).toBeCloseTo(63.6 * 25.4, 9));

  // The same arithmetic, rounded to the nearest sixteenth: errors of 0.125 mm and 0.3125 mm.
  it.each([
    [1000, `3' 3 3/8"`, 0.125],
    [2500, `8' 2 7/16"`, 0.3125],
  ])('%d mm is nearest to %s', (length, text, error) => {
    expect(inSixteenths(length)).toBe(text);
    expect(mmOf(text) - length).toBeCloseTo(error, 9);
  });

  // NIST SP 811, B.7: exactly half goes to the even digit, here to the even graduation.
  it('rounds exact halves to the even sixteenth', () => {
    expect(inSixteenths(mmOf('5 1/32'))).toBe('5"');
    expect(inSixteenths(mmOf('5 3/32'))).toBe('5 1/8"');
    expect(inSixteenths(mmOf('11 31/32'))).toBe(`1' 0"`);
  });
});
