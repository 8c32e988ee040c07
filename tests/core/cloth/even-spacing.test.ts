import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  evenRow,
  isUsual,
  MOST_FASTENERS,
  placesOfRow,
  rowSpaced,
  type SpacingLimits,
  usualRow,
} from '../../../src/core/cloth/index.ts';

/** Common practice, no source: 100 to 200 mm, ends within 50 mm. */
const limits: SpacingLimits = { min: 100, max: 200, end: 50 };
const length = fc.double({ min: 60, max: 12_000, noNaN: true });
const shops: fc.Arbitrary<SpacingLimits> = fc
  .record({ min: fc.integer({ min: 40, max: 300 }), more: fc.integer({ min: 1, max: 300 }), end: fc.nat(150) })
  .map(({ min, more, end }) => ({ min, max: min + more, end }));

describe('a row of fasteners spread evenly', () => {
  it('fills the length from end to end, each as far from the next', () => {
    fc.assert(
      fc.property(length, fc.integer({ min: 2, max: 200 }), shops, (mm, count, shop) => {
        const row = evenRow(mm, count, shop);
        const places = placesOfRow(row);
        expect(places).toHaveLength(count);
        expect(places[0]).toBeCloseTo(row.end, 6);
        expect(mm - (places.at(-1) ?? 0)).toBeCloseTo(row.end, 6);
        for (const [i, place] of places.entries())
          if (i > 0) expect(place - (places[i - 1] ?? 0)).toBeCloseTo(row.spacing, 6);
      }),
    );
  });

  it('keeps its ends inside what the shop allows', () => {
    fc.assert(
      fc.property(length, fc.integer({ min: 2, max: 200 }), shops, (mm, count, shop) => {
        expect(evenRow(mm, count, shop).end).toBeLessThanOrEqual(shop.end);
      }),
    );
  });

  it('comes back: the number gives a spacing, and that spacing the same number', () => {
    fc.assert(
      fc.property(length, fc.integer({ min: 2, max: MOST_FASTENERS }), shops, (mm, count, shop) => {
        const row = evenRow(mm, count, shop);
        expect(rowSpaced(mm, row.spacing, shop)).toEqual(row);
      }),
    );
  });

  it('comes as near to the spacing wished for as whole fasteners can', () => {
    fc.assert(
      fc.property(length, fc.integer({ min: 30, max: 600 }), shops, (mm, wish, shop) => {
        const row = rowSpaced(mm, wish, shop);
        const off = Math.abs(row.spacing - wish);
        for (const other of [row.count - 1, row.count + 1])
          if (other > 1) expect(off).toBeLessThanOrEqual(Math.abs(evenRow(mm, other, shop).spacing - wish) + 1e-9);
      }),
    );
  });

  it('is usual wherever any number of fasteners would be', () => {
    fc.assert(
      fc.property(length, shops, (mm, shop) => {
        const any = Array.from({ length: 400 }, (_, i) => evenRow(mm, i + 2, shop)).some((row) => isUsual(row, shop));
        expect(isUsual(usualRow(mm, shop), shop)).toBe(any);
      }),
    );
  });

  it('gives plain numbers for plain lengths', () => {
    expect(usualRow(1550, limits)).toEqual({ count: 11, spacing: 150, end: 25 });
    expect(evenRow(1550, 6, limits)).toEqual({ count: 6, spacing: 300, end: 25 });
    expect(isUsual(evenRow(1550, 6, limits), limits)).toBe(false);
    expect(evenRow(90, 1, limits)).toEqual({ count: 1, spacing: 0, end: 45 });
    expect(placesOfRow(evenRow(90, 1, limits))).toEqual([45]);
  });
});
