import { FACT_KINDS } from '../../job/index.ts';
import { aboutReading } from '../context.ts';
import type { Rule } from '../rule.ts';

/**
 * A reading that was asked for and has neither value nor answer. Needed: stop. Only wished for: note.
 * Declared facts (flat, level, ...) are not taped, so they are never missing.
 * numbers: kind (word of the model).
 */
export const missingReading: Rule = {
  key: 'missing-reading',
  find: (context) =>
    context.sheet.readings
      .filter((reading) => reading.state === 'open' && !FACT_KINDS.has(reading.kind))
      .map((reading) => ({
        severity: reading.needed ? 'stop' : 'note',
        piece: reading.piece,
        slot: context.slotOf(reading),
        subjects: [aboutReading(reading)],
        numbers: { kind: reading.kind },
        basis: [],
      })),
};
