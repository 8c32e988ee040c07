import type { Rule } from '../rule.ts';

/** A choice that was not made. Needed: stop, for the cloth is cut by it. Only wished for: note. numbers: none. */
export const missingAnswer: Rule = {
  key: 'missing-answer',
  find: (context) =>
    context.sheet.questions
      .filter((question) => question.choice === null)
      .map(({ piece, slot, needed }) => ({
        severity: needed ? 'stop' : 'note',
        piece,
        slot,
        subjects: [
          { on: 'question', id: slot },
          { on: 'piece', id: piece },
        ],
        numbers: {},
        basis: [],
      })),
};
