import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distance,
  type Point,
  type Point2,
  type Point3,
  type SketchLink,
  type SketchOptions,
  sketch,
} from '../../../src/core/geometry';

const link = (a: number, b: number, length: number, weight = 1): SketchLink => ({ a, b, length, weight });
const pairs = (count: number) =>
  Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_, k) => [a, a + 1 + k] as const),
  ).flat();
const linksOf = (points: readonly Point[], chosen: readonly (readonly [number, number])[]) =>
  chosen.map(([a, b]) => link(a, b, distance(points[a] ?? [0, 0], points[b] ?? [0, 0])));
const worst = (points: readonly Point[], links: readonly SketchLink[]) =>
  Math.max(...links.map(({ a, b, length }) => Math.abs(distance(points[a] ?? [0, 0], points[b] ?? [0, 0]) - length)));
const turnOf = ([a, b, c]: readonly Point[]) =>
  a && b && c ? Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) : 0;

const NOMINAL: readonly Point2[] = [
  [0, 1000],
  [2000, 1000],
  [2000, -1000],
  [0, -1000],
];
const BOAT: readonly Point2[] = [
  [0, 1250],
  [3100, 1100],
  [3080, -1120],
  [20, -1240],
];

describe('sketch in a plane', () => {
  it('keeps the nominal places while there are no readings', () => {
    expect(sketch(NOMINAL, [])).toEqual(NOMINAL);
    expect(sketch([], [])).toEqual([]);
  });

  it('takes the shape of a full set of readings to a millimetre, port still to port', () => {
    const links = linksOf(BOAT, pairs(4));
    const drawn = sketch(NOMINAL, links);
    expect(worst(drawn, links)).toBeLessThan(1);
    expect(turnOf(drawn)).toBe(turnOf(NOMINAL));
    expect(drawn[0]?.[1]).toBeGreaterThan(0);
    expect(drawn[1]?.[0]).toBeGreaterThan(drawn[0]?.[0] ?? 0);
  });

  it('leaves a point without readings exactly where it was', () => {
    const drawn = sketch([...NOMINAL, [700, 300]], [link(0, 1, 3100)]);
    expect(drawn[4]).toEqual([700, 300]);
    expect(drawn[2]?.[0]).toBeCloseTo(2000, 9);
    expect(distance(drawn[0] ?? [0, 0], drawn[1] ?? [0, 0])).toBeCloseTo(3100, 0);
  });

  it('neither turns nor shifts a shape that only grows', () => {
    const links = linksOf(NOMINAL, pairs(4)).map((one) => ({ ...one, length: one.length * 1.5 }));
    const drawn = sketch(NOMINAL, links);
    const expected: readonly Point2[] = NOMINAL.map(([x, y]) => [1000 + (x - 1000) * 1.5, y * 1.5]);
    drawn.forEach((point, i) => {
      expect(distance(point, expected[i] ?? [0, 0])).toBeLessThan(1);
    });
  });

  it('gives contradicting readings their share by weight', () => {
    const drawn = sketch(NOMINAL, [link(0, 1, 2000, 3), link(0, 1, 2400, 1)]);
    expect(distance(drawn[0] ?? [0, 0], drawn[1] ?? [0, 0])).toBeCloseTo(2100, 0);
  });

  it('parts linked points that were drawn on one spot', () => {
    const drawn = sketch(
      [
        [0, 0],
        [0, 0],
        [0, 0],
      ],
      [link(0, 1, 300), link(1, 2, 400), link(0, 2, 500)],
    );
    expect(worst(drawn, [link(0, 1, 300), link(1, 2, 400), link(0, 2, 500)])).toBeLessThan(1);
  });

  it('passes over links that mean nothing', () => {
    const nonsense = [
      link(0, 9, 100),
      link(-1, 0, 100),
      link(1, 1, 100),
      link(0, 1, Number.NaN),
      link(0, 1, -5),
      link(0, 1, 100, 0),
      link(0, 1, 100, Number.POSITIVE_INFINITY),
    ];
    expect(sketch(NOMINAL, nonsense)).toEqual(NOMINAL);
  });
});

describe('sketch in space', () => {
  const frame: readonly Point3[] = [
    [0, 1000, 500],
    [2000, 1000, 900],
    [2000, -1000, 900],
    [0, -1000, 500],
    [1000, 0, 1500],
  ];
  const real: readonly Point3[] = [
    [0, 1200, 620],
    [2600, 1050, 1010],
    [2590, -1060, 1000],
    [10, -1190, 600],
    [1300, 20, 1750],
  ];

  it('takes lengths and heights', () => {
    const links = linksOf(real, pairs(5));
    const options: SketchOptions = { heights: real.map(([, , z], i) => ({ i, z })) };
    const drawn = sketch(frame, links, options);
    expect(worst(drawn, links)).toBeLessThan(2);
    drawn.forEach((point, i) => {
      expect(Math.abs(point[2] - (real[i]?.[2] ?? 0))).toBeLessThan(2);
    });
    expect(turnOf(drawn)).toBe(turnOf(frame));
  });

  it('takes a height alone and leaves the rest', () => {
    const drawn = sketch(frame, [], {
      heights: [
        { i: 4, z: 1800 },
        { i: 9, z: 1 },
        { i: 0, z: Number.NaN },
      ],
    });
    expect(drawn[4]?.[2]).toBeCloseTo(1800, 0);
    expect(drawn.slice(0, 4)).toEqual(frame.slice(0, 4));
  });
});

describe('sketch, for any input', () => {
  const coordinate = fc.integer({ min: -2000, max: 2000 });
  const nominals = fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 8 });
  const anyLinks = fc.array(
    fc.record({
      a: fc.nat(7),
      b: fc.nat(7),
      length: fc.integer({ min: 0, max: 9000 }),
      weight: fc.constantFrom(1e-9, 0.01, 1, 40, 1e9),
    }),
    { maxLength: 16 },
  );

  it('stays finite, is the same each time, and moves no point without links', () => {
    fc.assert(
      fc.property(nominals, anyLinks, (nominal, links) => {
        const drawn = sketch(nominal, links);
        expect(drawn.flat().every(Number.isFinite)).toBe(true);
        expect(sketch(nominal, links)).toEqual(drawn);
        const linked = new Set(
          links.filter(({ a, b }) => a !== b && Math.max(a, b) < nominal.length).flatMap(({ a, b }) => [a, b]),
        );
        drawn.forEach((point, i) => {
          if (!linked.has(i)) expect(point).toEqual(nominal[i]);
        });
      }),
    );
  });

  it('fits the links no worse than the nominal places do', () => {
    const stress = (points: readonly Point[], links: readonly SketchLink[]) =>
      links.reduce(
        (sum, { a, b, length }) => sum + (distance(points[a] ?? [0, 0], points[b] ?? [0, 0]) - length) ** 2,
        0,
      );
    fc.assert(
      fc.property(
        nominals,
        fc.array(fc.integer({ min: 0, max: 5000 }), { minLength: 28, maxLength: 28 }),
        (nominal, lengths) => {
          const links = pairs(nominal.length).map(([a, b], k) => link(a, b, lengths[k] ?? 0));
          expect(stress(sketch(nominal, links), links)).toBeLessThanOrEqual(stress(nominal, links) * (1 + 1e-9) + 1);
        },
      ),
    );
  });
});
