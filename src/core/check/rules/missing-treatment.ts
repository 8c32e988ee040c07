import { extentOf } from '../../geometry/index.ts';
import type { Obstruction } from '../../job/index.ts';
import { type Context, isMeasured } from '../context.ts';
import { choiceOf, listSlot, treatmentOf } from '../in-the-way.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * A thing in the way that nobody says what to do about: doubt. Likewise a cut-out whose place or size nobody took, and a list
 * that was announced and is empty. A photo alone is no place to cut by.
 * Subjects: the thing and what it lacks, or the question and the piece. numbers: lack ('treatment', 'place', 'size', 'list').
 */
export const missingTreatment: Rule = {
  key: 'missing-treatment',
  find: (context) => [...context.sheet.obstructions.flatMap((thing) => lacking(context, thing)), ...unlisted(context)],
};

function lacking(context: Context, thing: Obstruction): Draft[] {
  const lacks = lacksOf(context, thing);
  return lacks.map((lack) => ({
    severity: 'doubt',
    piece: thing.piece,
    slot: listSlot(context, thing.piece),
    subjects: [
      { on: 'obstruction', id: thing.id },
      { on: 'detail', id: lack },
    ],
    numbers: { lack },
    basis: [`treatment=${thing.treatment}`],
  }));
}

function lacksOf(context: Context, thing: Obstruction): ('treatment' | 'place' | 'size')[] {
  const treatment = treatmentOf(context, thing);
  if (treatment === null) return ['treatment'];
  if (treatment !== 'cut-out') return [];
  const lacks: ('place' | 'size')[] = [];
  if (!isTaped(context, thing)) lacks.push('place');
  if (extentOf(context.sheet, thing.id).most === 0) lacks.push('size');
  return lacks;
}

/** Two readings place a thing in a plane; whether they do so well enough is seen once the shape is known. */
const isTaped = ({ sheet }: Context, { point }: Obstruction): boolean =>
  point !== null &&
  sheet.readings.filter((reading) => reading.points.includes(point) && isMeasured(reading)).length >= 2;

function unlisted(context: Context): Draft[] {
  const { pieces, obstructions } = context.sheet;
  return pieces
    .filter(({ id }) => choiceOf(context, id, 'in-the-way') === 'listed')
    .filter(({ id }) => !obstructions.some(({ piece }) => piece === id))
    .map(({ id }) => ({
      severity: 'doubt',
      piece: id,
      slot: listSlot(context, id),
      subjects: [
        { on: 'question', id: 'in-the-way' },
        { on: 'piece', id },
      ],
      numbers: { lack: 'list' },
      basis: ['in-the-way=listed'],
    }));
}
