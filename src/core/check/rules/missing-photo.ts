import type { Rule } from '../rule.ts';

/**
 * A needed picture that was not taken. Not answered: doubt, not stop: cloth is cut from readings, a picture only keeps
 * people from misreading them, and a shop may do without. Answered 'none-here' or 'could-not': note.
 * numbers: answer ('could-not', 'none-here' or null), reason (as typed, or null).
 */
export const missingPhoto: Rule = {
  key: 'missing-photo',
  find: (context) =>
    context.sheet.shots
      .filter((shot) => shot.needed && shot.photos.length === 0)
      .map(({ piece, slot, answer }) => ({
        severity: answer === null ? 'doubt' : 'note',
        piece,
        slot,
        subjects: [
          { on: 'shot', id: slot },
          { on: 'piece', id: piece },
        ],
        numbers: { answer: answer?.answer ?? null, reason: answer?.reason ?? null },
        basis: answer === null ? [] : [`${answer.answer}@${answer.at}`],
      })),
};
