import { NoValue, Side, type TakeUnit } from '../job/index.ts';
import type { LengthUnit } from '../length/index.ts';
import { angleCell, type CellValue, labelsCell, lengthCell, type Measure, positionCell, sidesCell } from './cells.ts';
import { type Column, EVERY_POINT, isRowKind, type RowKind, SHAPES } from './table-columns.ts';

/** Why a row was not taken. understood: the part that made sense. why: the length's own refusal, where it is one. */
export interface RowRefusal {
  line: number;
  code: RowFault;
  column?: Column;
  understood?: string;
  why?: string;
}

export type RowFault =
  | 'unknown-kind'
  | 'missing-cell'
  | 'column-not-used'
  | 'unreadable-cell'
  | 'text-too-long'
  | 'same-point-twice'
  | 'star-needs-flat'
  | 'comma-in-number'
  | 'too-many-cells'
  | 'text-after-quote'
  | 'open-quote'
  | 'known-twice'
  | 'sides-contradict'
  | 'run-out-of-line'
  | 'run-whole-twice';

export type RowValue =
  | { state: 'open' }
  | { state: 'answer'; answer: NoValue }
  | { state: 'taken'; text: string; unit: TakeUnit; value: number };

/** A row that was understood. points: labels in the order of the reading's own `points`. */
export interface Row {
  line: number;
  kind: RowKind;
  everyPoint: boolean;
  /** '' where the row names none. */
  piece: string;
  points: string[];
  via: string[];
  baseline: string[];
  run: string | null;
  sequence: number | null;
  toward: Side | null;
  value: RowValue;
  position: [number, number, number] | null;
  sides: Side[];
  sigma: number | null;
  note: string;
}

export interface RowSettings {
  units: Extract<LengthUnit, 'in' | 'mm'>;
  decimalComma: boolean;
}

type Cells = (column: Column) => string;
const LIMITS: Partial<Record<Column, number>> = { from: 40, to: 40, reading: 400, note: 400, piece: 400, run: 64 };

/** Thrown inside this file only: the first fault of a row ends its reading. */
class Fault {
  constructor(readonly refusal: Omit<RowRefusal, 'line'>) {}
}
const fault = (code: RowFault, column?: Column, more: Omit<RowRefusal, 'line' | 'code' | 'column'> = {}): Fault =>
  new Fault({ code, ...(column ? { column } : {}), ...more });

/** Reads one row of a table; says why where it cannot. */
export function readRow(line: number, cell: Cells, settings: RowSettings): Row | RowRefusal {
  try {
    return understood(line, cell, settings);
  } catch (thrown) {
    if (thrown instanceof Fault) return { line, ...thrown.refusal };
    throw thrown;
  }
}

function understood(line: number, cell: Cells, settings: RowSettings): Row {
  const kind = cell('kind').toLowerCase();
  if (!isRowKind(kind)) throw fault('unknown-kind', 'kind');
  for (const [column, limit] of Object.entries(LIMITS) as [Column, number][])
    if (cell(column).length > limit) throw fault('text-too-long', column);
  const everyPoint = cell('from') === EVERY_POINT;
  if (everyPoint && kind !== 'flat') throw fault('star-needs-flat', 'from');
  checkColumns(kind, everyPoint, cell);
  return {
    line,
    kind,
    everyPoint,
    piece: cell('piece'),
    ...labelsOf(kind, everyPoint, cell),
    run: cell('run') || null,
    sequence: sequenceOf(cell('sequence')),
    toward: towardOf(cell('direction')),
    ...rowValue(kind, everyPoint, cell, settings),
    sigma: sigmaOf(kind, cell('sigma'), settings),
    note: cell('note'),
  };
}

