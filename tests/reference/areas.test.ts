import { describe, expect, it } from 'vitest';
import { angleAt, areaInside, pathLength } from '../../src/core/cloth/amounts.ts';
import type { Point3 } from '../../src/core/geometry/index.ts';

/** Northing and easting, as surveyors list them. */
const corners = (table: readonly (readonly [number, number])[]): Point3[] => table.map(([n, e]) => [n, e, 0]);

describe('area by coordinates', () => {
  // J. Mahun, Open Access Surveying Library, Traverse Computations, chapter G (Area), example 1: a bearing traverse; the
  // two sums of cross products are printed as 3,384,174.1 and 3,590,045.6 square feet, the area is half their difference.
  it('of a published traverse of four sides', () => {
    const table = corners([
      [500.0, 2000.0],
      [323.614, 1561.426],
      [526.996, 1488.321],
      [719.336, 1686.956],
    ]);
    expect(Math.abs(areaInside(table).value) * 2).toBeCloseTo(3590045.6 - 3384174.1, 0);
  });

  // The same author, solved problem 2 (traverse area): four parcel corners taken from a traverse that crosses itself;
  // sums 877,890 and 1,378,989, area 250,550 square feet to five figures.
  it('of a published parcel', () => {
    const table = corners([
      [600.0, 1000.0],
      [254.542, 1209.288],
      [97.543, 566.876],
      [470.303, 397.969],
    ]);
    expect(Math.abs(Math.abs(areaInside(table).value) - 250550)).toBeLessThan(5);
  });

  // The pentagon of many textbooks, from memory: area 16.5.
  it('of a pentagon from memory', () => {
    expect(
      Math.abs(
        areaInside(
          corners([
            [1, 6],
            [3, 1],
            [7, 2],
            [4, 4],
            [8, 5],
          ]),
        ).value,
      ),
    ).toBe(16.5);
  });
});

// Heronian triangles, whose sides and areas are whole numbers: 13-14-15 has 84, 51-52-53 has 1170, 9-10-17 has 36 (Heron,
// Metrica I.8 for the first; all worked out exactly).
describe('triangles with whole areas', () => {
  it.each([
    [13, 14, 15, 84],
    [51, 52, 53, 1170],
    [9, 10, 17, 36],
  ])('%i, %i, %i', (a, b, c, area) => {
    const x = (a * a + c * c - b * b) / (2 * a);
    const places: Point3[] = [
      [0, 0, 0],
      [a, 0, 0],
      [x, Math.sqrt(c * c - x * x), 0],
    ];
    expect(areaInside(places).value).toBeCloseTo(area, 9);
    expect(pathLength(places, true).value).toBeCloseTo(a + b + c, 9);
    const [p, q, r] = places as [Point3, Point3, Point3];
    // 2 S = a c sin(angle) (the sine formula).
    expect((a * c * Math.sin(angleAt(q, p, r).value)) / 2).toBeCloseTo(area, 9);
  });
});
