import type { RunManner } from '../job/index.ts';
import type { Row, RowRefusal } from './table-row.ts';

/** One run as its rows tell it. labels: its points in order. manner: null where only the whole was measured. */
export interface RunLine {
  rows: Row[];
  labels: string[];
  manner: RunManner | null;
}

export interface Lines {
  /** The runs of a piece by name. */
  of(piece: string): ReadonlyMap<string, RunLine>;
}

/**
 * Sorts the rows of each run and reads off how it was measured: all from one point is cumulative, each from where
 * the one before ended is gap to gap. A row that fits neither is refused.
 */
export function planRuns(rows: readonly Row[]): { lines: Lines; kept: Row[]; refused: RowRefusal[] } {
  const named = new Map<string, Map<string, Row[]>>();
  for (const row of rows) {
    if (row.run === null) continue;
    const runs = named.get(row.piece) ?? new Map<string, Row[]>();
    named.set(row.piece, runs);
    const list = runs.get(row.run);
    if (list) list.push(row);
    else runs.set(row.run, [row]);
  }
  const refused: RowRefusal[] = [];
  const lines = new Map<string, Map<string, RunLine>>();
  for (const [piece, runs] of named)
    lines.set(piece, new Map([...runs].map(([name, own]) => [name, lineOf(own, refused)])));
  const bad = new Set(refused.map((refusal) => refusal.line));
  const none: ReadonlyMap<string, RunLine> = new Map();
  return {
    lines: { of: (piece) => lines.get(piece) ?? none },
    kept: rows.filter((row) => !bad.has(row.line)),
    refused,
  };
}

function lineOf(rows: readonly Row[], refused: RowRefusal[]): RunLine {
  const order = new Map(rows.map((row, index) => [row, row.sequence ?? index + 1]));
  const running = rows
    .filter((row) => row.kind === 'running')
    .toSorted((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0));
  const stations = running.filter((row, index) => !isRepeat(row, running.slice(0, index)));
  const wholes = rows.filter((row) => row.kind !== 'running');
  const start = stations[0]?.points[0] ?? wholes[0]?.points[0] ?? '';
  const cumulative = stations.length < 2 || stations[1]?.points[0] === start;
  const labels = [start];
  const kept: Row[] = [];
  for (const row of running) {
    const [from, to = ''] = row.points;
    const expected = cumulative ? start : labels.at(-1);
    if (isRepeat(row, kept)) kept.push(row);
    else if (from === expected && !labels.includes(to)) {
      kept.push(row);
      labels.push(to);
    } else refused.push({ line: row.line, code: 'run-out-of-line', column: 'from', understood: expected ?? '' });
  }
  const ends = wholes[0]?.points ?? [];
  for (const whole of wholes) {
    if (ends.every((label) => whole.points.includes(label))) kept.push(whole);
    else refused.push({ line: whole.line, code: 'run-whole-twice', column: 'run' });
  }
  const manner = stations.length === 0 ? null : cumulative ? 'cumulative' : 'gaps';
  return { rows: kept, labels: [...new Set([...labels, ...ends])], manner };
}

const isRepeat = (row: Row, others: readonly Row[]): boolean =>
  others.some((other) => other.points[0] === row.points[0] && other.points[1] === row.points[1]);
