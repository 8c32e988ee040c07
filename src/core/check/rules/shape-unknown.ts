import { judgedPieces, takesOfPiece } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/**
 * Everything asked for was taken or answered and the engine came to no shape (it did not converge): stop, since nobody
 * knows where any point lies. numbers: readings (how many it was given).
 */
export const shapeUnknown: Rule = {
  key: 'shape-unknown',
  find: (context) =>
    judgedPieces(context).flatMap(({ piece, judgement: { adjustment, complete, network } }) => {
      if (adjustment.state !== 'did-not-converge' || !complete) return [];
      return [
        {
          severity: 'stop' as const,
          piece: piece.id,
          slot: null,
          subjects: [{ on: 'piece' as const, id: piece.id }],
          numbers: { readings: String(network.readings.length) },
          basis: takesOfPiece(context, piece.id),
        },
      ];
    }),
};
