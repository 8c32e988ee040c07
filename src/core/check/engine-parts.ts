import type { PointResult, Solution } from '../adjust/index.ts';
import type { SheetPiece, SheetReading } from '../job/index.ts';
import { type Context, takeIds } from './context.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';

/** A piece the engine has judged. */
interface Judged {
  readonly piece: SheetPiece;
  readonly judgement: PieceJudgement;
}

/** Every piece the engine has something to say about. */
export function judgedPieces(context: Context): Judged[] {
  return context.sheet.pieces.flatMap((piece) => {
    const judgement = context.judgement(piece.id);
    return judgement ? [{ piece, judgement }] : [];
  });
}

/** Points of a person's own at which no reading is asked for; a table has no points but those of its readings. */
export function unspokenOf({ sheet }: Context, piece: SheetPiece): string[] {
  if (piece.kind === 'table') return [];
  const spoken = new Set(
    sheet.readings.flatMap(({ points, via = [], baseline = [] }) => [...points, ...via, ...baseline]),
  );
  return sheet.points
    .filter(({ id, slot, pieces }) => slot === null && pieces.includes(piece.id) && !spoken.has(id))
    .filter(({ role, replacedBy }) => role !== 'mark' && role !== 'obstruction' && replacedBy === null)
    .map(({ id }) => id);
}

/**
 * Pieces of which everything needed was measured or answered, whose shape the engine has: before that, unchecked and loose
 * points are only what is still missing, and that is said already.
 */
export function finishedPieces(context: Context): (Judged & { readonly solution: Solution })[] {
  return judgedPieces(context).flatMap((judged) => {
    const solution = solutionOf(judged.judgement.adjustment);
    const { complete, adjustment } = judged.judgement;
    // A point a person added and has not come to yet is still missing too.
    if (!complete || !solution || unspokenOf(context, judged.piece).length > 0) return [];
    return adjustment.state === 'solved' ? [{ ...judged, solution }] : [];
  });
}

/** Readings of a piece that end at a point. */
export const readingsAt = (context: Context, piece: string, point: string): SheetReading[] =>
  context.sheet.readings.filter((reading) => reading.piece === piece && reading.points.includes(point));

/** The step where a person deals with a point: the first on the walk that measures it. */
export function slotOfPoint(context: Context, piece: SheetPiece, point: string): string | null {
  const slots = new Set(readingsAt(context, piece.id, point).map((reading) => context.slotOf(reading)));
  return piece.walk.find((slot) => slots.has(slot)) ?? null;
}

/** What a finding about a whole piece rests on: every take in it. */
export const takesOfPiece = (context: Context, piece: string): string[] =>
  takeIds(...context.sheet.readings.filter((reading) => reading.piece === piece));

/** A limit of the shop for a point, mm: by what it is, doubled where an owner measured. */
export function limitFor(context: Context, judged: Judged, point: PointResult, of: 'tolerance' | 'unseen'): number {
  const role = context.points.get(point.id)?.role;
  const limit = context.limits[of][role === 'corner' || role === 'mount' ? 'corner' : 'line'];
  return judged.judgement.byOwner ? limit * context.limits.ownerFactor : limit;
}

/** Points of a solution the cloth depends on. */
export function neededPoints(judged: Judged, solution: Solution): PointResult[] {
  const needed = new Set(judged.judgement.network.points.filter((point) => point.needed).map((point) => point.id));
  return solution.points.filter((point) => needed.has(point.id));
}
