import {
  type Deed,
  deed,
  type ReadingDeclaration,
  type Sheet,
  type SheetReading,
  type SheetRun,
} from '../../job/index.ts';
import { labelBetween, labelDeeds, relabelled } from './labels.ts';
import {
  ask,
  currentOf,
  declarationOf,
  isOpen,
  keyOf,
  keyOfGaps,
  neighbours,
  pointsOf,
  straightBetween,
  walkOrder,
} from './walk.ts';

type NewId = () => string;

/** Why a reading is not asked for any more, as people will read it. */
interface Why {
  readonly reason: string;
}

const straight = (id: string, points: [string, string], needed: boolean): ReadingDeclaration => ({
  id,
  slot: null,
  kind: 'straight',
  points,
  needed,
});

/**
 * A point more on an edge, after one of its points: with the readings its neighbours have (from each mark, from each
 * baseline) and the gaps to both. The gap it divides is asked for no more, unless it was read. Nothing where the edge
 * ends there.
 */
export function addPointAfter(sheet: Sheet, at: { run: string; after: string }, { reason }: Why, newId: NewId): Deed[] {
  const run = sheet.runs.find(({ id }) => id === at.run);
  const place = run?.points.indexOf(at.after) ?? -1;
  const next = run?.points[place + 1];
  if (!run || place < 0 || next === undefined) return [];
  const id = newId();
  const order = [...run.points.slice(0, place + 1), id, ...run.points.slice(place + 1)];
  const { label, renamed } = labelBetween(sheet, run.piece, order, id);
  const divided = straightBetween(sheet, run.piece, at.after, next);
  const gapsAfter = divided ? keyOf(divided) : keyOfGaps(sheet, run, [at.after, next]);
  const needed = divided?.needed ?? true;
  return [
    deed('point.add', { piece: run.piece, point: { id, label, slot: null, ...between(sheet, at.after, next) } }),
    deed('run.points', { run: run.id, points: order }),
    ...labelDeeds(renamed),
    ...likeNeighbours(sheet, run, [at.after, next], id, newId),
    ask(run.piece, straight(newId(), [at.after, id], needed), gapsAfter),
    ask(run.piece, straight(newId(), [id, next], needed), gapsAfter),
    ...(divided && isOpen(divided) ? [deed('reading.drop', { reading: divided.id, reason })] : []),
  ];
}

/** What a point between two others is, as far as they tell: on the sides both are on, half way to draw it. */
function between(sheet: Sheet, before: string, after: string) {
  const [a, b] = [before, after].map((id) => sheet.points.find((point) => point.id === id));
  const nominal: [number, number, number] | null =
    a?.nominal && b?.nominal
      ? [(a.nominal[0] + b.nominal[0]) / 2, (a.nominal[1] + b.nominal[1]) / 2, (a.nominal[2] + b.nominal[2]) / 2]
      : null;
  return { role: 'edge' as const, sides: (a?.sides ?? []).filter((side) => b?.sides.includes(side)), nominal };
}

const MEASURED_FROM_A_LINE = new Set<SheetReading['kind']>(['along', 'out', 'height']);

/** The readings that fix two neighbours, asked for a third point, each in its place of the walk. */
function likeNeighbours(
  sheet: Sheet,
  run: SheetRun,
  pair: readonly [string, string],
  added: string,
  newId: NewId,
): Deed[] {
  const rank = walkOrder(sheet, run.piece);
  const found = new Map<string, Deed>();
  const own = sheet.readings.filter(({ piece }) => piece === run.piece).sort((a, b) => rank(a) - rank(b));
  for (const reading of own) {
    const like = likeAt(sheet, run, reading, pair, added);
    if (!like || found.has(like.from)) continue;
    const declared = { ...declarationOf(reading, newId()), ...like.ends };
    found.set(like.from, ask(run.piece, declared, keyOf(reading)));
  }
  return [...found.values()];
}

/** from: what tells one such reading from the others at the same point. */
interface Like {
  readonly from: string;
  readonly ends: Pick<ReadingDeclaration, 'points' | 'baseline'>;
}

function likeAt(
  sheet: Sheet,
  run: SheetRun,
  reading: SheetReading,
  pair: readonly [string, string],
  added: string,
): Like | null {
  const { kind, points, baseline, toward } = reading;
  const [first, second] = points;
  if (kind === 'straight' && first !== undefined && second !== undefined) {
    const atFirst = pair.includes(first);
    const other = currentOf(sheet, atFirst ? second : first);
    if (atFirst === pair.includes(second) || run.points.includes(other)) return null;
    return { from: other, ends: { points: atFirst ? [added, other] : [other, added] } };
  }
  if (!MEASURED_FROM_A_LINE.has(kind) || points.length !== 1 || first === undefined || !pair.includes(first))
    return null;
  const line = baseline?.map((id) => currentOf(sheet, id));
  const from = [kind, toward ?? '', ...(line ?? [])].join(' ');
  return { from, ends: { points: [added], ...(line ? { baseline: line } : {}) } };
}

