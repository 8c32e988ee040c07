import { stepsOf } from '../../core/guide/steps.ts';
import { type Entry, fold, heads, type Sheet } from '../../core/job/index.ts';
import { type JobRecord, type JobStanding, type JobSummary, type OwnFacts, STANDING_EDITION } from './schema.ts';
import { later, NO_FACTS } from './summary.ts';

export { parseAhead } from '../../core/job/index.ts';

/** What the sheet and the logbook say of a job, for its line in the list. */
export function summaryOf(sheet: Sheet, entries: readonly Entry[]): Omit<JobSummary, 'id' | keyof OwnFacts> {
  const { details, pieces, demo } = sheet;
  return {
    name: details.name,
    customer: details.customer,
    boat: details.boat,
    pieces: pieces.map(({ id, kind, name }) => ({ id, kind, name })),
    entries: entries.length,
    lastAt: entries.reduce<string | null>((latest, { at }) => later(latest, at), null),
    heads: heads(entries),
    demo,
    standing: standingOf(sheet, entries),
  };
}

/** The summary of a whole logbook. */
export function summarise(job: string, entries: readonly Entry[], facts: OwnFacts = NO_FACTS): JobRecord {
  return {
    id: job,
    ...summaryOf(fold(entries), entries),
    lastCopy: facts.lastCopy,
    archived: facts.archived,
    stale: false,
    erasures: entries.some((entry) => entry.kind === 'erase'),
  };
}

/** How far a job is, from its sheet. */
function standingOf(sheet: Sheet, entries: readonly Entry[]): JobStanding {
  const steps = sheet.pieces.flatMap((piece) => stepsOf(sheet, piece.id));
  const count = (...states: string[]): number => steps.filter(({ state }) => states.includes(state)).length;
  const cleared = new Set(sheet.clearances.filter(({ voidedBy }) => voidedBy.length === 0).map(({ piece }) => piece));
  const ever = new Set(sheet.clearances.map(({ piece }) => piece));
  const pieces = sheet.pieces.map(({ id }) => id);
  return {
    edition: STANDING_EDITION,
    steps: steps.length,
    done: count('done', 'answered-without-value'),
    asked: count('asked-again'),
    cleared: pieces.filter((id) => cleared.has(id)).length,
    voided: pieces.filter((id) => ever.has(id) && !cleared.has(id)).length,
    ...(isWaiting(sheet, entries) ? { waiting: true } : {}),
  };
}

/** A shop asked for it, and nobody at the dock has done anything in it. */
const isWaiting = (sheet: Sheet, entries: readonly Entry[]): boolean =>
  sheet.request !== null && entries.every(({ who }) => who.role === 'bench');
