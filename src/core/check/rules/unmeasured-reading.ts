import type { SheetReading } from '../../job/index.ts';
import { aboutReading, type Context } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * A needed reading answered without a value. 'could-not': the thing is there and the cloth depends on it, so nothing can be
 * cut: stop. 'none-here': the boat may well lack it, but the guide thought otherwise: doubt. Where the other readings fix
 * every point all the same, it is only a note; whether they do so well enough is for the engine's own rules.
 * numbers: kind, answer ('could-not' or 'none-here'), reason (as typed).
 */
export const unmeasuredReading: Rule = {
  key: 'unmeasured-reading',
  find: (context) =>
    context.sheet.readings.flatMap((reading) => {
      const { answer, needed, value } = reading;
      if (!needed || answer === null || value !== null) return [];
      return [
        {
          severity: isSpared(context, reading) ? 'note' : answer.answer === 'could-not' ? 'stop' : 'doubt',
          piece: reading.piece,
          slot: context.slotOf(reading),
          subjects: [aboutReading(reading)],
          numbers: { kind: reading.kind, answer: answer.answer, reason: answer.reason },
          // The sheet keeps no id of the answer; when it was given tells one from the next.
          basis: [`${answer.answer}@${answer.at}`],
        },
      ];
    }),
};

/** Whether the piece has its whole shape without this reading. Heights of a flat piece are no part of its shape. */
function isSpared(context: Context, reading: SheetReading): boolean {
  const judgement = context.judgement(reading.piece);
  if (judgement?.adjustment.state !== 'solved') return false;
  const placed = new Set(judgement.network.points.map((point) => point.id));
  return reading.kind === 'straight' && reading.points.every((point) => placed.has(point));
}
