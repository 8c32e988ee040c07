import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundingBox,
  cayleyMenger,
  cayleyMengerGradient,
  distance,
  type Point2,
  type Point3,
  pointAlong,
  polygonArea,
  polygonPerimeter,
  polylineLength,
  quadDiagonalRange,
  type SixLengths,
  tetrahedronExists,
  tetrahedronVolume,
  triangleAltitude,
  triangleAngle,
  triangleArea,
  triangleExcess,
} from '../../../src/core/geometry';

const coordinate = fc.integer({ min: -3000, max: 3000 });
const place: fc.Arbitrary<Point3> = fc.tuple(coordinate, coordinate, coordinate);
const fourPlaces = fc.tuple(place, place, place, place);

const lengthsOf = ([a, b, c, d]: readonly [Point3, Point3, Point3, Point3]): SixLengths => ({
  ab: distance(a, b),
  ac: distance(a, c),
  ad: distance(a, d),
  bc: distance(b, c),
  bd: distance(b, d),
  cd: distance(c, d),
});

describe('triangles', () => {
  it('have an angle for each side, and the three make half a turn', () => {
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        const [x, y, z] = [distance(b, c), distance(c, a), distance(a, b)];
        fc.pre(Math.min(x, y, z) > 1 && triangleExcess(x, y, z) < -1e-6);
        const sum = (triangleAngle(x, y, z) ?? 0) + (triangleAngle(y, z, x) ?? 0) + (triangleAngle(z, x, y) ?? 0);
        expect(sum).toBeCloseTo(Math.PI, 9);
      }),
    );
  });

  it('give known angles and altitudes', () => {
    expect(triangleAngle(5, 3, 4)).toBeCloseTo(Math.PI / 2, 12);
    expect(triangleAngle(1, 1, 1)).toBeCloseTo(Math.PI / 3, 12);
    expect(triangleAngle(3, 1, 2)).toBe(Math.PI);
    expect(triangleAngle(0, 2, 2)).toBe(0);
    expect(triangleAltitude(5, 3, 4)).toBeCloseTo(2.4, 12);
    expect(triangleAltitude(14, 13, 15)).toBeCloseTo(12, 12);
  });

  it('are not made up when the sides do not close or a side is missing', () => {
    expect(triangleAngle(4, 1, 2)).toBeNull();
    expect(triangleAngle(2, 0, 2)).toBeNull();
    expect(triangleAltitude(4, 1, 2)).toBeNull();
    expect(triangleAltitude(0, 2, 2)).toBeNull();
    expect(triangleArea(Number.NaN, 1, 1)).toBeNull();
  });
});

describe('four points', () => {
  it('always have six lengths that can exist, and the volume of the triple product', () => {
    fc.assert(
      fc.property(fourPlaces, (places) => {
        const lengths = lengthsOf(places);
        const [a, b, c, d] = places;
        const [u, v, w] = [b, c, d].map((p) => [p[0] - a[0], p[1] - a[1], p[2] - a[2]] as const);
        if (!u || !v || !w) throw new Error('three edges');
        const cross = [v[1] * w[2] - v[2] * w[1], v[2] * w[0] - v[0] * w[2], v[0] * w[1] - v[1] * w[0]] as const;
        const triple = u[0] * cross[0] + u[1] * cross[1] + u[2] * cross[2];
        const longest = Math.max(...Object.values(lengths), 1);
        expect(tetrahedronExists(lengths)).toBe(true);
        expect(Math.abs(cayleyMenger(lengths) - 8 * triple ** 2) / longest ** 6).toBeLessThan(1e-12);
        expect(Math.abs((tetrahedronVolume(lengths) ?? -1) ** 2 - triple ** 2 / 36) / longest ** 6).toBeLessThan(1e-12);
      }),
    );
  });

  it('have a determinant whose gradient agrees with differences', () => {
    const names = ['ab', 'ac', 'ad', 'bc', 'bd', 'cd'] as const;
    fc.assert(
      fc.property(fourPlaces, fc.constantFrom(...names), (places, name) => {
        const lengths = lengthsOf(places);
        const longest = Math.max(...Object.values(lengths));
        fc.pre(longest > 10);
        const step = longest * 1e-5;
        const up = cayleyMenger({ ...lengths, [name]: lengths[name] + step });
        const down = cayleyMenger({ ...lengths, [name]: lengths[name] - step });
        const slope = cayleyMengerGradient(lengths)[name];
        expect(Math.abs((up - down) / (2 * step) - slope) / longest ** 5).toBeLessThan(1e-7);
      }),
    );
  });

  it('do not exist when the faces fail together and turn the determinant positive', () => {
    const lengths = { ab: 1, ac: 1, ad: 3, bc: 3, bd: 1, cd: 5 };
    expect(cayleyMenger(lengths)).toBe(468);
    expect(tetrahedronExists(lengths)).toBe(false);
  });
});

