import type { PieceDeclaration, PointDeclaration, ReadingDeclaration, ReadingKind, RunManner } from '../job/index.ts';
import { FACT_KINDS, type Side, Slot } from '../job/index.ts';
import type { Row, RowRefusal, RowValue } from './table-row.ts';
import { type Lines, planRuns } from './table-runs.ts';

/** What is known of one reading after all of its rows. */
export interface PlannedReading {
  declaration: ReadingDeclaration;
  values: { value: RowValue; sigma: number | null; note: string }[];
}

/** A job as a table tells it, before it becomes entries. */
export interface Plan {
  pieces: PieceDeclaration[];
  readings: PlannedReading[];
  manners: { run: string; manner: RunManner }[];
}

interface Draft {
  name: string;
  points: Set<string>;
  readings: Map<string, PlannedReading>;
  rows: Row[];
  flat: boolean;
  pairs: Map<string, [string, string]>;
}

const SYMMETRIC: ReadonlySet<ReadingKind> = new Set(['straight', 'mirror', 'level', 'plumb', 'flat']);
const OPPOSITE: readonly (readonly [Side, Side])[] = [
  ['port', 'starboard'],
  ['port', 'centre'],
  ['starboard', 'centre'],
  ['forward', 'aft'],
  ['above', 'below'],
];

/** Gathers rows into pieces, points, readings and runs; rows that contradict others are refused by line. */
export function planJob(
  rows: readonly Row[],
  { piece, newId }: { piece: string; newId: () => string },
): { plan: Plan; refused: RowRefusal[] } {
  const { points, kept, refused } = planPoints(placed(rows, piece), newId);
  const runs = planRuns(kept);
  refused.push(...runs.refused);
  const drafts = new Map<string, Draft>();
  for (const row of runs.kept) if (!row.everyPoint) addRow(draftOf(drafts, row.piece), row, points, newId);
  for (const row of runs.kept)
    if (row.everyPoint)
      for (const draft of drafts.values()) draft.flat ||= row.piece === '' || row.piece === draft.name;
  const manners: Plan['manners'] = [];
  const pieces = [...drafts.values()].map((draft) => declare(draft, points, runs.lines, manners, newId));
  return {
    plan: { pieces, readings: [...drafts.values()].flatMap((draft) => [...draft.readings.values()]), manners },
    refused,
  };
}

/** Rows with their piece. What is said of a point alone belongs where the point is measured. */
function placed(rows: readonly Row[], usual: string): Row[] {
  const aboutPoint = (row: Row): boolean => row.kind === 'side' || row.kind === 'known';
  const owners = new Map<string, string>();
  for (const row of rows.filter((one) => !aboutPoint(one)))
    for (const label of [...row.points, ...row.via, ...row.baseline])
      if (!owners.has(label)) owners.set(label, row.piece || usual);
  return rows.map((row) => {
    if (row.piece !== '' || row.everyPoint) return row;
    const owner = aboutPoint(row) ? owners.get(row.points[0] ?? '') : undefined;
    return { ...row, piece: owner ?? usual };
  });
}

function draftOf(drafts: Map<string, Draft>, name: string): Draft {
  const known = drafts.get(name);
  if (known) return known;
  const draft: Draft = { name, points: new Set(), readings: new Map(), rows: [], flat: false, pairs: new Map() };
  drafts.set(name, draft);
  return draft;
}

function planPoints(rows: readonly Row[], newId: () => string) {
  const points = new Map<string, PointDeclaration>();
  const refused: RowRefusal[] = [];
  const kept: Row[] = [];
  for (const row of rows) {
    const first = points.get(row.points[0] ?? '');
    const sides = new Set([...(first?.sides ?? []), ...row.sides]);
    if (row.position && first?.nominal) refused.push({ line: row.line, code: 'known-twice', column: 'from' });
    else if (row.kind === 'side' && OPPOSITE.some((pair) => pair.every((side) => sides.has(side))))
      refused.push({ line: row.line, code: 'sides-contradict', column: 'reading' });
    else {
      kept.push(row);
      for (const label of [...row.points, ...row.via, ...row.baseline])
        if (!points.has(label))
          points.set(label, { id: newId(), label, slot: null, role: 'edge', sides: [], nominal: null });
      const point = points.get(row.points[0] ?? '');
      if (point && row.position) Object.assign(point, { nominal: row.position, role: 'mark' });
      if (point && row.sides.length > 0) point.sides = [...sides];
      for (const label of row.baseline) Object.assign(points.get(label) ?? {}, { role: 'mark' });
    }
  }
  return { points, kept, refused };
}

