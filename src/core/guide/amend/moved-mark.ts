import {
  type Deed,
  deed,
  type ReadingDeclaration,
  type Sheet,
  type SheetPoint,
  type SheetReading,
} from '../../job/index.ts';
import { nextOfRow } from './labels.ts';
import { ask, currentOf, declarationOf, isOpen, keyOf, pointsOf, walkOrder } from './walk.ts';

/** What can have been moved: a mark somebody put on the boat, and that nobody has put another in place of yet. */
export const mayHaveMoved = ({ role, replacedBy }: SheetPoint): boolean => role === 'mark' && replacedBy === null;

/**
 * A mark that was moved is a new mark, with the next number of its row, so that nobody takes one for the other. What was
 * read at the old one stays with it; what is still open is asked for from the new one, in the same place of the walk;
 * before that the tapes that fix the new one. In every piece it belongs to.
 */
export function moveMark(sheet: Sheet, mark: string, { reason }: { reason: string }, newId: () => string): Deed[] {
  const old = sheet.points.find(({ id }) => id === mark);
  if (!old || !mayHaveMoved(old)) return [];
  const { role, sides, nominal } = old;
  const point = {
    id: newId(),
    label: nextOfRow(sheet, old.pieces, old.label),
    slot: null,
    role,
    sides,
    nominal,
    replaces: mark,
  };
  const move: Move = { mark, now: point.id, reason, asked: new Set() };
  return old.pieces.flatMap((piece) => [
    deed('point.add', { piece, point }),
    ...edgesThrough(sheet, piece, move),
    ...askedFromNew(sheet, piece, move, newId),
  ]);
}

interface Move {
  readonly mark: string;
  readonly now: string;
  readonly reason: string;
  /** What the new mark is taped to already: what is read between points of two pieces holds for both. */
  readonly asked: Set<string>;
}

const inPlace = (points: readonly string[], { mark, now }: Move): string[] =>
  points.map((point) => (point === mark ? now : point));

function edgesThrough(sheet: Sheet, piece: string, move: Move): Deed[] {
  return sheet.runs.flatMap((run) =>
    run.piece === piece && run.points.includes(move.mark)
      ? [deed('run.points', { run: run.id, points: inPlace(run.points, move) })]
      : [],
  );
}

function askedFromNew(sheet: Sheet, piece: string, move: Move, newId: () => string): Deed[] {
  const rank = walkOrder(sheet, piece);
  const open = sheet.readings
    .filter((reading) => reading.piece === piece && isOpen(reading) && pointsOf(reading).includes(move.mark))
    .sort((a, b) => rank(a) - rank(b));
  const moved = open.map((reading) => ({ reading, instead: fromNew(reading, move, newId()) }));
  for (const { instead } of moved)
    if (instead.kind === 'straight') for (const point of instead.points) move.asked.add(point);
  const [first] = open;
  const needed = open.length > 0;
  const fixing = fixingTapes(sheet, piece, move).map((to): Deed => {
    move.asked.add(to);
    const reading = { id: newId(), slot: null, kind: 'straight' as const, points: [move.now, to], needed };
    return ask(piece, reading, first && keyOf(first));
  });
  return [
    ...fixing,
    ...moved.flatMap(({ reading, instead }) => [
      ask(piece, instead, keyOf(reading)),
      ...wholeOf(sheet, reading.id, instead.id, move),
      deed('reading.drop', { reading: reading.id, reason: move.reason }),
    ]),
  ];
}

/** The same reading with the new mark in place of the old one. */
function fromNew(reading: SheetReading, move: Move, id: string): ReadingDeclaration {
  const { points, via, baseline, ...rest } = declarationOf(reading, id);
  return {
    ...rest,
    points: inPlace(points, move),
    ...(via ? { via: inPlace(via, move) } : {}),
    ...(baseline ? { baseline: inPlace(baseline, move) } : {}),
  };
}

const wholeOf = (sheet: Sheet, was: string, now: string, move: Move): Deed[] =>
  sheet.runs.flatMap(({ id, whole, points }) =>
    whole === was ? [deed('run.points', { run: id, points: inPlace(points, move), whole: now })] : [],
  );

/**
 * What the new mark is taped to so that it is fixed and checked: the other marks, and where they are too few the points
 * that most readings hold.
 */
function fixingTapes(sheet: Sheet, piece: string, { mark, now, asked }: Move): string[] {
  const wanted = sheet.pieces.find(({ id }) => id === piece)?.flat ? 3 : 4;
  const own = sheet.points.filter(
    ({ id, pieces }) => pieces.includes(piece) && id !== mark && id !== now && currentOf(sheet, id) === id,
  );
  const there = own.filter(({ id }) => asked.has(id)).length;
  const free = own.filter(({ id }) => !asked.has(id));
  const marks = free.filter(({ role }) => role === 'mark').map(({ id }) => id);
  const held = (point: string): number =>
    sheet.readings.filter(({ kind, value, points }) => kind === 'straight' && value !== null && points.includes(point))
      .length;
  const others = free
    .filter(({ role, id }) => role !== 'mark' && held(id) > 0)
    .map(({ id }) => id)
    .sort((a, b) => held(b) - held(a));
  return [...marks, ...others.slice(0, Math.max(0, wanted - marks.length - there))];
}

/** The reading that asks from where a mark is now what was read where it was before: the one there, or a new one. */
export function askedFromNow(sheet: Sheet, was: SheetReading, newId: () => string): { deeds: Deed[]; reading: string } {
  const now = (points: readonly string[]): string[] => points.map((point) => currentOf(sheet, point));
  const { points, via, baseline, ...rest } = declarationOf(was, newId());
  const reading = {
    ...rest,
    points: now(points),
    ...(via ? { via: now(via) } : {}),
    ...(baseline ? { baseline: now(baseline) } : {}),
  };
  const sameAs = (one: SheetReading): boolean =>
    one.piece === was.piece && one.kind === was.kind && ends(one) === ends(reading);
  const there = sheet.readings.find(sameAs);
  return there
    ? { deeds: [], reading: there.id }
    : { deeds: [ask(was.piece, reading, keyOf(was))], reading: reading.id };
}

const ends = ({ points, baseline = [] }: Pick<ReadingDeclaration, 'points' | 'baseline'>): string =>
  [[...points].sort().join(), baseline.join()].join(' ');
