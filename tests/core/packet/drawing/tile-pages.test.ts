import { describe, expect, it } from 'vitest';
import type { Drawing, Flat } from '../../../../src/core/packet/drawing/drawing.ts';
import { tilePages, tilesFor } from '../../../../src/core/packet/drawing/tile-pages.ts';
import { tiles as words } from '../../../../src/text/en/drawing.ts';

const box = (width: number, height: number): Flat[] => [
  [0, 0],
  [width, 0],
  [width, height],
  [0, height],
];

function drawing(width: number, height: number, more: Partial<Drawing> = {}): Drawing {
  return {
    system: 'metric',
    facts: {
      job: 'A <job>',
      piece: 'Lid',
      demo: null,
      isCleared: false,
      cleared: 'NOT CLEARED TO CUT',
      state: 'State ab12cd34: 3 entries',
      seal: 'Seal ab12cd34ef',
    },
    legend: ['Seen from above', 'Dashed line: 38 mm allowance'],
    warnings: [],
    adjusted: true,
    flat: true,
    entities: [
      { type: 'line', layer: 'OUTLINE', points: box(width, height), closed: true },
      {
        type: 'line',
        layer: 'DIMENSION',
        points: [
          [0, 0],
          [width, height],
        ],
        closed: false,
      },
      { type: 'text', layer: 'DIMENSION', at: [1, 1], text: '1234 mm', height: 9, anchor: 'middle' },
      { type: 'circle', layer: 'POINT', at: [0, 0], radius: 4 },
      { type: 'text', layer: 'TEXT', at: [5, 5], text: 'A', height: 10, anchor: 'start' },
    ],
    block: [],
    space: [],
    ...more,
  };
}

function pages(of: Drawing) {
  const offer = tilesFor(of, 'a4');
  if (!offer.ok) throw new Error(offer.why);
  return { tiling: offer.tiling, pages: tilePages(of, offer.tiling, words) };
}

const marksOf = (svg: string): Map<string, Flat> =>
  new Map(
    [...svg.matchAll(/data-mark="(\d+)" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, number = '', x, y]) => [
      number,
      [Number(x), Number(y)],
    ]),
  );

describe('sheets in real size', () => {
  it('each carry job, piece, state, seal, their number and that nobody has cleared it', () => {
    const { pages: made, tiling } = pages(drawing(400, 300));
    expect(made).toHaveLength(tiling.tiles.length + 1);
    for (const [index, { svg }] of made.entries())
      for (const said of [
        'A &lt;job&gt; · Lid',
        'NOT CLEARED TO CUT',
        'State ab12cd34',
        'Seal ab12cd34ef',
        `Page ${index + 1} of ${made.length}`,
        'Dashed line: 38 mm allowance',
        'print at 100 %',
      ])
        expect(svg).toContain(said);
  });

  it('have a mark where it is on the neighbour, as printed: what lies between two marks is the same on both', () => {
    const { pages: made, tiling } = pages(drawing(700, 600));
    const svgOf = (name: string | null): Map<string, Flat> =>
      marksOf(made.find((page) => page.name === name)?.svg ?? '');
    let met = 0;
    for (const tile of tiling.tiles) {
      const own = svgOf(tile.name);
      expect(own.size).toBe(4);
      for (const [name, dx, dy] of [
        [tile.beside.right, tiling.across, 0],
        [tile.beside.below, 0, tiling.up],
      ] as const) {
        if (name === null) continue;
        for (const [number, [x, y]] of svgOf(name)) {
          const twin = own.get(number);
          if (!twin) continue;
          met += 1;
          expect(twin[0]).toBeCloseTo(x + dx, 2);
          expect(twin[1]).toBeCloseTo(y + dy, 2);
        }
      }
    }
    expect(met).toBeGreaterThan(8);
  });

  it('begin with two squares to measure, 100 mm and 4 in, and the sentence to do so', () => {
    const svg = pages(drawing(400, 300)).pages[0]?.svg ?? '';
    const sides = [...svg.matchAll(/class="square-(?:mm|in)"[^>]*width="([\d.]+)" height="([\d.]+)"/g)];
    expect(sides.map(([, width, height]) => [Number(width), Number(height)])).toEqual([
      [101.6, 101.6],
      [100, 100],
    ]);
    expect(svg).toContain('Measure the square before you cut');
  });

  it('leave out what was taped', () => {
    for (const { svg } of pages(drawing(400, 300)).pages) expect(svg).not.toContain('1234 mm');
  });

  it('are not offered for what is not flat, has no shape, no outline, or would take too many', () => {
    expect(tilesFor(drawing(400, 300, { flat: false }), 'a4')).toEqual({ ok: false, why: 'not-flat' });
    expect(tilesFor(drawing(400, 300, { adjusted: false }), 'a4')).toEqual({ ok: false, why: 'no-shape' });
    expect(tilesFor(drawing(400, 300, { entities: [] }), 'a4')).toEqual({ ok: false, why: 'no-outline' });
    expect(tilesFor(drawing(4000, 3000), 'letter')).toMatchObject({ ok: false, why: 'too-many' });
  });

  it('go round the allowance where there is one', () => {
    const plain = drawing(160, 200);
    const wide = box(300, 200).map(([x, y]): Flat => [x - 70, y]);
    const allowed = { type: 'line', layer: 'ALLOWANCE', points: wide, closed: true } as const;
    const more = { ...plain, entities: [...plain.entities, allowed] };
    expect(pages(plain).tiling.tiles).toHaveLength(1);
    expect(pages(more).tiling.tiles).toHaveLength(2);
  });
});
