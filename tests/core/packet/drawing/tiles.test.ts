import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insidePolygon } from '../../../../src/core/geometry/index.ts';
import type { Flat } from '../../../../src/core/packet/drawing/drawing.ts';
import { EDGE, PAPERS, type Paper } from '../../../../src/core/packet/drawing/paper.ts';
import {
  FOOT,
  HEAD,
  OVERLAP,
  sheetOf,
  type Tile,
  type Tiling,
  tileName,
  tilesOf,
} from '../../../../src/core/packet/drawing/tiles.ts';

const place = fc.tuple(fc.integer({ min: -900, max: 900 }), fc.integer({ min: -900, max: 900 }));
/** A line without crossings: corners in the order in which they are seen from the middle. */
const round = fc
  .uniqueArray(place, { minLength: 3, maxLength: 9, selector: ([x, y]) => `${x},${y}` })
  .map((corners): Flat[] => [...corners].sort((a, b) => Math.atan2(a[1], a[0]) - Math.atan2(b[1], b[0])));
const paper = fc.constantFrom<Paper>('a4', 'letter');

function made(line: readonly Flat[], on: Paper): Tiling {
  const tiling = tilesOf(line, on);
  if (!tiling) throw new Error('no tiles');
  return tiling;
}

/** Between its marks, edges included: what is left of a tile that is trimmed. */
const shows = ({ across, up }: Tiling, { left, bottom }: Tile, [x, y]: Flat): boolean => {
  const [dx, dy] = [x - left - OVERLAP / 2, y - bottom - OVERLAP / 2];
  return dx >= -1e-6 && dx <= across + 1e-6 && dy >= -1e-6 && dy <= up + 1e-6;
};

describe('tiles in real size', () => {
  it('show every place of the line, and every place in it, between their marks', () => {
    fc.assert(
      fc.property(round, paper, fc.array(place, { maxLength: 30 }), (line, on, places) => {
        const tiling = made(line, on);
        const along = line.flatMap((from, i): Flat[] => {
          const to = line[(i + 1) % line.length] ?? from;
          return [0, 0.21, 0.5, 0.83].map((t) => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]);
        });
        const inside = places.filter((one) => insidePolygon(one, line));
        for (const one of [...along, ...inside])
          expect(
            tiling.tiles.some((tile) => shows(tiling, tile, one)),
            String(one),
          ).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('overlap by the same width everywhere, side by side and one above the other', () => {
    fc.assert(
      fc.property(round, paper, (line, on) => {
        const tiling = made(line, on);
        const byName = new Map(tiling.tiles.map((tile) => [tile.name, tile]));
        for (const tile of tiling.tiles) {
          const right = byName.get(tile.beside.right ?? '');
          if (right) {
            expect(tile.left + tiling.width - right.left).toBeCloseTo(OVERLAP, 6);
            expect(right.bottom).toBe(tile.bottom);
            expect(right.beside.left).toBe(tile.name);
          }
          const below = byName.get(tile.beside.below ?? '');
          if (below) {
            expect(below.bottom + tiling.height - tile.bottom).toBeCloseTo(OVERLAP, 6);
            expect(below.left).toBe(tile.left);
            expect(below.beside.above).toBe(tile.name);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  it('have their marks where their neighbours have them, by number and by place, and inside what both show', () => {
    fc.assert(
      fc.property(round, paper, (line, on) => {
        const tiling = made(line, on);
        const known = new Map<number, Flat>();
        for (const tile of tiling.tiles) {
          expect(new Set(tile.marks.map(({ number }) => number)).size).toBe(4);
          for (const { number, at } of tile.marks) {
            expect(known.get(number) ?? at).toEqual(at);
            known.set(number, at);
            const [dx, dy] = [at[0] - tile.left, at[1] - tile.bottom];
            for (const [d, whole] of [
              [dx, tiling.width],
              [dy, tiling.height],
            ] as const)
              expect(Math.min(Math.abs(d - OVERLAP / 2), Math.abs(whole - OVERLAP / 2 - d))).toBeCloseTo(0, 6);
          }
          const right = tiling.tiles.find(({ name }) => name === tile.beside.right);
          const shared = right?.marks.filter(({ number }) => tile.marks.some((mark) => mark.number === number));
          expect(shared?.length ?? 2).toBe(2);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('fit their sheet with its edge, its head and its foot', () => {
    fc.assert(
      fc.property(round, paper, (line, on) => {
        const tiling = made(line, on);
        const sheet = sheetOf(tiling.paper, tiling.lying);
        expect(tiling.width + 2 * EDGE).toBeCloseTo(sheet.width, 6);
        expect(tiling.height + 2 * EDGE + HEAD + FOOT).toBeCloseTo(sheet.height, 6);
        expect(tiling.tiles.length).toBeLessThanOrEqual(tiling.rows * tiling.columns);
      }),
      { numRuns: 25 },
    );
  });

  it('are laid the way that takes fewer, and leave out sheets that would be empty', () => {
    const wide: Flat[] = [
      [0, 0],
      [250, 0],
      [250, 120],
      [0, 120],
    ];
    expect(made(wide, 'a4')).toMatchObject({ lying: true, tiles: [{ name: 'A1' }] });
    const corner: Flat[] = [
      [0, 0],
      [900, 0],
      [900, 100],
      [100, 100],
      [100, 900],
      [0, 900],
    ];
    const tiling = made(corner, 'letter');
    expect(tiling.tiles.length).toBeLessThan(tiling.rows * tiling.columns);
    const lone = tiling.tiles.find(({ name }) => name === 'A1');
    expect(lone?.beside).toMatchObject({ left: null, above: null, right: null, below: 'B1' });
  });

  it('are not made of a line of two corners', () => {
    expect(
      tilesOf(
        [
          [0, 0],
          [10, 0],
        ],
        'a4',
      ),
    ).toBeNull();
  });

  it('go by letters for rows and numbers for columns', () => {
    expect([tileName(0, 0), tileName(1, 2), tileName(25, 9), tileName(26, 0), tileName(52, 0)]).toEqual([
      'A1',
      'B3',
      'Z10',
      'AA1',
      'BA1',
    ]);
  });

  it('are on paper as the standards have it', () => {
    // ISO 216:2007, table 1: A4 is 210 mm by 297 mm. ASME Y14.1: size A is 8.5 in by 11 in.
    expect(PAPERS.a4).toEqual({ width: 210, height: 297 });
    expect(PAPERS.letter.width / 25.4).toBeCloseTo(8.5, 9);
    expect(PAPERS.letter.height / 25.4).toBeCloseTo(11, 9);
  });
});
