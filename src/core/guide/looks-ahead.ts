import type { Finding } from '../check/index.ts';
import { FACT_KINDS, type Sheet, type SheetReading } from '../job/index.ts';
import { looksOf, secondLooks } from './second-looks.ts';

/**
 * How many looks after the first an owner's job comes to, and how many of them are done: one more at everything needed, from the
 * first step on, so that nobody is surprised by them; others from when they are asked for. What was answered without a value,
 * or taken by somebody else, needs none.
 */
export function looksAhead(sheet: Sheet, findings: readonly Finding[]): { all: number; done: number } {
  const due = secondLooks(sheet, findings);
  const wanted = sheet.readings.filter(isReadTwice);
  const twice = new Set(wanted.map(({ id }) => id));
  const besides = due.filter(({ look, reading }) => look === 3 || !twice.has(reading)).length;
  const done = wanted.filter((reading) => looksOf(reading).length > 1).length;
  return { all: wanted.length + besides, done };
}

function isReadTwice(reading: SheetReading): boolean {
  const { kind, needed, slot, answer, supposed } = reading;
  const station = kind === 'running' && slot === null;
  const others = looksOf(reading).some(({ who }) => who.role !== 'owner');
  return needed && !FACT_KINDS.has(kind) && !station && answer === null && supposed === null && !others;
}
