import { judgedPieces, readingsAt, slotOfPoint, takesOfPiece } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/**
 * Everything asked for at a point was taken or answered, and still the readings do not fix it: stop. While one of its
 * readings is open or could not be taken, that is what is said instead. numbers: ways (independent ways in which it can move, no unit).
 */
export const pointFloats: Rule = {
  key: 'point-floats',
  find: (context) =>
    judgedPieces(context).flatMap(({ piece, judgement: { adjustment, network } }) => {
      if (adjustment.state !== 'not-enough-readings' && adjustment.state !== 'singular') return [];
      const needed = new Set(network.points.filter((point) => point.needed).map((point) => point.id));
      return adjustment.floating
        .filter(({ point }) => needed.has(point))
        .filter(({ point }) =>
          readingsAt(context, piece.id, point).every(
            (r) => !r.needed || (r.state !== 'open' && r.state !== 'could-not'),
          ),
        )
        .map(({ point, ways }) => ({
          severity: 'stop' as const,
          piece: piece.id,
          slot: slotOfPoint(context, piece, point),
          subjects: [{ on: 'point' as const, id: point }],
          numbers: { ways: String(ways) },
          basis: takesOfPiece(context, piece.id),
        }));
    }),
};
