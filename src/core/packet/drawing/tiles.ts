import { insidePolygon } from '../../geometry/index.ts';
import type { Flat } from './drawing.ts';
import { EDGE, PAPERS, type Paper } from './paper.ts';

/** How far two tiles side by side show the same, mm. */
export const OVERLAP = 12;
/** What stands above and below the drawing on a tile, mm. */
export const HEAD = 12;
export const FOOT = 19;

/** More tiles than a person tapes together gladly: said before they are made. */
export const FEW_TILES = 12;
/** More sheets than these are not made at all: a plotter or a CAD program does that better. */
export const MOST_TILES = 60;

/** Why a piece is not put on sheets. not-flat: a plan of it is no pattern. no-shape: the readings do not fix it. no-outline: nothing to go round. */
export type TilesRefusal =
  | { readonly why: 'not-flat' | 'no-shape' | 'no-outline' }
  | { readonly why: 'too-many'; readonly count: number; readonly paper: Paper };

/** A registration mark: the same number and place on every tile that shows it. */
export interface TileMark {
  readonly number: number;
  readonly at: Flat;
}

/** One sheet of a drawing in real size: what it shows, mm on the piece. name: row as a letter from the top, column as a number. */
export interface Tile {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly left: number;
  readonly bottom: number;
  readonly marks: readonly TileMark[];
  /** The tiles beside it, by name; null where there is none, or where it would be empty. */
  readonly beside: Readonly<Record<'left' | 'right' | 'above' | 'below', string | null>>;
}

export interface Tiling {
  readonly paper: Paper;
  /** The sheet lies on its long side. */
  readonly lying: boolean;
  readonly rows: number;
  readonly columns: number;
  /** What each tile shows, mm. */
  readonly width: number;
  readonly height: number;
  /** From one mark to the next, mm. */
  readonly across: number;
  readonly up: number;
  /** In reading order; sheets on which nothing of the piece would be are left out. */
  readonly tiles: readonly Tile[];
}

export const sheetOf = (paper: Paper, lying: boolean): { width: number; height: number } => {
  const { width, height } = PAPERS[paper];
  return lying ? { width: height, height: width } : { width, height };
};

/**
 * Puts a closed line, and what lies in it, on sheets of paper in real size, upright or lying, whichever takes fewer. Tiles
 * overlap; in the middle of each overlap lie the lines on which the marks stand, and between the outermost of them lies the
 * whole piece. Null for a line of fewer than three corners.
 */
export function tilesOf(round: readonly Flat[], paper: Paper): Tiling | null {
  if (round.length < 3) return null;
  const upright = tiled(round, paper, false);
  const lying = tiled(round, paper, true);
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}

function tiled(round: readonly Flat[], paper: Paper, lying: boolean): Tiling {
  const sheet = sheetOf(paper, lying);
  const [width, height] = [sheet.width - 2 * EDGE, sheet.height - 2 * EDGE - HEAD - FOOT];
  const [across, up] = [width - OVERLAP, height - OVERLAP];
  const [xs, ys] = [round.map(([x]) => x), round.map(([, y]) => y)];
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const columns = Math.max(1, Math.ceil((right - left) / across));
  const rows = Math.max(1, Math.ceil((top - bottom) / up));
  // The piece lies in the middle of the lines.
  const from = (left + right - columns * across) / 2;
  const until = (bottom + top + rows * up) / 2;
  const line = (column: number, row: number): Flat => [from + column * across, until - row * up];
  const mark = (column: number, row: number): TileMark => ({
    number: row * (columns + 1) + column + 1,
    at: line(column, row),
  });
  const grid = Array.from({ length: rows * columns }, (_, i) => ({
    row: Math.floor(i / columns),
    column: i % columns,
  })).filter(({ row, column }) => touches(round, line(column, row + 1), line(column + 1, row)));
  const there = new Set(grid.map(({ row, column }) => tileName(row, column)));
  const named = (row: number, column: number): string | null => {
    const name = row < 0 || column < 0 ? '' : tileName(row, column);
    return there.has(name) ? name : null;
  };
  const tiles = grid.map(({ row, column }): Tile => {
    const [x, y] = line(column, row + 1);
    return {
      name: tileName(row, column),
      row,
      column,
      left: x - OVERLAP / 2,
      bottom: y - OVERLAP / 2,
      marks: [mark(column, row), mark(column + 1, row), mark(column, row + 1), mark(column + 1, row + 1)],
      beside: {
        left: named(row, column - 1),
        right: named(row, column + 1),
        above: named(row - 1, column),
        below: named(row + 1, column),
      },
    };
  });
  return { paper, lying, rows, columns, width, height, across, up, tiles };
}

const LETTERS = 26;

/** A1, A2, ... B1 ...; after Z come AA, AB. */
export function tileName(row: number, column: number): string {
  let letters = '';
  for (let rest = row; rest >= 0; rest = Math.floor(rest / LETTERS) - 1)
    letters = String.fromCharCode(65 + (rest % LETTERS)) + letters;
  return `${letters}${column + 1}`;
}

/** Whether a closed line, or what lies in it, reaches into a rectangle from its lower left to its upper right corner. */
function touches(round: readonly Flat[], [left, bottom]: Flat, [right, top]: Flat): boolean {
  if (insidePolygon([(left + right) / 2, (bottom + top) / 2], round)) return true;
  let from = round.at(-1);
  for (const to of round) {
    if (from && crosses(from, to, [left, bottom], [right, top])) return true;
    from = to;
  }
  return false;
}

/** Whether a straight line has any part in a rectangle: what is left of it after each side has cut (Liang and Barsky, 1984). */
function crosses(a: Flat, b: Flat, [left, bottom]: Flat, [right, top]: Flat): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [enter, leave] = [0, 1];
  for (const [towards, room] of [
    [-dx, a[0] - left],
    [dx, right - a[0]],
    [-dy, a[1] - bottom],
    [dy, top - a[1]],
  ] as const) {
    if (towards === 0) {
      if (room < 0) return false;
    } else if (towards < 0) enter = Math.max(enter, room / towards);
    else leave = Math.min(leave, room / towards);
  }
  return enter <= leave;
}