/** Whether every edge of the piece is still an edge without this point. */
export const mayRemove = (sheet: Sheet, piece: string, point: string): boolean =>
  sheet.runs.every((run) => run.piece !== piece || !run.points.includes(point) || run.points.length > 2);

/** What was read at a point: it is set aside with it. */
export const goesWith = (sheet: Sheet, piece: string, point: string): SheetReading[] =>
  sheet.readings.filter(
    (reading) => reading.piece === piece && reading.takes.length > 0 && pointsOf(reading).includes(point),
  );

/** A point leaves the piece; along its edges the gap across it is asked for, and the whole where it was an end. */
export function removePoint(sheet: Sheet, at: { piece: string; point: string }, { reason }: Why, newId: NewId): Deed[] {
  const { piece, point } = at;
  if (!mayRemove(sheet, piece, point)) return [];
  const deeds = [deed('point.drop', { piece, point, reason })];
  for (const run of sheet.runs) {
    if (run.piece !== piece || !run.points.includes(point)) continue;
    const order = run.points.filter((id) => id !== point);
    const place = run.points.indexOf(point);
    deeds.push(...wholeAnew(sheet, run, order, newId));
    deeds.push(...labelDeeds(relabelled(sheet, piece, run.points, order)));
    const [before, after] = [run.points[place - 1], run.points[place + 1]];
    if (before !== undefined && after !== undefined && !straightBetween(sheet, piece, before, after))
      deeds.push(ask(piece, straight(newId(), [before, after], true), keyOfGaps(sheet, run, [point])));
  }
  return deeds;
}

/** The whole of an edge, asked for again where the one there was does not run from its first point to its last. */
function wholeAnew(sheet: Sheet, run: SheetRun, order: readonly string[], newId: NewId): Deed[] {
  const whole = sheet.readings.find(({ id }) => id === run.whole);
  const [first, last] = [order[0], order.at(-1)];
  if (!whole || first === undefined || last === undefined) return [];
  const fits = whole.points.includes(first) && whole.points.includes(last);
  if (fits && pointsOf(whole).every((point) => order.includes(point))) return [];
  const { via, ...declared } = declarationOf(whole, newId());
  const through = via?.filter((id) => order.includes(id) && id !== first && id !== last);
  return [
    ask(run.piece, { ...declared, points: [first, last], ...(through ? { via: through } : {}) }, keyOf(whole)),
    deed('run.points', { run: run.id, points: [...order], whole: declared.id }),
  ];
}

/**
 * The points of an edge in another order: gaps between those that are neighbours now are asked for, gaps that nobody read
 * and that are none any more are not. Nothing where these are not the edge's points.
 */
export function reorderPoints(
  sheet: Sheet,
  to: { run: string; points: readonly string[] },
  { reason }: Why,
  newId: NewId,
): Deed[] {
  const run = sheet.runs.find(({ id }) => id === to.run);
  if (!run || run.points.join() === to.points.join()) return [];
  if (keyOfPair(run.points) !== keyOfPair(to.points)) return [];
  const [before, after] = [run.points, to.points].map((order) => new Set(neighbours(order).map(keyOfPair)));
  const gap = (a: string, b: string): SheetReading | undefined => straightBetween(sheet, run.piece, a, b);
  const unread = (reading: SheetReading | undefined): Deed[] =>
    reading && isOpen(reading) ? [deed('reading.drop', { reading: reading.id, reason })] : [];
  const lost = neighbours(run.points).filter((pair) => !after?.has(keyOfPair(pair)) && !isOfBox(sheet, run, pair));
  const gained = neighbours(to.points).filter((pair) => !before?.has(keyOfPair(pair)) && !gap(...pair));
  const whole = wholeAnew(sheet, run, to.points, newId);
  return [
    deed('run.points', { run: run.id, points: [...to.points] }),
    ...labelDeeds(relabelled(sheet, run.piece, run.points, to.points)),
    ...gained.map(([a, b]) => ask(run.piece, straight(newId(), [a, b], true), keyOfGaps(sheet, run, [a, b]))),
    ...lost.flatMap((pair) => unread(gap(...pair))),
    ...whole,
    ...(whole.length > 0 ? unread(sheet.readings.find(({ id }) => id === run.whole)) : []),
  ];
}

const keyOfPair = (points: readonly string[]): string => [...points].sort().join();

const isOfBox = (sheet: Sheet, { piece }: SheetRun, pair: readonly string[]): boolean =>
  sheet.pieces.some(({ id, boxes }) => id === piece && boxes.some((box) => pair.every((point) => box.includes(point))));
