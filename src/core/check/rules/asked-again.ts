import type { Ask } from '../../job/index.ts';
import type { Context } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * Something the shop asked for again and nobody who knew of it has answered: stop, at the gate to the cutting table.
 * numbers: note (the shop's words).
 */
export const askedAgain: Rule = {
  key: 'asked-again',
  find: (context) =>
    context.sheet.asks.flatMap((ask) =>
      ask.items
        .filter((item) => item.open)
        .map((item) => ({
          severity: 'stop',
          piece: ask.piece,
          slot: slotOf(context, ask.piece, item),
          subjects: [
            { on: item.on, id: item.id },
            { on: 'entry', id: ask.id },
          ],
          numbers: { note: item.note === '' ? ask.note : item.note },
          basis: [ask.id],
        })),
    ),
};

function slotOf(context: Context, piece: string, { on, id }: Ask['items'][number]): string | null {
  const isIt = (thing: { piece: string; slot: string }): boolean => thing.piece === piece && thing.slot === id;
  if (on === 'shot') return context.sheet.shots.find(isIt)?.slot ?? null;
  if (on === 'question') return context.sheet.questions.find(isIt)?.slot ?? null;
  if (on === 'run') return context.runs.get(id)?.slot ?? id;
  const reading = context.readings.get(id);
  return reading ? context.slotOf(reading) : null;
}
