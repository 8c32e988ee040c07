import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Amount,
  angleAt,
  areaInside,
  crossesItself,
  pathLength,
  rise,
  straight,
} from '../../../src/core/cloth/amounts.ts';
import { type Point3, triangleArea } from '../../../src/core/geometry/index.ts';

const flat = (corners: readonly (readonly [number, number])[]): Point3[] => corners.map(([x, y]) => [x, y, 0]);
const coordinate = fc.integer({ min: -4000, max: 4000 });
const place = fc.tuple(coordinate, coordinate, coordinate);

/** Turned about the vertical and moved: as the boat may lie anywhere. */
const elsewhere =
  (turn: number, by: Point3) =>
  ([x, y, z]: Point3): Point3 => [
    x * Math.cos(turn) - y * Math.sin(turn) + by[0],
    x * Math.sin(turn) + y * Math.cos(turn) + by[1],
    z + by[2],
  ];

type Of = (places: readonly Point3[]) => Amount;
const at = (places: readonly Point3[], i: number): Point3 => places[i] ?? [0, 0, 0];
const amounts: [string, Of][] = [
  ['a distance', (p) => straight(at(p, 0), at(p, 1))],
  ['a difference of height', (p) => rise(at(p, 0), at(p, 1))],
  ['a girth', (p) => pathLength(p)],
  ['a perimeter', (p) => pathLength(p, true)],
  ['an area', (p) => areaInside(p)],
  ['an angle', (p) => angleAt(at(p, 0), at(p, 1), at(p, 2))],
];

describe.each(amounts)('%s', (_, of) => {
  it('is the same wherever the boat lies', () => {
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 3, maxLength: 6 }),
        fc.double({ min: -3, max: 3, noNaN: true }),
        place,
        (places, turn, by) => {
          const there = of(places.map(elsewhere(turn, by)));
          const size = Math.max(1, ...places.flat().map(Math.abs));
          expect(Math.abs(there.value - of(places).value)).toBeLessThan(1e-8 * size * size);
        },
      ),
    );
  });

  it('changes by its gradient', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 5 }), fc.nat(4), fc.nat(2), (places, which, axis) => {
        const i = which % places.length;
        const sides = places.map((p, k) =>
          Math.hypot(...p.map((v, c) => v - (at(places, (k + 1) % places.length)[c] ?? 0))),
        );
        const here = of(places);
        const bent =
          places.length === 3 && Math.abs(Math.sin(angleAt(at(places, 0), at(places, 1), at(places, 2)).value)) < 0.02;
        fc.pre(
          Math.min(...sides) > 50 &&
            !bent &&
            Math.abs(Math.sin(angleAt(at(places, 0), at(places, 1), at(places, 2)).value)) > 0.02,
        );
        const moved = (by: number) =>
          of(
            places.map(
              (p, k): Point3 =>
                k === i
                  ? [p[0] + (axis === 0 ? by : 0), p[1] + (axis === 1 ? by : 0), p[2] + (axis === 2 ? by : 0)]
                  : p,
            ),
          ).value;
        const slope = (moved(0.01) - moved(-0.01)) / 0.02;
        const scale = Math.max(1e-3, ...here.gradient.flat().map(Math.abs));
        expect(Math.abs(slope - (here.gradient[i]?.[axis] ?? 0))).toBeLessThan(1e-4 * scale + 1e-6);
      }),
    );
  });

  it('does not feel the whole piece being moved', () => {
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 6 }), (places) => {
        const { gradient } = of(places);
        for (const axis of [0, 1, 2] as const)
          expect(Math.abs(gradient.reduce((sum, g) => sum + g[axis], 0))).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('what can be worked out by hand', () => {
  it('a box of 3, 4 and 12', () => {
    expect(straight([0, 0, 0], [3, 4, 12]).value).toBe(13);
    expect(rise([0, 0, 5], [3, 4, 12]).value).toBe(7);
    expect(
      pathLength([
        [0, 0, 0],
        [3, 4, 0],
        [3, 4, 12],
      ]).value,
    ).toBe(17);
    expect(
      pathLength(
        flat([
          [0, 0],
          [3, 0],
          [3, 4],
        ]),
        true,
      ).value,
    ).toBe(12);
  });

  it('angles of a square, a straight and an equilateral triangle in space', () => {
    expect(angleAt([1, 0, 0], [0, 0, 0], [0, 0, 2]).value).toBeCloseTo(Math.PI / 2, 12);
    expect(angleAt([1, 0, 0], [0, 0, 0], [-5, 0, 0])).toMatchObject({ value: Math.PI, smooth: false });
    expect(angleAt([1, 0, 0], [0, 1, 0], [0, 0, 1]).value).toBeCloseTo(Math.PI / 3, 12);
  });

  it('an area changes its sign with the way round, and by nothing else', () => {
    const corners = flat([
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ]);
    expect(areaInside(corners).value).toBe(12);
    expect(areaInside([...corners].reverse()).value).toBe(-12);
    expect(areaInside([...corners.slice(2), ...corners.slice(0, 2)]).value).toBe(12);
  });

  it('height has no part in an area of the plan', () => {
    expect(
      areaInside([
        [0, 0, 9],
        [4, 0, -3],
        [4, 3, 70],
      ]).value,
    ).toBe(6);
  });

  it('a triangle has the area of its sides', () => {
    fc.assert(
      fc.property(
        fc.tuple(coordinate, coordinate),
        fc.tuple(coordinate, coordinate),
        fc.tuple(coordinate, coordinate),
        (a, b, c) => {
          const [p, q, r] = flat([a, b, c]) as [Point3, Point3, Point3];
          const heron = triangleArea(straight(p, q).value, straight(q, r).value, straight(r, p).value);
          const area = Math.abs(areaInside([p, q, r]).value);
          fc.pre(area > 1000);
          expect((heron ?? 0) / area).toBeCloseTo(1, 5);
        },
      ),
    );
  });

  it('a line that crosses itself is seen to', () => {
    expect(
      crossesItself(
        flat([
          [0, 0],
          [4, 0],
          [4, 3],
          [0, 3],
        ]),
      ),
    ).toBe(false);
    expect(
      crossesItself(
        flat([
          [0, 0],
          [4, 3],
          [4, 0],
          [0, 3],
        ]),
      ),
    ).toBe(true);
    expect(
      crossesItself(
        flat([
          [0, 0],
          [4, 0],
          [2, 1],
          [4, 3],
          [0, 3],
        ]),
      ),
    ).toBe(false);
  });
});
