import type { Entry, Who } from '../job/index.ts';
import { type CsvRecord, type Delimiter, parseCsv } from './csv.ts';
import { type Column, delimiterOf, NEEDED_COLUMNS, readHeadings } from './table-columns.ts';
import { entriesOf } from './table-entries.ts';
import { planJob } from './table-plan.ts';
import { type Row, type RowRefusal, type RowSettings, readRow } from './table-row.ts';

/** Far more rows than a boat has readings: beyond it a file is something else. */
const MOST_ROWS = 20_000;

/**
 * What a table does not say itself. name: the job's. piece: the name of the piece of rows that name none.
 * units: of a number without one. keepGood: take the rows that can be read even where others cannot.
 * newId, now: a new UUID and the present as ISO 8601, for the entries.
 */
export interface TableContext {
  name: string;
  piece: string;
  units: RowSettings['units'];
  who: Who;
  device: string;
  newId: () => string;
  now: () => string;
  keepGood: boolean;
}

interface Counts {
  /** Rows that were read, the refused ones included. */
  rows: number;
  refused: RowRefusal[];
  unknownColumns: string[];
}

export type TableReading =
  | ({ ok: true; entries: Entry[] } & Counts)
  | ({ ok: false; why: 'not-a-table' | 'empty' | 'too-long' | 'rows-refused'; missingColumns: Column[] } & Counts);

/**
 * A readings table as the logbook of a new job. Either every row is taken or none, unless `keepGood` asks for the
 * good ones; each refused row is listed with its line, so nothing is half-imported unseen. A pair measured twice
 * becomes two takes of one reading. Labels mean the same point in the whole table. Never throws on any text.
 */
export function readTable(text: string, context: TableContext): TableReading {
  const delimiter = delimiterOf(text);
  const [head, ...records] = parseCsv(text, delimiter);
  const { places, unknown: unknownColumns } = readHeadings(head?.cells ?? []);
  const missingColumns = NEEDED_COLUMNS.filter((column) => !places.has(column));
  const counts: Counts = { rows: records.length, refused: [], unknownColumns };
  if (missingColumns.length > 0) return { ok: false, why: 'not-a-table', missingColumns, ...counts };
  if (records.length === 0) return { ok: false, why: 'empty', missingColumns, ...counts };
  if (records.length > MOST_ROWS) return { ok: false, why: 'too-long', missingColumns, ...counts };
  const settings: RowSettings = { units: context.units, decimalComma: delimiter === ';' };
  const rows: Row[] = [];
  for (const record of records) {
    const read =
      recordFault(record, places, delimiter, head?.cells.length ?? 0) ??
      readRow(record.line, cellsOf(record, places), settings);
    if ('code' in read) counts.refused.push(read);
    else rows.push(read);
  }
  const { plan, refused } = planJob(rows, context);
  counts.refused.push(...refused);
  counts.refused.sort((a, b) => a.line - b.line);
  if (counts.refused.length > 0 && !context.keepGood)
    return { ok: false, why: 'rows-refused', missingColumns, ...counts };
  if (plan.pieces.length === 0) return { ok: false, why: 'empty', missingColumns, ...counts };
  return { ok: true, entries: entriesOf(plan, context), ...counts };
}

const cellsOf =
  (record: CsvRecord, places: ReadonlyMap<Column, number>) =>
  (column: Column): string =>
    record.cells[places.get(column) ?? -1] ?? '';

function recordFault(
  record: CsvRecord,
  places: ReadonlyMap<Column, number>,
  delimiter: Delimiter,
  width: number,
): RowRefusal | null {
  const { line, cells } = record;
  if (record.fault) return { line, code: record.fault };
  const spare = cells.slice(width).some((cell) => cell !== '');
  // `3,755` in a table parted by commas falls into two cells; taking the 3 would lose a reading unseen.
  const at = places.get('reading') ?? -1;
  const next = places.get('note') === at + 1 ? cells[at + 1] : undefined;
  const torn =
    delimiter === ',' &&
    /^[+-]?\d+$/.test(cells[at] ?? '') &&
    /^\d{1,3}(?:\s*(?:mm|cm|m|in|ft|'|"))?$/.test(next ?? '');
  if (torn) return { line, code: 'comma-in-number', column: 'reading', understood: `${cells[at]},${next}` };
  return spare ? { line, code: 'too-many-cells' } : null;
}