function checkColumns(kind: RowKind, everyPoint: boolean, cell: Cells): void {
  const { to, uses, needs } = SHAPES[kind];
  const needed: Column[] = everyPoint ? ['from'] : ['from', ...(to ? (['to'] as const) : []), ...needs];
  for (const column of needed) if (cell(column) === '') throw fault('missing-cell', column);
  const used = everyPoint ? ['from'] : [...needed, ...uses];
  for (const column of ['to', 'via', 'baseline', 'run', 'sequence', 'direction'] as const)
    if (cell(column) !== '' && !used.includes(column)) throw fault('column-not-used', column);
}

function labelsOf(kind: RowKind, everyPoint: boolean, cell: Cells): Pick<Row, 'points' | 'via' | 'baseline'> {
  const via = labelsCell(cell('via'));
  const baseline = labelsCell(cell('baseline'));
  const ends = everyPoint ? [] : [cell('from'), cell('to')].filter((label) => label !== '');
  for (const [column, labels] of [
    ['via', [...ends, ...via]],
    ['baseline', baseline],
  ] as const) {
    if (new Set(labels).size < labels.length) throw fault('same-point-twice', column === 'via' ? 'to' : column);
    if (labels.some((label) => label.length > 40)) throw fault('text-too-long', column);
  }
  if (SHAPES[kind].needs.includes('baseline') && baseline.length !== 2) throw fault('missing-cell', 'baseline');
  // A girth keeps the points it passes apart from its ends; a fact is about all of its points alike.
  const [from, to] = ends;
  if (kind === 'girth' || from === undefined || to === undefined) return { points: ends, via, baseline };
  return { points: [from, ...via, to], via: [], baseline };
}

function sequenceOf(text: string): number | null {
  if (text === '') return null;
  if (!/^-?\d{1,6}$/.test(text)) throw fault('unreadable-cell', 'sequence');
  return Number(text);
}

function towardOf(text: string): Side | null {
  if (text === '') return null;
  const parsed = Side.safeParse(text.toLowerCase());
  if (!parsed.success) throw fault('unreadable-cell', 'direction');
  return parsed.data;
}

function sigmaOf(kind: RowKind, text: string, settings: RowSettings): number | null {
  if (text === '') return null;
  const { value } = read('sigma', measure(kind, text, settings));
  if (!(value > 0)) throw fault('unreadable-cell', 'sigma');
  return value;
}

function rowValue(kind: RowKind, everyPoint: boolean, cell: Cells, settings: RowSettings) {
  const text = cell('reading');
  const empty: Pick<Row, 'value' | 'position' | 'sides'> = { value: { state: 'open' }, position: null, sides: [] };
  if (everyPoint) {
    if (text !== '') throw fault('column-not-used', 'reading');
    return empty;
  }
  const answer = NoValue.safeParse(text.toLowerCase().replace(/\s+/g, '-'));
  const { form } = SHAPES[kind];
  if (answer.success && form !== 'sides') return { ...empty, value: { state: 'answer', answer: answer.data } as const };
  if (text === '' && (form === 'position' || form === 'sides')) throw fault('missing-cell', 'reading');
  if (form === 'sides') return { ...empty, sides: read('reading', sidesCell(text)).sides };
  if (form === 'position') {
    const { position } = read('reading', positionCell(text, settings.decimalComma));
    return { ...empty, position, value: { state: 'taken', text, unit: 'm', value: 0 } as const };
  }
  // A declared fact needs no number: it says that a difference is nought.
  if (text === '')
    return form === 'fact' ? { ...empty, value: { state: 'taken', text, unit: 'mm', value: 0 } as const } : empty;
  const { value, unit } = read('reading', measure(kind, text, settings));
  return { ...empty, value: { state: 'taken', text, unit, value } as const };
}

const measure = (kind: RowKind, text: string, { units, decimalComma }: RowSettings): CellValue<Measure> =>
  SHAPES[kind].form === 'angle' ? angleCell(text) : lengthCell(text, units, decimalComma);

function read<T>(column: Column, result: CellValue<T>): T {
  if (!result.ok) throw fault('unreadable-cell', column, { why: result.why, understood: result.understood });
  return result;
}
