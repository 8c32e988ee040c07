import { describe, expect, it } from 'vitest';
import {
  cayleyMenger,
  quadDiagonalRange,
  type SixLengths,
  tetrahedronExists,
  tetrahedronVolume,
  triangleAngle,
  triangleArea,
  triangleExcess,
} from '../../src/core/geometry';

/** AB AC BC CD BD AD, the order of the published table. */
const six = (ab: number, ac: number, bc: number, cd: number, bd: number, ad: number): SixLengths => ({
  ab,
  ac,
  ad,
  bc,
  bd,
  cd,
});
const relative = (value: number, expected: number) => Math.abs(value / expected - 1);

type Edges = [number, number, number, number, number, number];
interface Published {
  readonly edges: Edges;
  readonly areas: readonly number[];
  readonly volume: number;
  readonly det: number;
}

describe('perfect tetrahedra', () => {
  // OEIS A272388, after R. H. Buchholz, "Perfect pyramids", Bull. Austral. Math. Soc. 45 (1992) 353-368:
  // edges, areas ABC ABD ACD BCD, volume; the determinant is 288 V² in whole numbers.
  it.each<Published>([
    { edges: [117, 84, 51, 52, 53, 80], areas: [1890, 1800, 2016, 1170], volume: 18144, det: 94810963968 },
    { edges: [160, 153, 25, 39, 56, 120], areas: [1872, 2688, 1404, 420], volume: 8064, det: 18728091648 },
    {
      edges: [203, 195, 148, 203, 195, 148],
      areas: [13650, 13650, 13650, 13650],
      volume: 611520,
      det: 107699532595200,
    },
    { edges: [225, 200, 65, 119, 156, 87], areas: [6300, 4914, 2436, 3570], volume: 35280, det: 358467379200 },
    { edges: [234, 168, 102, 104, 106, 160], areas: [7560, 7200, 8064, 4680], volume: 145152, det: 6067901693952 },
    { edges: [318, 221, 203, 42, 175, 221], areas: [22260, 18564, 4620, 2940], volume: 206976, det: 12337650597888 },
    {
      edges: [319, 318, 175, 175, 210, 221],
      areas: [26796, 23100, 18564, 14700],
      volume: 1034880,
      det: 308441264947200,
    },
    {
      edges: [319, 318, 175, 203, 252, 221],
      areas: [26796, 27720, 22260, 17640],
      volume: 1241856,
      det: 444155421523968,
    },
    { edges: [320, 306, 50, 78, 112, 240], areas: [7488, 10752, 5616, 1680], volume: 64512, det: 1198597865472 },
    { edges: [351, 252, 153, 156, 159, 240], areas: [17010, 16200, 18144, 10530], volume: 489888, det: 69117192732672 },
  ])('$edges has volume $volume', ({ edges, areas, volume, det }) => {
    const [ab, ac, bc, cd, bd, ad] = edges;
    const lengths = six(...edges);
    expect(relative(cayleyMenger(lengths), det)).toBeLessThan(1e-12);
    expect(relative(tetrahedronVolume(lengths) ?? 0, volume)).toBeLessThan(1e-12);
    const faces = [
      triangleArea(ab, ac, bc),
      triangleArea(ab, bd, ad),
      triangleArea(ac, cd, ad),
      triangleArea(bc, cd, bd),
    ];
    faces.forEach((area, face) => {
      expect(area).toBeCloseTo(areas[face] ?? Number.NaN, 8);
    });
  });
});

