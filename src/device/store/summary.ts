import { stepsOf } from '../../core/guide/steps.ts';
import { type Entry, fold, heads, isKnownKind, payloads, type Sheet } from '../../core/job/index.ts';
import { type JobRecord, type JobStanding, type JobSummary, type OwnFacts, STANDING_EDITION } from './schema.ts';

export const NO_FACTS: OwnFacts = { lastCopy: null, archived: false };

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

/**
 * The summary after one more entry of this device: cheap, and exact while the entry names the heads. What only a
 * fold can tell is left open: how far the job is now, and after an undo, or an entry that comes late or beside
 * another, the names too. The list makes it anew when somebody looks.
 */
export function extend(record: JobRecord, entry: Entry): JobRecord {
  const seen = new Set(entry.seen);
  const inOrder = record.heads.every((id) => seen.has(id));
  const next: JobRecord = {
    ...record,
    entries: record.entries + 1,
    lastAt: later(record.lastAt, entry.at),
    heads: [...record.heads.filter((id) => !seen.has(id)), entry.id].sort(),
    standing: null,
    stale: record.stale || !inOrder || entry.kind === 'undo' || entry.kind === 'erase',
    erasures: record.erasures || entry.kind === 'erase',
  };
  return isKnownKind(entry.kind) ? applyKnown(next, entry) : next;
}

function applyKnown(record: JobRecord, { kind, payload }: Entry): JobRecord {
  if (kind === 'job.open') {
    const opened = payloads['job.open'].safeParse(payload);
    if (opened.success) return { ...record, name: opened.data.name, demo: opened.data.demo ?? false };
  }
  if (kind === 'job.detail') {
    const detail = payloads['job.detail'].safeParse(payload);
    if (!detail.success) return record;
    const { field, value } = detail.data;
    if (field === 'name' || field === 'customer' || field === 'boat') return { ...record, [field]: value };
  }
  if (kind === 'piece.add') {
    const piece = payloads['piece.add'].safeParse(payload);
    if (!piece.success || record.pieces.some(({ id }) => id === piece.data.id)) return record;
    const { id, kind: pieceKind, name } = piece.data;
    return { ...record, pieces: [...record.pieces, { id, kind: pieceKind, name }] };
  }
  return record;
}

/** What a screen may see of a record. */
export function shown({ stale: _stale, erasures: _erasures, ...summary }: JobRecord): JobSummary {
  return summary;
}

function later(a: string | null, b: string): string {
  return a !== null && Date.parse(a) >= Date.parse(b) ? a : b;
}
