import * as z from 'zod/mini';
import { Causality, causalOrder, Entry, Id } from '../../job/index.ts';

/** What the shop asks again of a job, as the entries that say so. */
export const AskAgain = z.object({
  job: Id,
  entries: z.array(Entry).check(
    z.minLength(1),
    z.maxLength(300),
    // A link asks and tells; it never withdraws what somebody measured, and speaks for nobody but the shop.
    z.refine((entries) => entries.every(({ kind, who }) => kind !== 'erase' && who.role === 'bench')),
    z.refine((entries) => entries.some(({ kind }) => kind === 'ask.again')),
  ),
});
export type AskAgain = z.infer<typeof AskAgain>;

/**
 * What of a logbook a device at the dock may lack: what the shop did that nobody at the dock has seen. Among it is every
 * asking that is not answered yet, and all it speaks of that is not from the dock itself.
 */
export function entriesForDock(entries: readonly Entry[]): Entry[] {
  const isOfDock = ({ who }: Entry): boolean => who.role !== 'bench';
  const there = new Causality(entries).past(entries.filter(isOfDock).map(({ id }) => id));
  return causalOrder(entries).filter((entry) => !there.has(entry.id) && !isOfDock(entry) && entry.kind !== 'erase');
}

/** In few characters: the job is named once. */
export const shortAsk = ({ job, entries }: AskAgain): Record<string, unknown> => ({
  j: job,
  e: entries.map(({ job: _, ...entry }) => entry),
});

export function longAsk(short: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { j: job, e: entries } = short;
  return { job, entries: Array.isArray(entries) ? entries.map((entry) => ({ ...entry, job })) : entries };
}
