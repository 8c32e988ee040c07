import type { Finding } from '../check/index.ts';
import { FACT_KINDS, type Sheet, type SheetReading } from '../job/index.ts';
import { looksOf, secondLooks } from './second-looks.ts';

/** Second looks: all that are to come or were taken, and those taken. last: looks after the second that are due now. */
export interface LooksAhead {
  all: number;
  done: number;
  last: number;
}

/**
 * How many looks after the first an owner's job comes to, and how many of them are done: one more at everything needed, from the
 * first step on, so that nobody is surprised by them; others from when they are asked for, and they stay counted once they are
 * taken. What was answered without a value, or taken by somebody else, needs none.
 */
export function looksAhead(sheet: Sheet, findings: readonly Finding[], piece: string | null = null): LooksAhead {
  const due = secondLooks(sheet, findings).filter((look) => piece === null || look.piece === piece);
  const asked = new Set(due.flatMap(({ look, reading }) => (look === 2 ? [reading] : [])));
  const wanted = sheet.readings.filter(
    (reading) =>
      (piece === null || reading.piece === piece) &&
      (isReadTwice(reading) || asked.has(reading.id) || wasReadTwice(reading)),
  );
  return {
    all: wanted.length,
    done: wanted.filter((reading) => looksOf(reading).length > 1).length,
    last: due.length - asked.size,
  };
}

function isReadTwice(reading: SheetReading): boolean {
  const { kind, needed, slot, answer, supposed } = reading;
  const station = kind === 'running' && slot === null;
  return needed && !FACT_KINDS.has(kind) && !station && answer === null && supposed === null && byOwnerAlone(reading);
}

const wasReadTwice = (reading: SheetReading): boolean => looksOf(reading).length > 1 && byOwnerAlone(reading);

const byOwnerAlone = (reading: SheetReading): boolean => !looksOf(reading).some(({ who }) => who.role !== 'owner');
