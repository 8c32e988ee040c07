import { aboutReading, takeIds } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * The shop goes by a value that a slip explains, and nobody has put the tape there again: note, for as long as it does.
 * numbers: value (what counts, mm or rad), read (what was typed last), slip (its kind).
 */
export const notMeasuredAgain: Rule = {
  key: 'not-measured-again',
  find: (context) =>
    context.sheet.readings.flatMap((reading) => {
      const { supposed, piece, takes } = reading;
      if (!supposed) return [];
      const read = takes.filter(({ struck }) => struck === null).at(-1)?.text ?? null;
      return [
        {
          severity: 'note' as const,
          piece,
          slot: context.slotOf(reading),
          subjects: [aboutReading(reading)],
          numbers: { value: supposed.value, read, slip: supposed.slip },
          basis: takeIds(reading),
        },
      ];
    }),
};
