import { type Entry, ERASED, isErased, payloads } from './entries.ts';
import { sameContent } from './same-content.ts';

export interface Merged {
  entries: Entry[];
  /** Ids that are new to the first logbook. */
  added: string[];
  /** Entries of the second logbook that carry an id of the first with other content: reported, never merged. */
  setAside: Entry[];
}

/**
 * The union of two logbooks of one job: commutative, associative and idempotent over logbooks of honest devices.
 * An erasure wins over the content it withdraws, from whichever side it comes. Where one id has two contents, what
 * is already here stays and the other is set aside.
 */
export function merge(here: readonly Entry[], there: readonly Entry[]): Merged {
  const known = new Map(here.map((entry) => [entry.id, entry]));
  const erased = erasedIds([...here, ...there]);
  const added: string[] = [];
  const setAside: Entry[] = [];
  for (const entry of there) {
    const mine = known.get(entry.id);
    if (!mine) {
      known.set(entry.id, entry);
      added.push(entry.id);
    } else if (!sameEntry(mine, entry, erased)) setAside.push(entry);
  }
  const entries = [...known.values()]
    .map((entry) => (erased.has(entry.id) ? withoutContent(entry) : entry))
    .sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
  return { entries, added: added.sort(), setAside };
}

function sameEntry(a: Entry, b: Entry, erased: ReadonlySet<string>): boolean {
  if (!erased.has(a.id)) return sameContent(a, b);
  return sameContent(withoutContent(a), withoutContent(b));
}

function withoutContent(entry: Entry): Entry {
  return isErased(entry) ? entry : { ...entry, payload: { ...ERASED } };
}

/** An erasure itself cannot be erased: otherwise what it withdrew could come back. */
function erasedIds(entries: readonly Entry[]): ReadonlySet<string> {
  const erasures = entries.filter((entry) => entry.kind === 'erase');
  const protectedIds = new Set(erasures.map((entry) => entry.id));
  const erased = new Set<string>();
  for (const entry of erasures) {
    const parsed = payloads.erase.safeParse(entry.payload);
    if (!parsed.success) continue;
    for (const id of parsed.data.entries) if (!protectedIds.has(id)) erased.add(id);
  }
  return erased;
}
