import type { Drawing, Entity, Flat } from './drawing.ts';
import { onPaper, PENS } from './on-paper.ts';
import { EDGE, type Paper, SLACK } from './paper.ts';
import { line, mm, shape, text } from './svg-parts.ts';
import { mapBody } from './tile-map.ts';
import type { TileWords } from './tile-words.ts';
import {
  FOOT,
  HEAD,
  MOST_TILES,
  OVERLAP,
  sheetOf,
  type Tile,
  type TilesRefusal,
  type Tiling,
  tilesOf,
} from './tiles.ts';

/** A sheet to be printed: SVG of exactly its size, one user unit one millimetre. */
export interface TilePage {
  readonly name: string;
  readonly svg: string;
}

export type TilesOffer = { readonly ok: true; readonly tiling: Tiling } | ({ readonly ok: false } & TilesRefusal);

/** How many sheets a piece takes in real size, or why it is not printed so. */
export function tilesFor(drawing: Drawing, paper: Paper): TilesOffer {
  if (!drawing.flat) return { ok: false, why: 'not-flat' };
  if (!drawing.adjusted) return { ok: false, why: 'no-shape' };
  const closed = (layer: Entity['layer']): readonly Flat[] =>
    drawing.entities.flatMap((one) => (one.type === 'line' && one.layer === layer && one.closed ? one.points : []));
  const allowance = closed('ALLOWANCE');
  const tiling = tilesOf(allowance.length > 0 ? allowance : closed('OUTLINE'), paper);
  if (!tiling) return { ok: false, why: 'no-outline' };
  const count = tiling.tiles.length;
  return count > MOST_TILES ? { ok: false, why: 'too-many', count, paper } : { ok: true, tiling };
}

/** In real size: what was taped is in the table, and would lie between the lines to cut. */
const LEFT_OUT: ReadonlySet<Entity['layer']> = new Set(['DIMENSION']);
const SIZES = { letter: 5, point: 0.9, fastener: 4 };

/** The sheet that says how to put them together, then every tile. */
export function tilePages(drawing: Drawing, tiling: Tiling, words: TileWords): TilePage[] {
  const of = tiling.tiles.length + 1;
  const shown = drawing.entities.filter(({ layer }) => !LEFT_OUT.has(layer)).map((one) => onPaper(one, 1, SIZES));
  const body = shown.map((one) => shape(one, PENS)).join('');
  const map: TilePage = {
    name: 'map',
    svg: pageOf(
      drawing,
      tiling,
      words,
      { title: words.howTo, page: words.page(1, of) },
      mapBody(drawing, tiling, words),
    ),
  };
  return [
    map,
    ...tiling.tiles.map((tile, index): TilePage => {
      const head = { title: words.tile(tile.name), page: words.page(index + 2, of) };
      return { name: tile.name, svg: pageOf(drawing, tiling, words, head, tileBody(tiling, tile, body, words)) };
    }),
  ];
}

/** What a tile shows of the piece, cut off at its window, and the marks and lines that join it to its neighbours. */
function tileBody({ width, height, across, up }: Tiling, tile: Tile, body: string, words: TileWords): string {
  const [x, y] = [EDGE, EDGE + HEAD];
  const box = `${mm(tile.left)} ${mm(-tile.bottom - height)} ${mm(width)} ${mm(height)}`;
  const half = OVERLAP / 2;
  const [left, right, top, bottom] = [x + half, x + half + across, y + half, y + half + up];
  const thin = 'stroke="#888" stroke-width="0.15" stroke-dasharray="0.6 1.2"';
  const sides = [
    line([left, y], [left, y + height], thin),
    line([right, y], [right, y + height], thin),
    line([x, top], [x + width, top], thin),
    line([x, bottom], [x + width, bottom], thin),
  ];
  const { beside } = tile;
  const names = [
    beside.above && text(words.joins(beside.above), [x + width / 2, top - 1.6], 2.6, { anchor: 'middle', grey: true }),
    beside.below &&
      text(words.joins(beside.below), [x + width / 2, bottom + 3.6], 2.6, { anchor: 'middle', grey: true }),
    beside.left &&
      text(words.joins(beside.left), [left - 1.6, y + height / 2], 2.6, { anchor: 'middle', grey: true, turn: -90 }),
    beside.right &&
      text(words.joins(beside.right), [right + 3.6, y + height / 2], 2.6, { anchor: 'middle', grey: true, turn: -90 }),
  ];
  const marks = tile.marks.map(({ number, at }) =>
    registration([x + at[0] - tile.left, y + height - (at[1] - tile.bottom)], number),
  );
  const drawn = `<svg x="${mm(x)}" y="${mm(y)}" width="${mm(width)}" height="${mm(height)}" viewBox="${box}">${body}</svg>`;
  return [drawn, ...sides, ...names.filter((one) => typeof one === 'string'), ...marks].join('\n');
}

