import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthInside, distanceToChain, insidePolygon, type Point2 } from '../../../src/core/geometry';

const at = fc.integer({ min: -500, max: 500 });
const place: fc.Arbitrary<Point2> = fc.tuple(at, at);
const corners = fc.array(place, { minLength: 3, maxLength: 9 });

/** Corners in order of their direction from the middle: such a line never crosses itself. */
const star: fc.Arbitrary<Point2[]> = fc
  .array(fc.integer({ min: 20, max: 500 }), { minLength: 3, maxLength: 12 })
  .map((radii) =>
    radii.map((radius, i): Point2 => {
      const angle = (2 * Math.PI * i) / radii.length;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    }),
  );

/**
 * The crossing rule of W. R. Franklin, "PNPOLY: point inclusion in polygon test", another method than the one under test:
 * a side counts when it runs from above the place to at or below it, or back, and crosses its level to the right of it.
 */
function crossesOddly([x, y]: Point2, line: readonly Point2[]): boolean {
  let inside = false;
  for (const [i, [xi, yi]] of line.entries()) {
    const [xj, yj] = line.at(i - 1) ?? [0, 0];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}

describe('inside a closed line', () => {
  // A plan with a bay, as a bow cover round an anchor well; invented.
  const bay: readonly Point2[] = [
    [0, 0],
    [100, 0],
    [100, 100],
    [60, 100],
    [60, 40],
    [40, 40],
    [40, 100],
    [0, 100],
  ];

  it('knows the bay from the arms beside it', () => {
    expect(insidePolygon([50, 20], bay)).toBe(true);
    expect(insidePolygon([20, 80], bay)).toBe(true);
    expect(insidePolygon([80, 80], bay)).toBe(true);
    expect(insidePolygon([50, 80], bay)).toBe(false);
    expect(insidePolygon([150, 40], bay)).toBe(false);
    // Level with corners and sides, where careless counting goes wrong.
    expect(insidePolygon([-10, 40], bay)).toBe(false);
    expect(insidePolygon([-10, 100], bay)).toBe(false);
    expect(insidePolygon([50, 100], bay)).toBe(false);
    expect(insidePolygon([20, 40], bay)).toBe(true);
  });

  it('is nothing in a line without corners, or with one or two', () => {
    expect(insidePolygon([0, 0], [])).toBe(false);
    expect(insidePolygon([1, 1], [[0, 0]])).toBe(false);
    expect(
      insidePolygon(
        [5, 1],
        [
          [0, 0],
          [10, 10],
        ],
      ),
    ).toBe(false);
  });

  it('agrees with the crossing rule on lines that do not cross themselves', () => {
    fc.assert(
      fc.property(star, place, (line, spot) => {
        fc.pre(Math.abs(depthInside(spot, line)) > 1e-6);
        expect(insidePolygon(spot, line)).toBe(crossesOddly(spot, line));
      }),
      { numRuns: 2000 },
    );
  });

  it('does not depend on where the line begins, which way it runs, or where it all lies', () => {
    fc.assert(
      fc.property(corners, place, place, fc.nat(8), (line, spot, [dx, dy], first) => {
        fc.pre(distanceToChain(spot, [...line, line[0] ?? spot]) > 0);
        const inside = insidePolygon(spot, line);
        const turned = [...line.slice(first), ...line.slice(0, first)];
        expect(insidePolygon(spot, turned)).toBe(inside);
        expect(insidePolygon(spot, [...line].reverse())).toBe(inside);
        const moved = line.map(([x, y]): Point2 => [x + dx, y + dy]);
        expect(insidePolygon([spot[0] + dx, spot[1] + dy], moved)).toBe(inside);
      }),
    );
  });

  it('holds what lies between any place inside and the middle it is seen from', () => {
    fc.assert(
      fc.property(star, place, fc.double({ min: 0, max: 1, noNaN: true }), (line, spot, share) => {
        fc.pre(depthInside(spot, line) > 1e-6);
        expect(depthInside([spot[0] * share, spot[1] * share], line)).toBeGreaterThan(-1e-6);
      }),
    );
  });
});

describe('how far a place lies from a line', () => {
  it('is square to it beside it, and to its end beyond it', () => {
    const chain: readonly Point2[] = [
      [0, 0],
      [100, 0],
      [100, 50],
    ];
    expect(distanceToChain([50, 30], chain)).toBe(30);
    expect(distanceToChain([-30, 40], chain)).toBe(50);
    expect(distanceToChain([110, 20], chain)).toBe(10);
    expect(distanceToChain([3, 4], [[0, 0]])).toBe(5);
    expect(distanceToChain([3, 4], [])).toBe(Number.POSITIVE_INFINITY);
  });

  it('is counted from the line on both sides, below zero outside', () => {
    const square: readonly Point2[] = [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    expect(depthInside([30, 50], square)).toBe(30);
    expect(depthInside([-30, 50], square)).toBe(-30);
    expect(depthInside([30, 50], [])).toBe(Number.NEGATIVE_INFINITY);
  });

  it('never changes by more than the place moves', () => {
    fc.assert(
      fc.property(star, place, place, (line, a, b) => {
        const [from, to] = [depthInside(a, line), depthInside(b, line)];
        expect(Math.abs(from - to)).toBeLessThanOrEqual(Math.hypot(a[0] - b[0], a[1] - b[1]) + 1e-6);
      }),
    );
  });
});
