import type { Sheet, SheetReading, SheetRun } from '../job/index.ts';
import { neighbours, straightBetween, walkOrder } from './amend/walk.ts';

/** What one column of a table is: tapes from one mark, one sort of reading over one baseline, gaps, or places along an edge. */
export type TableColumn =
  | { readonly of: 'mark'; readonly point: string }
  | { readonly of: 'kind'; readonly kind: 'along' | 'out' | 'height' | 'girth'; readonly toward: string | null }
  | { readonly of: 'gap' }
  | { readonly of: 'running'; readonly from: string };

/** A reading in a table; order: its place in the walk, by which a person goes along its column. */
export interface TableCell {
  readonly row: string;
  readonly column: number;
  readonly reading: SheetReading;
}

/**
 * Readings of one piece that are taken in a row: one hook, many points. rows: points, as they lie along the boat. cells: in the
 * order they are taken: column by column, each in the order of the walk. key: good while the job is open.
 */
export interface Table {
  readonly key: string;
  readonly of: 'marks' | 'stations' | 'gaps' | 'running';
  readonly rows: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly cells: readonly TableCell[];
  /** The string or plane of stations; the edge of gaps and of running dimensions. */
  readonly baseline: readonly string[];
  readonly run: string | null;
}

/** Fewer rows than this are sooner done step by step. */
const LEAST_ROWS = 3;

/** The tables that fit the readings of a piece, in walking order. A reading is in one of them at most. */
export function tablesOf(sheet: Sheet, pieceId: string): Table[] {
  const rank = walkOrder(sheet, pieceId);
  const readings = sheet.readings.filter(({ piece }) => piece === pieceId).sort((a, b) => rank(a) - rank(b));
  const marks = fromMarks(sheet, readings);
  const taken = new Set(marks.flatMap(({ cells }) => cells.map(({ reading }) => reading.id)));
  const tables = [
    ...marks,
    ...atStations(sheet, readings),
    ...alongEdges(
      sheet,
      readings.filter(({ id }) => !taken.has(id)),
      pieceId,
    ),
  ];
  const first = ({ cells }: Table): number => Math.min(...cells.map(({ reading }) => rank(reading)));
  return tables.sort((a, b) => first(a) - first(b));
}

export const tableOf = (tables: readonly Table[], reading: string): Table | undefined =>
  tables.find(({ cells }) => cells.some((cell) => cell.reading.id === reading));

const isPair = ({ kind, points }: SheetReading): boolean => kind === 'straight' && points.length === 2;

/** Points that many tapes are hooked on: marks, and whatever else three tapes or more begin at. */
function hooks(sheet: Sheet, readings: readonly SheetReading[]): ReadonlySet<string> {
  const counts = new Map<string, number>();
  for (const reading of readings)
    if (isPair(reading))
      for (const [end, id] of reading.points.entries()) if (end === 0) counts.set(id, (counts.get(id) ?? 0) + 1);
  const marks = sheet.points.filter(({ role }) => role === 'mark').map(({ id }) => id);
  return new Set([...marks, ...[...counts].flatMap(([id, count]) => (count >= LEAST_ROWS ? [id] : []))]);
}

/** Two marks or more to many points: a table for each group of marks that share points. */
function fromMarks(sheet: Sheet, readings: readonly SheetReading[]): Table[] {
  const from = hooks(sheet, readings);
  const tapes = readings.flatMap((reading) => {
    const [a = '', b = ''] = reading.points;
    if (!isPair(reading) || from.has(a) === from.has(b)) return [];
    return [from.has(a) ? { mark: a, row: b, reading } : { mark: b, row: a, reading }];
  });
  const groups: (typeof tapes)[] = [];
  for (const tape of tapes) {
    const near = groups.filter((group) => group.some(({ mark, row }) => mark === tape.mark || row === tape.row));
    for (const group of near) groups.splice(groups.indexOf(group), 1);
    groups.push([...near.flat(), tape]);
  }
  return groups.flatMap((group, i) => {
    const inWalk = tapes.filter((tape) => group.includes(tape));
    const columns = [...new Set(inWalk.map(({ mark }) => mark))];
    const rows = alongTheBoat(sheet, [...new Set(inWalk.map(({ row }) => row))]);
    if (columns.length < 2 || rows.length < LEAST_ROWS) return [];
    const cells = inWalk.map(({ mark, row, reading }) => ({ row, column: columns.indexOf(mark), reading }));
    return [
      {
        ...byColumn(cells),
        key: i === 0 ? 'marks' : `marks-${i + 1}`,
        of: 'marks' as const,
        rows,
        columns: columns.map((point) => ({ of: 'mark' as const, point })),
        baseline: [],
        run: null,
      },
    ];
  });
}

/** Points in the order of the edges they lie on; those on none come last, as they were. */
function alongTheBoat(sheet: Sheet, points: readonly string[]): string[] {
  const order = new Map<string, number>();
  for (const run of sheet.runs) for (const point of run.points) if (!order.has(point)) order.set(point, order.size);
  const place = (point: string): number => order.get(point) ?? order.size;
  return [...points].sort((a, b) => place(a) - place(b));
}

const byColumn = (cells: readonly TableCell[]): Pick<Table, 'cells'> => ({
  cells: [...cells].sort((a, b) => a.column - b.column),
});

