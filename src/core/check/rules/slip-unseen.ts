import { finishedPieces, limitFor, neededPoints, slotOfPoint, takesOfPiece } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/**
 * The largest slip in one reading that nobody would notice could move a point further than the shop allows (external
 * reliability; alpha for the whole job and power as the engine states them): doubt. Quiet where that reading was read twice.
 * Subjects: the point, the reading. numbers: shift, limit.
 */
export const slipUnseen: Rule = {
  key: 'slip-unseen',
  find: (context) =>
    finishedPieces(context).flatMap((judged) =>
      neededPoints(judged, judged.solution).flatMap((point) => {
        const limit = limitFor(context, judged, point, 'unseen');
        const { worstUnseen } = point;
        if (!worstUnseen || worstUnseen.shift <= limit) return [];
        const confirmed = judged.judgement.network.readings.find(({ id }) => id === worstUnseen.reading)?.confirmed;
        if (confirmed) return [];
        return [
          {
            severity: 'doubt' as const,
            piece: judged.piece.id,
            slot: slotOfPoint(context, judged.piece, point.id),
            subjects: [
              { on: 'point' as const, id: point.id },
              { on: 'reading' as const, id: worstUnseen.reading },
            ],
            numbers: { shift: worstUnseen.shift, limit },
            basis: takesOfPiece(context, judged.piece.id),
          },
        ];
      }),
    ),
};
