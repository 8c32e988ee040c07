import type { ReadingKind } from '../job/index.ts';
import { type Delimiter, parseCsv } from './csv.ts';

/** The columns of a readings table; their order in a file is free. */
export const COLUMNS = [
  'kind',
  'from',
  'to',
  'reading',
  'note',
  'piece',
  'via',
  'baseline',
  'run',
  'sequence',
  'sigma',
  'direction',
] as const;
export type Column = (typeof COLUMNS)[number];

/** Without these a file is not a readings table. */
export const NEEDED_COLUMNS: readonly Column[] = ['kind', 'from', 'reading'];

/** A row's kind: a reading kind, or `side`, which says on which side a point lies. */
/** A size has no row: there is no column for what it is of. */
export type RowKind = Exclude<ReadingKind, 'size'> | 'side';

/** What stands in the reading cell of a kind. */
export type CellForm = 'length' | 'angle' | 'fact' | 'position' | 'sides';

/** Which columns a kind takes besides kind, reading, note, piece and sigma. `from` is always one point. */
export interface RowShape {
  form: CellForm;
  to: boolean;
  uses: readonly Column[];
  needs: readonly Column[];
}

const shape = (form: CellForm, to: boolean, uses: readonly Column[] = [], needs: readonly Column[] = []): RowShape => ({
  form,
  to,
  uses: [...uses, ...needs],
  needs,
});

export const SHAPES: Readonly<Record<RowKind, RowShape>> = {
  straight: shape('length', true, ['run']),
  girth: shape('length', true, ['via', 'run']),
  height: shape('length', false, ['baseline', 'direction']),
  along: shape('length', false, [], ['baseline']),
  out: shape('length', false, ['direction'], ['baseline']),
  running: shape('length', true, ['sequence'], ['run']),
  lean: shape('angle', false, ['baseline', 'direction']),
  centre: shape('fact', false),
  mirror: shape('fact', true),
  level: shape('fact', true, ['via']),
  plumb: shape('fact', true),
  flat: shape('fact', true, ['via']),
  known: shape('position', false),
  side: shape('sides', false),
};

export const isRowKind = (word: string): word is RowKind => Object.hasOwn(SHAPES, word);

/** In the `from` cell of a `flat` row: every point of the piece, or of the table when no piece is named. */
export const EVERY_POINT = '*';

const isColumn = (name: string): name is Column => (COLUMNS as readonly string[]).includes(name);
const headings = (text: string, delimiter: Delimiter): string[] =>
  (parseCsv(text.slice(0, 4000), delimiter)[0]?.cells ?? []).map((cell) => cell.toLowerCase());

/** The delimiter under which most headings of the first line are known. */
export function delimiterOf(text: string): Delimiter {
  const known = (delimiter: Delimiter): number => headings(text, delimiter).filter(isColumn).length;
  const [best] = ([',', ';', '\t'] as const).toSorted((a, b) => known(b) - known(a));
  return best ?? ',';
}

/** Where each column stands, and the headings that mean nothing here. A heading twice counts the first time. */
export function readHeadings(cells: readonly string[]): { places: ReadonlyMap<Column, number>; unknown: string[] } {
  const places = new Map<Column, number>();
  const unknown: string[] = [];
  for (const [place, cell] of cells.entries()) {
    const name = cell.toLowerCase();
    if (isColumn(name) && !places.has(name)) places.set(name, place);
    else if (cell !== '') unknown.push(cell);
  }
  return { places, unknown };
}

/** Whether a text is a readings table, told by its first line and not by a file's name. */
export function looksLikeTable(text: string): boolean {
  const found = headings(text, delimiterOf(text));
  return NEEDED_COLUMNS.every((column) => found.includes(column));
}
