/** One record. line: where it begins in the file, from 1. fault: why its cells are not to be trusted. */
export interface CsvRecord {
  line: number;
  cells: string[];
  fault: 'text-after-quote' | 'open-quote' | null;
}

export type Delimiter = ',' | ';' | '\t';

const START = /^'*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;
const PLAIN_NUMBER = /^[+-]?\d+(?:\.\d+)?$/;

/**
 * Records of a CSV text (RFC 4180, any line ending, blank lines passed over). A quote inside an unquoted cell is
 * kept as it stands: inches are written with one. Never throws; a record that breaks the quoting carries its fault.
 */
export function parseCsv(text: string, delimiter: Delimiter): CsvRecord[] {
  const records: CsvRecord[] = [];
  const end = text.length;
  let at = text.startsWith('\ufeff') ? 1 : 0;
  let line = 1;
  while (at < end) {
    const record: CsvRecord = { line, cells: [], fault: null };
    for (let more = true; more; ) {
      const cell = readCell(text, at, delimiter);
      record.cells.push(cell.text);
      record.fault ??= cell.fault;
      line += cell.lines;
      more = text[cell.next] === delimiter;
      at = cell.next + (more ? 1 : 0);
    }
    if (text[at] === '\r' && text[at + 1] === '\n') at += 1;
    at += 1;
    line += 1;
    if (record.cells.some((cell) => cell !== '')) records.push(record);
  }
  return records;
}

interface Cell {
  text: string;
  /** Index of the delimiter or line end after the cell. */
  next: number;
  /** Line ends inside the cell. */
  lines: number;
  fault: CsvRecord['fault'];
}

function readCell(text: string, from: number, delimiter: Delimiter): Cell {
  if (text[from] !== '"') {
    const next = endOfCell(text, from, delimiter);
    return { text: bare(text.slice(from, next)), next, lines: 0, fault: null };
  }
  let content = '';
  let at = from + 1;
  for (;;) {
    const quote = text.indexOf('"', at);
    if (quote < 0) return { text: content + text.slice(at), next: text.length, lines: 0, fault: 'open-quote' };
    content += text.slice(at, quote);
    at = quote + 1;
    if (text[at] !== '"') break;
    content += '"';
    at += 1;
  }
  const next = endOfCell(text, at, delimiter);
  const fault = text.slice(at, next).trim() === '' ? null : 'text-after-quote';
  return { text: bare(content), next, lines: content.match(/\r\n|\r|\n/g)?.length ?? 0, fault };
}

function endOfCell(text: string, from: number, delimiter: Delimiter): number {
  let at = from;
  while (at < text.length && text[at] !== delimiter && text[at] !== '\n' && text[at] !== '\r') at += 1;
  return at;
}

/** Without the blanks around it and without the apostrophe that `writeCsv` puts before what looks like a formula. */
function bare(cell: string): string {
  const trimmed = cell.trim();
  return trimmed.startsWith("'") && START.test(trimmed) ? trimmed.slice(1) : trimmed;
}

/**
 * A CSV text (RFC 4180, CR LF, comma). Cells that a spreadsheet would take for a formula get a leading apostrophe,
 * numbers excepted; `parseCsv` takes it off again.
 */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => `${cells.map(written).join(',')}\r\n`).join('');
}

function written(cell: string): string {
  const safe = START.test(cell) && !PLAIN_NUMBER.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}
