import { aboutReading, takeIds } from '../context.ts';
import { judgedPieces } from '../engine-parts.ts';
import type { Rule } from '../rule.ts';

/** More than this many readings named at once help nobody to find the one. */
const MOST_NAMED = 6;

/**
 * The readings do not fit together: one of those named, most suspect first, is wrong (Baarda's test of single readings, the
 * false-alarm rate set for the whole job; or the global test). Doubt: to be read again, without being told what would fit.
 * numbers: verdict ('named', 'tied', 'unlocated'), again (how many readings are suspect), slip and wouldRead (kind and text of
 * the first explanation, for the bench only, or null), chance (per cent of belief in it, or null).
 */
export const readingDoubted: Rule = {
  key: 'reading-doubted',
  find: (context) =>
    judgedPieces(context).flatMap(({ piece, judgement: { slips } }) => {
      if (!slips || slips.verdict === 'nothing-doubted') return [];
      const suspects = slips.readAgain.slice(0, MOST_NAMED).flatMap((id) => context.readings.get(id) ?? []);
      const [first] = suspects;
      const [likely] = slips.explanations;
      const lead = likely?.slips[0];
      return [
        {
          severity: 'doubt' as const,
          piece: piece.id,
          slot: first ? context.slotOf(first) : null,
          subjects: first ? suspects.map(aboutReading) : [{ on: 'piece' as const, id: piece.id }],
          numbers: {
            verdict: slips.verdict,
            again: slips.readAgain.length,
            slip: lead?.kind ?? null,
            wouldRead: lead?.wouldRead ?? null,
            chance: likely === undefined ? null : String(Math.round(likely.chance * 100)),
          },
          basis: takeIds(...suspects),
        },
      ];
    }),
};
