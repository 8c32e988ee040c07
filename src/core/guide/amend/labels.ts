import { type Deed, deed, type Sheet } from '../../job/index.ts';
import { nextInRow, rowOf } from '../rows.ts';

/** Points whose label is on the boat, in readings or on a picture already: it stays. */
function usedPoints(sheet: Sheet): ReadonlySet<string> {
  const readings = [...sheet.readings, ...sheet.setAside.map(({ reading }) => reading)];
  return new Set([
    ...readings.flatMap(({ takes, points, baseline = [] }) => (takes.length > 0 ? [...points, ...baseline] : [])),
    ...sheet.photos.flatMap(({ marks }) => marks.flatMap(({ point }) => point ?? [])),
  ]);
}

/**
 * Labels that nothing else in the same pieces may have: those of the other points in them, and of points that left but were
 * measured, whose readings are still shown.
 */
function labelsBeside(sheet: Sheet, piece: string, points: ReadonlySet<string>): ReadonlySet<string> {
  const pieces = new Set([piece, ...sheet.points.flatMap((point) => (points.has(point.id) ? point.pieces : []))]);
  const used = usedPoints(sheet);
  const holds = (own: readonly string[], id: string): boolean =>
    own.length === 0 ? used.has(id) : own.some((one) => pieces.has(one));
  return new Set(
    sheet.points.flatMap(({ id, label, pieces: own }) => (!points.has(id) && holds(own, id) ? [label] : [])),
  );
}

/** The first of the letters, or of the numbers after them, that makes the label its own. */
function withLetter(base: string, taken: ReadonlySet<string>): string {
  for (const letter of 'abcdefghijklmnopqrstuvwxyz') if (!taken.has(base + letter)) return base + letter;
  let number = 2;
  while (taken.has(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}

/** The next number of a label's row in these pieces; a point that left them keeps its own. */
export function nextOfRow(sheet: Sheet, pieces: readonly string[], label: string): string {
  const near = sheet.points.filter(
    (point) => point.pieces.length === 0 || point.pieces.some((id) => pieces.includes(id)),
  );
  return nextInRow(
    label,
    near.map((point) => point.label),
  );
}

/** Points of an edge, in order, that are numbered in one row; whether the numbers rise or fall along it. */
interface Row {
  readonly prefix: string;
  readonly numbers: readonly number[];
  readonly rises: boolean;
}

function readRow(prefix: string, labels: readonly string[]): Row | null {
  const numbers = labels.flatMap((label) => {
    const row = rowOf(label);
    return row?.prefix === prefix ? [row.number] : [];
  });
  const steps = numbers.slice(1).map((number, i) => number - (numbers[i] ?? 0));
  if (steps.every((step) => step > 0)) return { prefix, numbers, rises: true };
  return steps.every((step) => step < 0) ? { prefix, numbers, rises: false } : null;
}

/** Numbers given anew in walking order: who gets which, of those in the pool. */
function inOrder(points: readonly string[], pool: readonly number[], { prefix, rises }: Row): Map<string, string> {
  const sorted = [...pool].sort((a, b) => (rises ? a - b : b - a));
  return new Map(points.map((point, i) => [point, `${prefix}${sorted[i] ?? ''}`]));
}

const prefixOf = (label: string | undefined): string | undefined => rowOf(label ?? '')?.prefix;

/**
 * What a new point between two neighbours is called. Labels follow the walk: those after it move up by one, as long as
 * nothing was measured or photographed at any of them; otherwise they keep theirs and the new one is P2a.
 */
export function labelBetween(
  sheet: Sheet,
  piece: string,
  order: readonly string[],
  added: string,
): { label: string; renamed: Map<string, string> } {
  const labels = new Map(sheet.points.map(({ id, label }) => [id, label]));
  const at = order.indexOf(added);
  const [before = '', after = ''] = [labels.get(order[at - 1] ?? ''), labels.get(order[at + 1] ?? '')];
  const prefix = prefixOf(before) ?? prefixOf(after);
  const named = order.flatMap((id) => labels.get(id) ?? []);
  const found = prefix === undefined ? null : readRow(prefix, named);
  if (found) {
    // A row of one keeps its number: the new one comes next to it, away from where the row begins.
    const row = found.numbers.length === 1 ? { ...found, rises: prefixOf(before) === prefix } : found;
    const members = order.filter((id) => id === added || prefixOf(labels.get(id)) === prefix);
    const free = firstFree(row, members.indexOf(added));
    const given = inOrder(members, [...row.numbers, free], row);
    const label = given.get(added) ?? '';
    given.delete(added);
    const renamed = changed(given, labels);
    if (mayRename(sheet, piece, renamed, { more: [label] })) return { label, renamed };
  }
  const base = (found && !found.rises && prefixOf(after) === prefix ? after : before) || after;
  return {
    label: withLetter(base.replace(/(\d)[a-z]$/, '$1'), labelsBeside(sheet, piece, new Set())),
    renamed: new Map(),
  };
}

/** The lowest number above the one before it that the row does not use. */
function firstFree({ numbers, rises }: Row, place: number): number {
  const below = rises ? numbers[place - 1] : numbers[place];
  let free = (below ?? Math.min(...numbers) - 1) + 1;
  while (numbers.includes(free)) free += 1;
  return free;
}

const changed = (given: ReadonlyMap<string, string>, labels: ReadonlyMap<string, string>): Map<string, string> =>
  new Map([...given].filter(([id, label]) => labels.get(id) !== label));

/** more: a label given to a point that has none yet. gone: a point that leaves, and whose label is free. */
function mayRename(
  sheet: Sheet,
  piece: string,
  renamed: ReadonlyMap<string, string>,
  { more = [], gone = [] }: { more?: readonly string[]; gone?: readonly string[] },
): boolean {
  const used = usedPoints(sheet);
  const beside = labelsBeside(sheet, piece, new Set([...renamed.keys(), ...gone.filter((id) => !used.has(id))]));
  return (
    [...renamed.keys()].every((id) => !used.has(id)) && [...renamed.values(), ...more].every((l) => !beside.has(l))
  );
}

/** New labels after an edge lost a point or changed its order; none where one of them is on the boat already. */
export function relabelled(
  sheet: Sheet,
  piece: string,
  before: readonly string[],
  order: readonly string[],
): Map<string, string> {
  const labels = new Map(sheet.points.map(({ id, label }) => [id, label]));
  const all = new Map<string, string>();
  for (const prefix of new Set(order.flatMap((id) => prefixOf(labels.get(id)) ?? []))) {
    const row = readRow(
      prefix,
      before.flatMap((id) => labels.get(id) ?? []),
    );
    if (!row) continue;
    const members = order.filter((id) => prefixOf(labels.get(id)) === prefix);
    const pool = [...row.numbers].sort((a, b) => a - b).slice(0, members.length);
    const renamed = changed(inOrder(members, pool, row), labels);
    const gone = before.filter((id) => !order.includes(id));
    if (mayRename(sheet, piece, renamed, { gone })) for (const [id, label] of renamed) all.set(id, label);
  }
  return all;
}

export const labelDeeds = (renamed: ReadonlyMap<string, string>): Deed[] =>
  [...renamed].map(([point, label]) => deed('point.label', { point, label }));
