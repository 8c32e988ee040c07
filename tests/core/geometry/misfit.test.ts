import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance, lengthsMisfit, type Point3, type SixLengths } from '../../../src/core/geometry';

type Numbers = readonly [number, number, number, number, number, number];
const named = ([ab, ac, ad, bc, bd, cd]: Numbers): SixLengths => ({ ab, ac, ad, bc, bd, cd });
const values = ({ ab, ac, ad, bc, bd, cd }: SixLengths): Numbers => [ab, ac, ad, bc, bd, cd];
const even = (sigma: number) => named([sigma, sigma, sigma, sigma, sigma, sigma]);
const sixOf = <T>(one: fc.Arbitrary<T>) => fc.tuple(one, one, one, one, one, one);

const coordinate = fc.integer({ min: 0, max: 3000 });
const place: fc.Arbitrary<Point3> = fc.tuple(coordinate, coordinate, fc.constantFrom(0, 0, 500));
const lengthsOf = (a: Point3, b: Point3, c: Point3, d: Point3) =>
  named([distance(a, b), distance(a, c), distance(a, d), distance(b, c), distance(b, d), distance(c, d)]);
/** How many sigmas from one set of lengths to another. */
const apart = (from: SixLengths, to: SixLengths, sigmas: SixLengths) => {
  const [one, two, sigma] = [values(from), values(to), values(sigmas)];
  return Math.hypot(...one.map((length, i) => (length - (two[i] ?? 0)) / (sigma[i] ?? 1)));
};
const sigmaSets = sixOf(fc.double({ min: 1, max: 8, noNaN: true })).map(named);

describe('lengthsMisfit', () => {
  it('is 0 for lengths that can exist', () => {
    expect(lengthsMisfit(named([3000, 5000, 4000, 4000, 5000, 3000]), even(1))).toBe(0);
    expect(lengthsMisfit(even(2000), even(1))).toBe(0);
    expect(lengthsMisfit(even(0), even(1))).toBe(0);
  });

  // By symmetry the nearest flat shape is an equilateral triangle of side s with D in its middle, s / √3 from each
  // corner; the distance from (4, 9/4) to that line of shapes follows by hand.
  it('agrees with the closed form for an apex that does not reach', () => {
    const expected = (Math.sqrt(3) * Math.abs(4 / Math.sqrt(3) - 9 / 4)) / Math.sqrt(4 / 3);
    expect(lengthsMisfit(named([4, 4, 2.25, 4, 2.25, 2.25]), even(1))).toBeCloseTo(expected, 9);
    expect(lengthsMisfit(named([4, 4, 2.25, 4, 2.25, 2.25]), even(0.5))).toBeCloseTo(2 * expected, 9);
  });

  // By symmetry the nearest shape is a square; from sides 1 and diagonals d the change is d - √2.
  it('agrees with the closed form for a square with diagonals too long', () => {
    const square = (diagonal: number) => named([1000, diagonal, 1000, 1000, diagonal, 1000]);
    expect(lengthsMisfit(square(1000 * Math.SQRT2 + 12), even(4))).toBeCloseTo(3, 7);
    expect(lengthsMisfit(square(3000), even(1))).toBeCloseTo(3000 - 1000 * Math.SQRT2, 6);
  });

  // A triangle that misses closing by e is mended by e / 3 on each side: e / √3 sigmas. D hardly counts.
  it('agrees with the closed form for one triangle that does not close', () => {
    const sigmas = named([1, 1, 1e4, 1, 1e4, 1e4]);
    expect(lengthsMisfit(named([2030, 1000, 1500, 1000, 1500, 1200]), sigmas)).toBeCloseTo(30 / Math.sqrt(3), 3);
  });

  it('never exceeds the error of the readings: a flat box is never a stop', () => {
    const errors = sixOf(fc.double({ min: -2, max: 2, noNaN: true }));
    fc.assert(
      fc.property(place, place, place, place, errors, sigmaSets, (a, b, c, d, off, sigmas) => {
        const truth = lengthsOf(a, b, c, d);
        const sigma = values(sigmas);
        const read = values(truth).map((length, i) => Math.max(length + (off[i] ?? 0) * (sigma[i] ?? 0), 0));
        const [ab = 0, ac = 0, ad = 0, bc = 0, bd = 0, cd = 0] = read;
        const lengths = { ab, ac, ad, bc, bd, cd };
        expect(lengthsMisfit(lengths, sigmas)).toBeLessThanOrEqual(apart(lengths, truth, sigmas) + 1e-6);
      }),
      { numRuns: 300 },
    );
  });

  it('is no further than any four points, for any six lengths', () => {
    const anyLengths = sixOf(fc.oneof(fc.integer({ min: 0, max: 4000 }), fc.constantFrom(0, 1, 1000))).map(named);
    fc.assert(
      fc.property(
        anyLengths,
        sigmaSets,
        fc.array(fc.tuple(place, place, place, place), { minLength: 20 }),
        (lengths, sigmas, tries) => {
          const misfit = lengthsMisfit(lengths, sigmas);
          for (const points of tries) {
            expect(misfit).toBeLessThanOrEqual(apart(lengths, lengthsOf(...points), sigmas) + 1e-6);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('changes by no more than the lengths change', () => {
    const anyLengths = sixOf(fc.integer({ min: 100, max: 4000 })).map(named);
    fc.assert(
      fc.property(anyLengths, anyLengths, sigmaSets, (one, two, sigmas) => {
        const change = Math.abs(lengthsMisfit(one, sigmas) - lengthsMisfit(two, sigmas));
        expect(change).toBeLessThanOrEqual(apart(one, two, sigmas) + 1e-6);
      }),
      { numRuns: 300 },
    );
  });

  it('sees a foot too many on the diagonal of a flat box, and which tape it was read with', () => {
    const box = named([2000, Math.hypot(2000, 3000) + 304.8, 3000, 3000, Math.hypot(2000, 3000), 2000]);
    expect(lengthsMisfit(box, even(2))).toBeGreaterThan(50);
    expect(lengthsMisfit(box, even(200))).toBeLessThan(1);
  });

  it('refuses what is no length or no sigma', () => {
    expect(() => lengthsMisfit(named([-1, 1, 1, 1, 1, 1]), even(1))).toThrow(RangeError);
    expect(() => lengthsMisfit(named([Number.NaN, 1, 1, 1, 1, 1]), even(1))).toThrow(RangeError);
    expect(() => lengthsMisfit(even(1), even(0))).toThrow(RangeError);
    expect(() => lengthsMisfit(even(1), even(Number.POSITIVE_INFINITY))).toThrow(RangeError);
  });
});
