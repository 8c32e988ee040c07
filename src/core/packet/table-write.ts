import { FACT_KINDS, type Sheet, type SheetReading, type Take } from '../job/index.ts';
import { type LengthUnit, parseLength } from '../length/index.ts';
import { angleCell, labelsText, positionCell } from './cells.ts';
import { writeCsv } from './csv.ts';
import { COLUMNS, type Column, EVERY_POINT } from './table-columns.ts';

type TableRow = Partial<Record<Column, string>>;

/**
 * The readings of a sheet as CSV, in the columns `readTable` reads: every take that counts, closed answers, open
 * readings, declared facts and sides. Struck takes, sizes, photos, fastener types and answers to questions have no column,
 * and a piece without readings has no row.
 * Values are written so that they read back the same whatever unit the reader takes for a bare number. A label that
 * two points share gets its piece's name behind it.
 */
export function writeTable(sheet: Sheet): string {
  const names = new Names(sheet);
  const rows: TableRow[] = [];
  for (const piece of sheet.pieces) {
    const name = names.piece(piece.id);
    const sides = sheet.points
      .filter((point) => point.sides.length > 0 && point.pieces[0] === piece.id)
      .map(
        (point): TableRow => ({
          kind: 'side',
          from: names.point(point.id),
          reading: point.sides.join(' '),
          piece: name,
        }),
      );
    const readings = sheet.readings
      .filter((reading) => reading.piece === piece.id && reading.kind !== 'size')
      .flatMap((reading) => rowsOf(reading, sheet, names));
    if (piece.flat && sides.length + readings.length > 0) rows.push({ kind: 'flat', from: EVERY_POINT, piece: name });
    rows.push(...sides, ...readings);
  }
  return writeCsv([COLUMNS, ...rows.map((row) => COLUMNS.map((column) => row[column] ?? ''))]);
}

function rowsOf(reading: SheetReading, sheet: Sheet, names: Names): TableRow[] {
  const common: TableRow = {
    kind: reading.kind,
    piece: names.piece(reading.piece),
    ...placesOf(reading, sheet, names),
  };
  if (reading.toward) common.direction = reading.toward;
  const takes = reading.takes.filter((take) => take.struck === null);
  const note = reading.note ?? '';
  if (takes.length === 0) {
    const { answer } = reading;
    const said = [note, answer?.reason ?? ''].filter((text) => text !== '');
    return [{ ...common, reading: answer?.answer ?? '', note: said.join(' / ').slice(0, 400) }];
  }
  return takes.map((take, index) => ({
    ...common,
    reading: valueText(take, reading, sheet),
    sigma: sigmaText(take),
    note: index === 0 ? note : '',
  }));
}

function placesOf(reading: SheetReading, sheet: Sheet, names: Names): TableRow {
  const labels = (ids: readonly string[] | undefined): string => labelsText((ids ?? []).map((id) => names.point(id)));
  const run = sheet.runs.find((candidate) => candidate.id === reading.run);
  const runPlace: TableRow = run ? { run: names.run(run.id) } : {};
  if (reading.kind === 'running' && run) {
    const place = run.stations.indexOf(reading.id);
    const before = run.manner === 'gaps' ? run.stations[place - 1] : undefined;
    const [from, to] = reading.points;
    return {
      ...runPlace,
      sequence: String(reading.sequence ?? place + 1),
      from: from ? names.point(from) : before ? names.station(before) : names.point(run.points[0] ?? ''),
      to: to ? names.point(to) : names.station(reading.id),
    };
  }
  const [from = '', ...others] = reading.points;
  const to = others.at(-1);
  const between = FACT_KINDS.has(reading.kind) ? others.slice(0, -1) : reading.via;
  const isWhole = run?.whole === reading.id;
  return {
    from: names.point(from),
    to: to ? names.point(to) : '',
    via: labels(between),
    baseline: labels(reading.baseline),
    ...(isWhole ? runPlace : {}),
  };
}

