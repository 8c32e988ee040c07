import type { Obstruction, SheetPiece, SheetQuestion } from '../../job/index.ts';
import { type ChoiceConflict, choiceConflicts } from '../choice-conflicts.ts';
import type { Context } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Choices that do not go together, by the table of choice-conflicts.ts: doubt or note as it says. Besides, a thing in the
 * way that must be free and lies under the cloth: doubt; a cleat must be free where the boat is tied up in the water,
 * unless somebody said otherwise.
 * Subjects: the questions and the piece; or the thing in the way. numbers: conflict (key of the table, 'needed-covered').
 */
export const choiceConflict: Rule = {
  key: 'choice-conflict',
  find: (context) => [
    ...context.sheet.pieces.flatMap((piece) => {
      const answered = answersOf(context, piece.id);
      return choiceConflicts
        .filter((conflict) => isMet(conflict, piece, answered))
        .map((conflict) => fromTable(conflict, piece, answered));
    }),
    ...context.sheet.obstructions
      .filter((thing) => thing.treatment === 'covered' && mustBeFree(context, thing))
      .map(coveredThing),
  ],
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

function mustBeFree(context: Context, { kind, needed, piece }: Obstruction): boolean {
  return needed === 'yes' || (needed === null && kind === 'cleat' && isTiedUp(context, piece));
}

const isTiedUp = (context: Context, piece: string): boolean => chosen(answersOf(context, piece), 'berth', ['water']);

function coveredThing({ id, piece, kind, needed }: Obstruction): Draft {
  return {
    severity: 'doubt',
    piece,
    slot: 'in-the-way',
    subjects: [{ on: 'obstruction', id }],
    numbers: { conflict: 'needed-covered' },
    basis: [`${kind}=covered`, `needed=${needed}`],
  };
}
