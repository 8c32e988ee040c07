import type { SheetPiece, SheetQuestion } from '../../job/index.ts';
import { type ChoiceConflict, choiceConflicts } from '../choice-conflicts.ts';
import type { Context } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Choices that do not go together, by the table of choice-conflicts.ts: doubt or note as it says.
 * Subjects: the questions and the piece. numbers: conflict (key of the table).
 */
export const choiceConflict: Rule = {
  key: 'choice-conflict',
  find: (context) =>
    context.sheet.pieces.flatMap((piece) => {
      const answered = answersOf(context, piece.id);
      return choiceConflicts
        .filter((conflict) => isMet(conflict, piece, answered))
        .map((conflict) => fromTable(conflict, piece, answered));
    }),
};

type Answers = ReadonlyMap<string, SheetQuestion>;

const answersOf = ({ sheet }: Context, piece: string): Answers =>
  new Map(
    sheet.questions
      .filter((question) => question.piece === piece && question.choice !== null)
      .map((question) => [question.slot, question]),
  );

const chosen = (answers: Answers, slot: string, choices: readonly string[]): boolean =>
  choices.includes(answers.get(slot)?.choice ?? '');

function isMet({ kinds, asked, unless = {} }: ChoiceConflict, piece: SheetPiece, answers: Answers): boolean {
  if (kinds && !kinds.includes(piece.kind)) return false;
  return (
    Object.entries(asked).every(([slot, choices]) => chosen(answers, slot, choices)) &&
    !Object.entries(unless).some(([slot, choices]) => chosen(answers, slot, choices))
  );
}

function fromTable({ key, severity, asked }: ChoiceConflict, { id }: SheetPiece, answers: Answers): Draft {
  const slots = Object.keys(asked);
  return {
    severity,
    piece: id,
    slot: slots[0] ?? null,
    subjects: [...slots.map((slot) => ({ on: 'question' as const, id: slot })), { on: 'piece', id }],
    numbers: { conflict: key },
    basis: slots.map((slot) => `${slot}=${answers.get(slot)?.choice ?? ''}`),
  };
}
