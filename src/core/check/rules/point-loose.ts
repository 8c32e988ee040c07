import { finishedPieces, limitFor, neededPoints, slotOfPoint, takesOfPiece } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/**
 * A point the cloth depends on is less sure, relative to its neighbours and marks, than the piece needs: a priori, at 95 %,
 * whatever the datum: stop. numbers: sure (largest semi-axis of its ellipse), limit.
 */
export const pointLoose: Rule = {
  key: 'point-loose',
  find: (context) =>
    finishedPieces(context).flatMap((judged) =>
      neededPoints(judged, judged.solution).flatMap((point) => {
        const limit = limitFor(context, judged, point, 'tolerance');
        if (point.relative95 === null || point.relative95 <= limit) return [];
        return [
          {
            severity: 'stop' as const,
            piece: judged.piece.id,
            slot: slotOfPoint(context, judged.piece, point.id),
            subjects: [{ on: 'point' as const, id: point.id }],
            numbers: { sure: point.relative95, limit },
            basis: takesOfPiece(context, judged.piece.id),
          },
        ];
      }),
    ),
};
