import { judgedPieces, takesOfPiece } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/**
 * More than one shape fits the readings: stop. The subjects are the points that lie elsewhere in the other shape.
 * numbers: shapes (how many), from and to (labels of the tape that tells them apart, or null).
 */
export const twoShapes: Rule = {
  key: 'two-shapes',
  find: (context) =>
    judgedPieces(context).flatMap(({ piece, judgement: { adjustment, complete } }) => {
      if (adjustment.state !== 'two-shapes' || !complete) return [];
      const moved = [...new Set(adjustment.shapes.flatMap((shape) => shape.moved))].sort();
      const [tape] = adjustment.tellsApart;
      const label = (id: string | undefined): string | null => context.points.get(id ?? '')?.label ?? null;
      return [
        {
          severity: 'stop' as const,
          piece: piece.id,
          slot: null,
          subjects: moved.map((id) => ({ on: 'point' as const, id })),
          numbers: { shapes: String(adjustment.shapes.length), from: label(tape?.from), to: label(tape?.to) },
          basis: takesOfPiece(context, piece.id),
        },
      ];
    }),
};