/** As typed where that reads back the same for any reader; else with its unit; else in millimetres. */
function valueText(take: Take, reading: SheetReading, sheet: Sheet): string {
  const { text, unit, value } = take;
  if (reading.kind === 'known')
    return positionText(text, sheet.points.find((point) => point.id === reading.points[0])?.nominal);
  if (unit === 'deg') {
    const read = angleCell(text);
    return read.ok && near(read.value, value) ? text : `${degrees(value)} deg`;
  }
  if (text === '' && value === 0) return text;
  return [text, `${text} ${unit}`, `${text}"`].find((candidate) => readsAs(candidate, value)) ?? `${exact(value)} mm`;
}

const UNITS: readonly LengthUnit[] = ['in', 'mm'];

function readsAs(text: string, value: number): boolean {
  // Bare figures beside a note of figures look like one number torn at its comma.
  if (/^\d+$/.test(text)) return false;
  return UNITS.every((unit) => {
    const parsed = parseLength(text, unit);
    return parsed.ok && near(parsed.mm, value);
  });
}

function positionText(text: string, nominal: readonly number[] | null | undefined): string {
  const read = positionCell(text, false);
  if (!nominal || (read.ok && read.position.every((part, axis) => near(part, nominal[axis] ?? Number.NaN))))
    return text;
  return `${nominal.map(exact).join(' ')} mm`;
}

const sigmaText = ({ sigma, unit }: Take): string =>
  sigma === null ? '' : unit === 'deg' ? `${degrees(sigma)} deg` : `${exact(sigma)} mm`;

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
const degrees = (radians: number): string => exact((radians * 180) / Math.PI);

/** A decimal number without an exponent, to a billionth. */
const exact = (value: number): string =>
  value
    .toFixed(9)
    .replace(/\.?0+$/, '')
    .replace(/^-0$/, '0');

/** Names that tell the things of a sheet apart in one flat table. */
class Names {
  readonly #pieces = new Map<string, string>();
  readonly #runs = new Map<string, string>();
  readonly #points = new Map<string, string>();
  readonly #stations = new Map<string, string>();

  constructor(sheet: Sheet) {
    const free = chooser();
    for (const piece of sheet.pieces) this.#pieces.set(piece.id, free(piece.name.trim() || 'piece', ''));
    const freeLabel = chooser(40);
    for (const point of sheet.points) {
      const piece = this.#pieces.get(point.pieces[0] ?? '') ?? '';
      this.#points.set(point.id, freeLabel(oneLabel(point.label), oneLabel(piece)));
    }
    const freeRun = chooser(64);
    for (const run of sheet.runs) {
      const name = freeRun(run.slot ?? 'run', '');
      this.#runs.set(run.id, name);
      for (const [index, station] of run.stations.entries())
        this.#stations.set(station, freeLabel(`${name}-${index + 1}`, ''));
    }
  }

  piece = (id: string): string => this.#pieces.get(id) ?? '';
  run = (id: string): string => this.#runs.get(id) ?? '';
  /** A point the sheet does not hold keeps the end of its id for a name. */
  point = (id: string): string => this.#points.get(id) ?? `?${id.slice(-12)}`;
  station = (id: string): string => this.#stations.get(id) ?? `?${id.slice(-12)}`;
}

/** The bar parts labels in a cell, a lone star means every point, and blanks at the ends are not kept. */
const oneLabel = (label: string): string => {
  const text = label.replaceAll('|', '¦').trim();
  return text === '' || text === EVERY_POINT ? `'${text}'` : text;
};

function chooser(longest = 400): (name: string, more: string) => string {
  const taken = new Set<string>();
  return (name, more) => {
    const fitting = (base: string, end: string): string => `${base.slice(0, longest - end.length)}${end}`;
    const named = more === '' ? name : fitting(name, ` (${more.slice(0, Math.floor(longest / 2))})`);
    let chosen = [fitting(name, ''), named].find((candidate) => !taken.has(candidate));
    for (let count = 2; chosen === undefined; count++) {
      const candidate = fitting(named, ` ${count}`);
      if (!taken.has(candidate)) chosen = candidate;
    }
    taken.add(chosen);
    return chosen;
  };
}