describe('quadDiagonalRange', () => {
  it('holds the second diagonal of every four points, flat or not', () => {
    fc.assert(
      fc.property(fourPlaces, (places) => {
        const { ab, bc, cd, ad, ac, bd } = lengthsOf(places);
        fc.pre(Math.max(triangleExcess(ab, bc, ac), triangleExcess(cd, ad, ac)) < -1e-3 && ac > 1);
        const range = quadDiagonalRange(ab, bc, cd, ad, ac);
        expect(range?.min).toBeLessThanOrEqual(bd + 1e-3);
        expect(range?.max).toBeGreaterThanOrEqual(bd - 1e-3);
      }),
    );
  });

  it('ends where the four points are flat', () => {
    const range = quadDiagonalRange(2000, 3000, 2200, 2900, 3500);
    const flat = (bd: number) => cayleyMenger({ ab: 2000, bc: 3000, cd: 2200, ad: 2900, ac: 3500, bd });
    expect(Math.abs(flat(range?.max ?? 0)) / 3500 ** 6).toBeLessThan(1e-12);
    expect(Math.abs(flat(range?.min ?? 0)) / 3500 ** 6).toBeLessThan(1e-12);
    expect(flat(3000)).toBeGreaterThan(0);
  });

  it('is null when a triangle does not close or the diagonal is nothing', () => {
    expect(quadDiagonalRange(1, 1, 2, 2, 3)).toBeNull();
    expect(quadDiagonalRange(2, 2, 1, 1, 3)).toBeNull();
    expect(quadDiagonalRange(1, 1, 1, 1, 0)).toBeNull();
  });
});

describe('points and lines', () => {
  const line: readonly Point2[] = [
    [0, 0],
    [300, 0],
    [300, 0],
    [300, 400],
  ];

  it('measure along straight pieces', () => {
    expect(distance([0, 0], [3, 4])).toBe(5);
    expect(distance([1, 2, 3], [3, 5, 9])).toBe(7);
    expect(polylineLength(line)).toBe(700);
    expect(polylineLength([])).toBe(0);
  });

  it('find the place at a distance, across a corner and a doubled point', () => {
    expect(pointAlong(line, 100)).toEqual([100, 0]);
    expect(pointAlong(line, 300)).toEqual([300, 0]);
    expect(pointAlong(line, 500)).toEqual([300, 200]);
    const inSpace: readonly Point3[] = [
      [0, 0, 0],
      [0, 0, 10],
    ];
    expect(pointAlong(inSpace, 4)).toEqual([0, 0, 4]);
  });

  it('stay on the line past its ends, and need a point', () => {
    expect(pointAlong(line, -5)).toEqual([0, 0]);
    expect(pointAlong(line, 701)).toEqual([300, 400]);
    const none: readonly Point2[] = [];
    expect(() => pointAlong(none, 0)).toThrow(RangeError);
  });

  it('split a line into two parts that make the whole', () => {
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 2, maxLength: 6 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (path, share) => {
          const along = polylineLength(path) * share;
          const here = pointAlong(path, along);
          let walked = 0;
          const gaps = path.slice(1).map((end, i) => {
            const start = path[i] ?? end;
            const offLine = distance(start, here) + distance(here, end) - distance(start, end);
            const gap =
              Math.abs(offLine) < 1e-6 ? Math.abs(walked + distance(start, here) - along) : Number.POSITIVE_INFINITY;
            walked += distance(start, end);
            return gap;
          });
          expect(Math.min(...gaps)).toBeLessThan(1e-3);
        },
      ),
    );
  });

  it('measure an L of cloth, whichever way round and wherever it lies', () => {
    const corners: readonly Point2[] = [
      [0, 0],
      [3, 0],
      [3, 1],
      [1, 1],
      [1, 2],
      [0, 2],
    ];
    expect(polygonArea(corners)).toBe(4);
    expect(polygonArea(corners.toReversed())).toBe(4);
    expect(polygonArea(corners.map(([x, y]): Point2 => [x + 1e9, y - 1e9]))).toBe(4);
    expect(polygonPerimeter(corners)).toBe(10);
    expect(polygonArea([])).toBe(0);
    expect(polygonPerimeter([])).toBe(0);
  });

  it('fit in their box', () => {
    expect(boundingBox([])).toBeNull();
    expect(boundingBox(line)).toEqual({ min: [0, 0, 0], max: [300, 400, 0] });
    const inSpace: readonly Point3[] = [
      [5, -1, 2],
      [-5, 1, 7],
    ];
    expect(boundingBox(inSpace)).toEqual({ min: [-5, -1, 2], max: [5, 1, 7] });
  });
});
