import { judgedPieces, takesOfPiece } from '../engine-parts.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Everything asked for was taken or answered and the engine came to no shape (it did not converge): stop, since nobody
 * knows where any point lies. So is a piece without a guide of which nothing is asked yet. numbers: readings (how many the
 * engine was given).
 */
export const shapeUnknown: Rule = {
  key: 'shape-unknown',
  find: (context) => [
    ...judgedPieces(context).flatMap(({ piece, judgement: { adjustment, complete, network } }) => {
      if (adjustment.state !== 'did-not-converge' || !complete) return [];
      return [unknown(piece.id, network.readings.length, takesOfPiece(context, piece.id))];
    }),
    ...context.sheet.pieces
      .filter(({ id, kind }) => kind === 'free' && !context.sheet.readings.some(({ piece }) => piece === id))
      .filter(({ id }) => !context.sheet.points.some(({ pieces }) => pieces.includes(id)))
      .map(({ id }) => unknown(id, 0, [])),
  ],
};

const unknown = (piece: string, readings: number, basis: string[]): Draft => ({
  severity: 'stop',
  piece,
  slot: null,
  subjects: [{ on: 'piece', id: piece }],
  numbers: { readings: String(readings) },
  basis,
});
