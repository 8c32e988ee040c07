import type { Entry, EntryKind } from './entries.ts';
import { inForceCheck } from './gather.ts';
import type { Role } from './words.ts';

/** Undo stops here: what these begin is not taken back by a thumb that slipped. */
const BEGINNINGS: ReadonlySet<string> = new Set<EntryKind>([
  'job.open',
  'job.request',
  'piece.add',
  'practice.done',
  'erase',
  'piece.clear',
]);

/** What undo would take back next: the last entry of this role's own hand that is still in force. Null: nothing. */
export function nextToTakeBack(entries: readonly Entry[], role: Role): Entry | null {
  const inForce = inForceCheck(entries);
  for (const entry of [...entries].reverse()) {
    if (entry.kind === 'undo' || !inForce(entry.id)) continue;
    if (BEGINNINGS.has(entry.kind)) return null;
    if (entry.who.role === role) return entry;
  }
  return null;
}

/**
 * Ids of what goes with an entry when it is taken back, the latest first: everything the same act did, its own undos
 * among it, so that a mark that was moved is where it was before.
 */
export function takenBackWith(entries: readonly Entry[], entry: Entry): string[] {
  const inForce = inForceCheck(entries);
  return entries
    .filter(
      ({ id, kind, batch }) =>
        id === entry.id || (batch !== undefined && batch === entry.batch && !BEGINNINGS.has(kind) && inForce(id)),
    )
    .map(({ id }) => id)
    .reverse();
}
