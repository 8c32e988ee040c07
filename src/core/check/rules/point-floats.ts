import type { SheetPiece } from '../../job/index.ts';
import type { Context } from '../context.ts';
import { judgedPieces, readingsAt, slotOfPoint, takesOfPiece, unspokenOf } from '../engine-parts.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Everything asked for at a point was taken or answered, and still the readings do not fix it: stop. While one of its
 * readings is open or could not be taken, that is what is said instead. So is a point that a person added and that
 * nothing is asked about. numbers: ways (independent ways in which it can move, no unit; null where nothing speaks of it).
 */
export const pointFloats: Rule = {
  key: 'point-floats',
  find: (context) => [
    ...judgedPieces(context).flatMap(({ piece, judgement: { adjustment, network } }) => {
      if (adjustment.state !== 'not-enough-readings' && adjustment.state !== 'singular') return [];
      const needed = new Set(network.points.filter((point) => point.needed).map((point) => point.id));
      return adjustment.floating
        .filter(({ point }) => needed.has(point))
        .filter(({ point }) =>
          readingsAt(context, piece.id, point).every(
            (r) => !r.needed || (r.state !== 'open' && r.state !== 'could-not'),
          ),
        )
        .map(({ point, ways }) => floating(context, piece, point, String(ways)));
    }),
    ...context.sheet.pieces.flatMap((piece) =>
      unspokenOf(context, piece).map((point) => floating(context, piece, point, null)),
    ),
  ],
};

const floating = (context: Context, piece: SheetPiece, point: string, ways: string | null): Draft => ({
  severity: 'stop',
  piece: piece.id,
  slot: slotOfPoint(context, piece, point),
  subjects: [{ on: 'point', id: point }],
  numbers: { ways },
  basis: takesOfPiece(context, piece.id),
});
