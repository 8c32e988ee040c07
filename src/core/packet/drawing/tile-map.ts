import type { Drawing, Flat } from './drawing.ts';
import { onPaper, PENS } from './on-paper.ts';
import { EDGE } from './paper.ts';
import { mm, shape, text } from './svg-parts.ts';
import type { TileWords } from './tile-words.ts';
import { FOOT, HEAD, OVERLAP, sheetOf, type Tiling } from './tiles.ts';

/** The two squares to be measured before anything is cut, mm: 100 mm, and 4 in. */
const INNER = 100;
const OUTER = 4 * 25.4;
const GAP = 6;
/** Height of the steps' letters, and from one line to the next, mm. */
const LETTER = 3.6;
const LEADING = 5;
/** What a letter takes on the average of its height: sans-serif, a little more than most. */
const WIDE = 0.54;

/** The sheet that goes before the tiles: the square to measure, the steps, and where each tile goes. */
export function mapBody(drawing: Drawing, tiling: Tiling, words: TileWords): string {
  const sheet = sheetOf(tiling.paper, tiling.lying);
  const [top, bottom] = [EDGE + HEAD + 2, sheet.height - EDGE - FOOT - 2];
  const beside = EDGE + OUTER + GAP;
  const steps = words
    .steps(tiling.tiles.length)
    .map((step) => wrapped(step, (sheet.width - EDGE - beside) / (LETTER * WIDE)));
  const lines = [...steps.flatMap((step) => [...step, '']), ...drawing.legend.flatMap((one) => wrapped(one, 42))];
  const told = lines.map((one, row) => text(one, [beside, top + 3 + row * LEADING], LETTER)).join('\n');
  // A lying sheet has its room beside the square, an upright one below it.
  const from: Flat = tiling.lying
    ? [beside, top + lines.length * LEADING + GAP]
    : [EDGE, top + Math.max(OUTER + 10, lines.length * LEADING) + GAP];
  const room = { width: sheet.width - EDGE - from[0], height: bottom - from[1] };
  return [square([EDGE, top], words), told, mapOf(drawing, tiling, from, room)].join('\n');
}

/** 100 mm in 4 in, with one corner in common; what lies between their lines is 1.6 mm. */
function square([x, y]: Flat, words: TileWords): string {
  const rect = (size: number, name: string): string =>
    `<rect class="${name}" x="${mm(x)}" y="${mm(y + OUTER - size)}" width="${mm(size)}" height="${mm(size)}" fill="none" stroke="#000" stroke-width="0.2"/>`;
  return [
    rect(OUTER, 'square-in'),
    rect(INNER, 'square-mm'),
    text(words.square.inner, [x + INNER / 2, y + OUTER / 2], 5, { anchor: 'middle', bold: true }),
    text(words.square.outer, [x + INNER / 2, y + OUTER / 2 + 7], 4, { anchor: 'middle' }),
  ].join('\n');
}

/** The whole piece small, under the lines of the tiles and their names. */
function mapOf(drawing: Drawing, tiling: Tiling, [x, y]: Flat, room: { width: number; height: number }): string {
  const { rows, columns, across, up, tiles } = tiling;
  const [first] = tiles;
  if (!first || room.height < 10) return '';
  const scale = Math.min(room.width / (columns * across), room.height / (rows * up), 0.5);
  // Left and upper end of the lines, on the piece.
  const left = first.left + OVERLAP / 2 - first.column * across;
  const upper = first.bottom + OVERLAP / 2 + (first.row + 1) * up;
  const at = (px: number, py: number): Flat => [x + (px - left) * scale, y + (upper - py) * scale];
  const body = drawing.entities
    .filter(({ layer, type }) => (layer === 'OUTLINE' || layer === 'ALLOWANCE' || layer === 'EDGE') && type === 'line')
    .map((one) => shape(onPaper(one, scale, { letter: 2, point: 0.5, fastener: 0.5 }), PENS))
    .join('');
  const [ox, oy] = at(0, 0);
  const names = tiles.map(({ name, row, column }) => {
    const [nx, ny] = at(left + (column + 0.5) * across, upper - (row + 0.5) * up);
    return text(name, [nx, ny + 1.6], Math.min(6, up * scale * 0.35), { anchor: 'middle', bold: true });
  });
  const boxes = tiles.map(({ row, column }) => {
    const [bx, by] = at(left + column * across, upper - row * up);
    return `<rect x="${mm(bx)}" y="${mm(by)}" width="${mm(across * scale)}" height="${mm(up * scale)}" fill="none" stroke="#888" stroke-width="0.2"/>`;
  });
  return [...boxes, `<g transform="translate(${mm(ox)} ${mm(oy)})">${body}</g>`, ...names].join('\n');
}

/** A sentence in lines of at most so many letters, parted between words. */
function wrapped(sentence: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of sentence.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