function addRow(draft: Draft, row: Row, points: ReadonlyMap<string, PointDeclaration>, newId: () => string): void {
  draft.rows.push(row);
  for (const label of [...row.points, ...row.via, ...row.baseline]) draft.points.add(label);
  const { kind, value, sigma, note } = row;
  if (kind === 'side') return;
  const key = keyOf(kind, row);
  const known = draft.readings.get(key);
  if (known) {
    known.values.push({ value, sigma, note });
    return;
  }
  const ids = (labels: readonly string[]): string[] => labels.map((label) => points.get(label)?.id ?? '');
  const declaration: ReadingDeclaration = {
    id: newId(),
    slot: null,
    kind,
    points: ids(row.points),
    ...(row.via.length > 0 ? { via: ids(row.via) } : {}),
    ...(row.baseline.length > 0 ? { baseline: ids(row.baseline) } : {}),
    ...(row.toward ? { toward: row.toward } : {}),
    needed: !FACT_KINDS.has(kind),
  };
  draft.readings.set(key, { declaration, values: [{ value, sigma, note }] });
  const [port, starboard] = declaration.points;
  if (kind === 'mirror' && port && starboard) draft.pairs.set(key, [port, starboard]);
}

/** Rows with one key are takes of one reading: the way round a pair is written makes no difference. */
function keyOf(kind: ReadingKind, row: Row): string {
  const backwards = [row.points, row.via].map((labels) => labels.toReversed());
  const forwards = [row.points, row.via];
  const ways = SYMMETRIC.has(kind) || kind === 'girth' ? [forwards, backwards] : [forwards];
  const [way] = ways.map((labels) => JSON.stringify(labels)).toSorted();
  // The whole of a run is the same reading whether or not a row says so; a station belongs to its run.
  return JSON.stringify([kind, way, row.baseline, kind === 'running' ? row.run : null, row.toward]);
}

function declare(
  draft: Draft,
  points: ReadonlyMap<string, PointDeclaration>,
  lines: Lines,
  manners: Plan['manners'],
  newId: () => string,
): PieceDeclaration {
  const piece: PieceDeclaration = {
    id: newId(),
    kind: 'table',
    name: draft.name,
    flat: draft.flat,
    points: [...draft.points].flatMap((label) => points.get(label) ?? []),
    readings: [],
    runs: [],
    shots: [],
    questions: [],
    boxes: [],
    pairs: [...draft.pairs.values()],
    walk: [],
  };
  for (const [name, line] of lines.of(draft.name)) {
    const id = newId();
    let whole: string | null = null;
    for (const [index, row] of line.rows.entries()) {
      const reading = draft.readings.get(keyOf(row.kind === 'side' ? 'running' : row.kind, row));
      if (!reading) continue;
      reading.declaration.run = id;
      if (row.kind === 'running') reading.declaration.sequence ??= row.sequence ?? index + 1;
      else whole = reading.declaration.id;
    }
    const ends = line.labels.map((label) => points.get(label)?.id ?? '');
    piece.runs.push({ id, slot: Slot.safeParse(name).success ? name : null, points: ends, whole, needed: false });
    if (line.manner) manners.push({ run: id, manner: line.manner });
  }
  for (const { declaration, values } of draft.readings.values()) {
    // The note beside a closed answer is its reason and goes with the answer.
    const notes = values.filter(({ value }) => value.state !== 'answer').map((one) => one.note);
    const joined = [...new Set(notes.filter((text) => text !== ''))].join(' / ').slice(0, 400);
    piece.readings.push(joined === '' ? declaration : { ...declaration, note: joined });
  }
  return piece;
}
