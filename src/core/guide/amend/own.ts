import {
  type Deed,
  deed,
  type PieceDeclaration,
  type PointRole,
  type ReadingDeclaration,
  type Sheet,
  type Side,
} from '../../job/index.ts';
import { ask, straightBetween } from './walk.ts';

type NewId = () => string;

/** A piece no guide knows: a name, and whether all of it lies in one plane. What it is made of is added point by point. */
export function freePiece(name: string, flat: boolean, newId: NewId): PieceDeclaration {
  return {
    id: newId(),
    kind: 'free',
    name,
    flat,
    points: [],
    readings: [],
    runs: [],
    shots: [],
    questions: [],
    boxes: [],
    pairs: [],
    walk: [],
  };
}

export interface OwnPoint {
  readonly label: string;
  readonly role: PointRole;
  readonly sides: readonly Side[];
  /** What it is and from where exactly. */
  readonly note: string;
}

/** A point of a person's own. */
export function ownPoint(piece: string, { label, role, sides, note }: OwnPoint, newId: NewId): Deed[] {
  const said = note.trim() === '' ? {} : { note: note.trim() };
  const point = { id: newId(), label: label.trim(), slot: null, role, sides: [...sides], nominal: null, ...said };
  return [deed('point.add', { piece, point })];
}

/** How points of each sort begin to be called; the trade's own words, shortened. */
const LETTERS: Record<PointRole, string> = {
  mark: 'M',
  corner: 'C',
  edge: 'P',
  fastener: 'S',
  mount: 'E',
  obstruction: 'X',
};

/** The next label of its sort that the piece does not use. */
export function freeLabel(sheet: Sheet, piece: string, role: PointRole): string {
  const taken = labelsOf(sheet, piece);
  let number = 1;
  while (taken.has(`${LETTERS[role]}${number}`)) number += 1;
  return `${LETTERS[role]}${number}`;
}

const labelsOf = (sheet: Sheet, piece: string): ReadonlySet<string> =>
  new Set(sheet.points.flatMap(({ label, pieces }) => (pieces.includes(piece) ? [label] : [])));

export const isLabelFree = (sheet: Sheet, piece: string, label: string): boolean =>
  !labelsOf(sheet, piece).has(label.trim());

export type OwnReading = Pick<ReadingDeclaration, 'kind' | 'points' | 'baseline' | 'toward' | 'of' | 'note'>;

/**
 * A reading of a person's own, at the end of the walk. The cloth depends on it where it is at a point no guide asks about;
 * between two points of the guide it is one more check. The straight that is there already is not asked for twice.
 */
export function ownReading(
  sheet: Sheet,
  piece: string,
  own: OwnReading,
  newId: NewId,
): { deeds: Deed[]; reading: string } {
  const [a, b] = own.points;
  const there = own.kind === 'straight' && a && b ? straightBetween(sheet, piece, a, b) : undefined;
  if (there) return { deeds: [], reading: there.id };
  const slots = new Map(sheet.points.map(({ id, slot }) => [id, slot]));
  const needed = [...own.points, ...(own.baseline ?? [])].some((id) => !slots.get(id)) || own.kind === 'size';
  const reading = { id: newId(), slot: null, needed, ...own };
  return { deeds: [ask(piece, reading, undefined)], reading: reading.id };
}

/** An edge through points in order, with the reading of its full length. */
export function ownEdge(
  piece: string,
  { points, note }: { points: readonly string[]; note: string },
  newId: NewId,
): Deed[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < 2) return [];
  const [run, whole] = [newId(), newId()];
  const said = note.trim() === '' ? {} : { note: note.trim() };
  return [
    deed('reading.add', {
      piece,
      reading: { id: whole, slot: null, kind: 'girth', points: [first, last], run, needed: true },
    }),
    deed('run.add', { piece, run: { id: run, slot: null, points: [...points], whole, needed: true, ...said } }),
  ];
}

/** A picture a person wants taken, with the points to mark on it. */
export function ownPicture(
  piece: string,
  { points, note }: { points: readonly string[]; note: string },
  newId: NewId,
): { deeds: Deed[]; slot: string } {
  const slot = `own-${newId()}`;
  const said = note.trim() === '' ? {} : { note: note.trim() };
  return { deeds: [deed('shot.add', { piece, shot: { slot, points: [...points], needed: true, ...said } })], slot };
}