/** A ring with a cross through it and the number that its twin on the neighbour carries. */
function registration([x, y]: Flat, number: number): string {
  const pen = 'stroke="#000" stroke-width="0.2"';
  return [
    `<circle class="mark" data-mark="${number}" cx="${mm(x)}" cy="${mm(y)}" r="2.2" fill="none" ${pen}/>`,
    line([x - 4.5, y], [x + 4.5, y], pen),
    line([x, y - 4.5], [x, y + 4.5], pen),
    text(String(number), [x + 2.6, y - 2.4], 2.4),
  ].join('');
}

/** The length of the bar on every sheet, mm. */
const BAR = 100;

/** One sheet: its name, its number, what it is of, and on every one a bar to lay a rule on. */
function pageOf(
  { facts, legend, warnings }: Drawing,
  { paper, lying }: Tiling,
  words: TileWords,
  head: { title: string; page: string },
  body: string,
): string {
  const sheet = sheetOf(paper, lying);
  const [width, height] = [sheet.width, sheet.height - SLACK];
  const [left, right] = [EDGE, width - EDGE];
  const foot = sheet.height - EDGE - FOOT;
  const at = (row: number): number => foot + 4 + row * 3.6;
  const bar = right - BAR;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" font-family="sans-serif" fill="#000">`,
    `<rect width="${mm(width)}" height="${mm(height)}" fill="#fff"/>`,
    text(head.title, [left, EDGE + 7.5], 7, { bold: true }),
    facts.isCleared ? '' : text(facts.cleared, [width / 2 - 12, EDGE + 7.5], 4.5, { anchor: 'middle', bold: true }),
    text(head.page, [right, EDGE + 3.5], 3.2, { anchor: 'end' }),
    text(words.fullSize, [right, EDGE + 8], 3.2, { anchor: 'end' }),
    text(warnings.join(' '), [left, EDGE + 11.4], 3, { bold: true, room: right - left }),
    body,
    text([facts.job, facts.piece].filter(Boolean).join(' · '), [left, at(0)], 3.2, {
      bold: true,
      room: right - left - 4,
    }),
    text(facts.cleared, [left, at(1.1)], 3.2, { bold: true, room: bar - left - 4 }),
    text(legend.at(-1) ?? '', [left, at(2.1)], 2.6, { room: bar - left - 4 }),
    text([facts.demo, facts.state].filter(Boolean).join(' · '), [left, at(3)], 2.6, { room: bar - left - 4 }),
    text(facts.seal, [left, at(3.9)], 2.4, { room: right - left }),
    line([bar, at(2.3)], [right, at(2.3)], 'stroke="#000" stroke-width="0.3"'),
    line([bar, at(2.3) - 1.5], [bar, at(2.3) + 1.5], 'stroke="#000" stroke-width="0.2"'),
    line([right, at(2.3) - 1.5], [right, at(2.3) + 1.5], 'stroke="#000" stroke-width="0.2"'),
    text(words.bar(BAR), [(bar + right) / 2, at(2.3) - 1.2], 2.8, { anchor: 'middle' }),
    '</svg>',
    '',
  ].join('\n');
}
