import { aboutReading } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * A needed reading answered without a value. 'could-not': the thing is there and the cloth depends on it, so nothing can be
 * cut: stop. 'none-here': the boat may well lack it, but the guide thought otherwise: doubt.
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
          severity: answer.answer === 'could-not' ? 'stop' : 'doubt',
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
