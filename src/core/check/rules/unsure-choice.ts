import type { Rule } from '../rule.ts';

/** A question answered 'could not tell': doubt. numbers: text (what was typed with it). */
export const unsureChoice: Rule = {
  key: 'unsure-choice',
  find: (context) =>
    context.sheet.questions
      .filter((question) => question.choice === 'could-not-tell')
      .map(({ piece, slot, text }) => ({
        severity: 'doubt',
        piece,
        slot,
        subjects: [
          { on: 'question', id: slot },
          { on: 'piece', id: piece },
        ],
        numbers: { text },
        basis: [],
      })),
};
