import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withAllowance } from '../../../src/core/cloth/allowance.ts';
import { type Point2, polygonArea, polygonPerimeter } from '../../../src/core/geometry/index.ts';

const rectangle = (w: number, h: number): Point2[] => [
  [0, 0],
  [w, 0],
  [w, h],
  [0, h],
];
const side = fc.double({ min: 100, max: 5000, noNaN: true });
const width = fc.double({ min: 1, max: 60, noNaN: true });

describe('an allowance round an outline', () => {
  it('is nothing round nothing', () => {
    expect(withAllowance([], 30)).toEqual([]);
    expect(withAllowance([[0, 0]], 30)).toEqual([]);
  });

  it('makes a rectangle longer and wider by twice the width, whichever way round it is given', () => {
    fc.assert(
      fc.property(side, side, width, fc.boolean(), (w, h, by, turned) => {
        const given = rectangle(w, h);
        const grown = withAllowance(turned ? given.reverse() : given, by);
        expect(polygonArea(grown)).toBeCloseTo((w + 2 * by) * (h + 2 * by), -1);
        expect(polygonPerimeter(grown)).toBeCloseTo(2 * (w + h) + 8 * by, 1);
      }),
    );
  });

  it('adds the perimeter times the width and the mitres of a regular polygon (n d² tan(pi / n), exact geometry)', () => {
    fc.assert(
      fc.property(fc.integer({ min: 3, max: 12 }), side, width, (n, radius, by) => {
        const given = Array.from({ length: n }, (_, i): Point2 => {
          const turn = (2 * Math.PI * i) / n;
          return [radius * Math.cos(turn), radius * Math.sin(turn)];
        });
        const exact = polygonArea(given) + polygonPerimeter(given) * by + n * by * by * Math.tan(Math.PI / n);
        const grown = polygonArea(withAllowance(given, by));
        expect(Math.abs(grown - exact) / exact).toBeLessThan(1e-4);
      }),
    );
  });

  it('stays the given distance from a hollow corner', () => {
    const bent: Point2[] = [
      [0, 0],
      [1000, 0],
      [1000, 1000],
      [500, 400],
      [0, 1000],
    ];
    const grown = withAllowance(bent, 20);
    const lowest = Math.min(...grown.map(([, y]) => y));
    expect(lowest).toBeCloseTo(-20, 3);
    expect(polygonArea(grown)).toBeGreaterThan(polygonArea(bent));
  });
});