describe('tetrahedra from the definition of the determinant', () => {
  // MathWorld, "Cayley-Menger Determinant": 288 V² = det. The values follow from it by hand.
  it('gives the regular tetrahedron of edge 1 the volume 1 / (6 √2)', () => {
    expect(cayleyMenger(six(1, 1, 1, 1, 1, 1))).toBe(4);
    expect(tetrahedronVolume(six(1, 1, 1, 1, 1, 1))).toBeCloseTo(0.1178511302, 10);
  });

  it('gives the corner with legs 3, 4 and 12 the volume 24', () => {
    const corner = six(3, 4, 5, Math.sqrt(160), Math.sqrt(153), 12);
    expect(cayleyMenger(corner)).toBeCloseTo(165888, 6);
    expect(tetrahedronVolume(corner)).toBeCloseTo(24, 9);
  });

  it('gives the birectangular tetrahedron its volume in whole numbers', () => {
    const lengths = six(153, 185, 104, 672, 680, 697);
    expect(relative(cayleyMenger(lengths), 914698724179968)).toBeLessThan(1e-12);
    expect(relative(tetrahedronVolume(lengths) ?? 0, 1782144)).toBeLessThan(1e-12);
  });

  it('finds flat shapes flat and lets them exist', () => {
    expect(cayleyMenger(six(3, 5, 4, 3, 5, 4))).toBe(0);
    expect(tetrahedronVolume(six(3, 5, 4, 3, 5, 4))).toBe(0);
    const square = six(1, Math.SQRT2, 1, 1, Math.SQRT2, 1);
    expect(cayleyMenger(square)).toBeCloseTo(0, 12);
    expect(tetrahedronExists(square)).toBe(true);
  });

  it('finds the sets whose faces all close and that still cannot exist', () => {
    expect(cayleyMenger(six(4, 4, 4, 2.25, 2.25, 2.25))).toBe(-416);
    expect(tetrahedronExists(six(4, 4, 4, 2.25, 2.25, 2.25))).toBe(false);
    expect(cayleyMenger(six(10, 10, 10, 5.5, 5.5, 5.5))).toBe(-185000);
    expect(tetrahedronVolume(six(10, 10, 10, 5.5, 5.5, 5.5))).toBeNull();
    expect(cayleyMenger(six(10, 10, 10, 6, 6, 6))).toBe(160000);
    expect(tetrahedronExists(six(10, 10, 10, 6, 6, 6))).toBe(true);
  });

  it('puts the limit of an apex over an equilateral base of 10 at 10 / √3', () => {
    const limit = 10 / Math.sqrt(3);
    const apex = (edge: number) => six(10, 10, 10, edge, edge, edge);
    expect(tetrahedronExists(apex(limit - 1e-6))).toBe(false);
    expect(tetrahedronExists(apex(limit + 1e-6))).toBe(true);
  });
});

describe('triangles', () => {
  // Heron's formula in whole numbers.
  it.each([
    [3, 4, 5, 6],
    [5, 5, 6, 12],
    [5, 5, 8, 12],
    [13, 14, 15, 84],
    [51, 52, 53, 1170],
    [9, 10, 17, 36],
    [1, 2, 3, 0],
  ])('%d, %d, %d has area %d', (a, b, c, area) => {
    expect(triangleArea(a, b, c)).toBe(area);
    expect(triangleArea(c, a, b)).toBe(area);
  });

  it('does not close 1, 2, 4', () => {
    expect(triangleArea(1, 2, 4)).toBeNull();
    expect(triangleExcess(1, 2, 4)).toBe(1);
    expect(triangleExcess(1, 2, 3)).toBe(0);
  });

  // The kind of triangle of W. Kahan, "Miscalculating Area and Angles of a Needle-like Triangle". The expected values
  // are our own: the sides are whole numbers of 2^-64, 16 S² is exact in them, and only then a root is taken.
  it('keeps the digits of a needle, where the plain formula loses them', () => {
    const [a, b, c] = [100000, 99999.99979, 0.00029];
    const whole = (side: number) => BigInt(side * 2 ** 64);
    const [x, y, z] = [whole(a), whole(b), whole(c)];
    const exact = Math.sqrt(Number((x + y + z) * (y + z - x) * (x + z - y) * (x + y - z))) / 4 / 2 ** 128;
    expect(relative(triangleArea(a, b, c) ?? 0, exact)).toBeLessThan(1e-14);
    expect(relative(Math.sin(triangleAngle(c, a, b) ?? 0), (2 * exact) / (a * b))).toBeLessThan(1e-13);
    const half = (a + b + c) / 2;
    expect(relative(Math.sqrt(half * (half - a) * (half - b) * (half - c)), exact)).toBeGreaterThan(1e-9);
  });
});

describe('the second diagonal', () => {
  // Pythagoras: a 3 x 4 rectangle has diagonals of 5; folded shut along one, its corners come to 7 / 5 of each other.
  it('of a 3 by 4 rectangle lies between 1.4 and 5', () => {
    const range = quadDiagonalRange(3, 4, 3, 4, 5);
    expect(range?.max).toBeCloseTo(5, 12);
    expect(range?.min).toBeCloseTo(1.4, 12);
  });
});