const OVER_A_LINE = ['along', 'out', 'height'] as const;
type OverALine = (typeof OVER_A_LINE)[number];
const isOverALine = (kind: SheetReading['kind']): kind is OverALine =>
  (OVER_A_LINE as readonly string[]).includes(kind);

/** Stations, offsets and heights of many points over one string or plane, and girths that begin or end at those points. */
function atStations(sheet: Sheet, readings: readonly SheetReading[]): Table[] {
  const byLine = new Map<string, SheetReading[]>();
  for (const reading of readings) {
    if (!isOverALine(reading.kind) || reading.points.length !== 1 || !reading.baseline) continue;
    const line = reading.baseline.join();
    byLine.set(line, [...(byLine.get(line) ?? []), reading]);
  }
  const tables: Table[] = [];
  for (const [line, over] of byLine) {
    const rows = [...new Set(over.flatMap(({ points }) => points))];
    if (rows.length < LEAST_ROWS) continue;
    const all = [...over, ...girthsAt(sheet, readings, rows)];
    const heads = columnsOver(all);
    const cells = all.map((reading) => ({
      row: reading.points.find((point) => rows.includes(point)) ?? '',
      column: heads.findIndex(({ key }) => key === headOf(reading)),
      reading,
    }));
    tables.push({
      ...byColumn(cells),
      key: tables.length === 0 ? 'stations' : `stations-${tables.length + 1}`,
      of: 'stations',
      rows,
      columns: heads.map(({ column }) => column),
      baseline: line.split(','),
      run: null,
    });
  }
  return tables;
}

const headOf = ({ kind, toward }: SheetReading): string => `${kind} ${toward ?? ''}`;

/** Station first, then offset, height, girth; an offset to port and one to starboard are two columns. */
function columnsOver(readings: readonly SheetReading[]): { key: string; column: TableColumn }[] {
  const heads = new Map<string, TableColumn>();
  for (const kind of [...OVER_A_LINE, 'girth'] as const)
    for (const reading of readings)
      if (reading.kind === kind) heads.set(headOf(reading), { of: 'kind', kind, toward: reading.toward ?? null });
  return [...heads].map(([key, column]) => ({ key, column }));
}

/** One girth at most for each of the rows; the whole of an edge is no girth at a station. */
function girthsAt(sheet: Sheet, readings: readonly SheetReading[], rows: readonly string[]): SheetReading[] {
  const wholes = new Set(sheet.runs.map(({ whole }) => whole));
  const found = new Map<string, SheetReading>();
  for (const reading of readings) {
    const row = reading.points.find((point) => rows.includes(point));
    if (reading.kind === 'girth' && !wholes.has(reading.id) && row !== undefined && !found.has(row))
      found.set(row, reading);
  }
  return found.size >= LEAST_ROWS ? [...found.values()] : [];
}

/** Gap to gap along an edge, and places from one end of it. */
function alongEdges(sheet: Sheet, readings: readonly SheetReading[], pieceId: string): Table[] {
  return sheet.runs.flatMap((run) => {
    if (run.piece !== pieceId) return [];
    const gaps = neighbours(run.points).flatMap(([before, row]): TableCell[] => {
      const reading = straightBetween(sheet, pieceId, before, row);
      return reading && readings.includes(reading) ? [{ row, column: 0, reading }] : [];
    });
    const places = readings.flatMap((reading): TableCell[] => {
      const row = reading.points.at(-1);
      const isPlace = reading.kind === 'running' && reading.run === run.id && reading.points.length > 1;
      return isPlace && row !== undefined ? [{ row, column: 0, reading }] : [];
    });
    gaps.sort((a, b) => readings.indexOf(a.reading) - readings.indexOf(b.reading));
    return [
      ...ofEdge(run, 'gaps', { of: 'gap' }, gaps),
      ...ofEdge(run, 'running', { of: 'running', from: run.points[0] ?? '' }, places),
    ];
  });
}

function ofEdge(run: SheetRun, of: 'gaps' | 'running', column: TableColumn, cells: readonly TableCell[]): Table[] {
  if (cells.length < LEAST_ROWS) return [];
  const rows = run.points.filter((row) => cells.some((cell) => cell.row === row));
  return [{ key: `${of}-${run.slot ?? run.id}`, of, rows, columns: [column], cells, baseline: [], run: run.id }];
}

/** Which way a column is walked: down the rows, up, or neither. */
export function wayOf(table: Table, column: number): 'down' | 'up' | null {
  const places = table.cells.filter((cell) => cell.column === column).map(({ row }) => table.rows.indexOf(row));
  const steps = places.slice(1).map((place, i) => place - (places[i] ?? 0));
  if (steps.length === 0) return null;
  if (steps.every((step) => step > 0)) return 'down';
  return steps.every((step) => step < 0) ? 'up' : null;
}

/** The next of the table's readings that still wants something, after this one; then from the start; null when none. */
export function nextInTable(
  table: Table,
  from: string | null,
  wants: (reading: SheetReading) => boolean,
): string | null {
  const ids = table.cells.map(({ reading }) => reading.id);
  const at = from === null ? -1 : ids.indexOf(from);
  const order = [...table.cells.slice(at + 1), ...table.cells.slice(0, at + 1)];
  return order.find(({ reading }) => reading.id !== from && wants(reading))?.reading.id ?? null;
}
