import { outlineOf, type Point2 } from '../geometry/index.ts';
import type { Obstruction, PieceKind, Treatment } from '../job/index.ts';
import type { Context } from './context.ts';
import { solutionOf, type ThingPlace } from './piece-judgement.ts';

/** The step at which things in the way are listed. */
const LIST = 'in-the-way';

/** Where a person deals with the things in the way of a piece; null where its walk does not ask for them. */
export const listSlot = ({ pieces }: Context, piece: string): string | null =>
  pieces.get(piece)?.walk.includes(LIST) ? LIST : null;

export function choiceOf({ sheet }: Context, piece: string, slot: string): string | null {
  return sheet.questions.find((question) => question.piece === piece && question.slot === slot)?.choice ?? null;
}

/** What was answered for all cleats at once holds for one that nobody spoke of. */
const CLEATS: Readonly<Record<string, Treatment>> = {
  'under-cover': 'covered',
  outside: 'left-free',
  'cut-outs': 'cut-out',
};

export function treatmentOf(context: Context, { kind, piece, treatment }: Obstruction): Treatment | null {
  if (treatment !== null || kind !== 'cleat') return treatment;
  return CLEATS[choiceOf(context, piece, 'cleats') ?? ''] ?? null;
}

/** Somebody said so; or a cleat of a boat that lies tied up in the water, while nobody said otherwise. */
export const mustBeFree = (context: Context, { kind, needed, piece }: Obstruction): boolean =>
  needed === 'yes' || (needed === null && kind === 'cleat' && choiceOf(context, piece, 'berth') === 'water');

export const placeOfThing = (context: Context, { piece, point }: Obstruction): ThingPlace | null =>
  context.judgement(piece)?.things.get(point ?? '') ?? null;

/** Cloth that hangs over everything: what it lies above is not what it lies on. */
const OVERHEAD: ReadonlySet<PieceKind> = new Set(['tension-shade', 'folding-top']);

/** The line round a piece as it was worked out; null where it is not known whole, or where the cloth is overhead. */
export function outlinePlaces(context: Context, piece: string): Point2[] | null {
  const kind = context.pieces.get(piece)?.kind;
  const judgement = context.judgement(piece);
  const outline = kind === undefined || OVERHEAD.has(kind) ? null : outlineOf(context.sheet, piece);
  if (!outline || judgement?.adjustment.state !== 'solved') return null;
  const fixed = new Map(
    solutionOf(judgement.adjustment)?.points.flatMap(({ id, state, position }) =>
      state === 'floating' ? [] : [[id, position] as const],
    ),
  );
  const places = outline.points.flatMap((id): Point2[] => {
    const place = fixed.get(id);
    return place ? [[place[0], place[1]]] : [];
  });
  return places.length === outline.points.length ? places : null;
}
