import { type Entry, type EntryKind, isErased, isKnownKind, type Payload, payloads } from './entries.ts';
import { Causality, causalOrder } from './order.ts';
import type { Carried } from './sheet.ts';

/** An entry whose payload was understood. */
export interface Act<K extends EntryKind> {
  entry: Entry;
  payload: Payload<K>;
}

/** The entries in force, by kind, in causal order. */
export interface Gathered {
  of<K extends EntryKind>(kind: K): readonly Act<K>[];
  causality: Causality;
  ordered: readonly Entry[];
  carried: Carried[];
  /** Entries of every kind, in force or not, that may change the sheet when they arrive. */
  isInForce(id: string): boolean;
}

/** Sorts a logbook into what counts: parsed, not undone, not erased. What is not understood is listed, not dropped. */
export function gather(entries: readonly Entry[]): Gathered {
  const ordered = causalOrder(entries);
  const inForce = inForceCheck(entries);
  const byKind = new Map<EntryKind, Act<EntryKind>[]>();
  const carried: Carried[] = [];
  for (const entry of ordered) {
    const { kind } = entry;
    if (!isKnownKind(kind)) {
      carried.push({ entry: entry.id, kind, why: 'unknown-kind' });
      continue;
    }
    if (isErased(entry)) {
      carried.push({ entry: entry.id, kind, why: 'erased' });
      continue;
    }
    const parsed = parsePayload(kind, entry);
    if (parsed === null) {
      carried.push({ entry: entry.id, kind, why: 'unreadable' });
      continue;
    }
    if (!inForce(entry.id)) continue;
    const act: Act<EntryKind> = { entry, payload: parsed };
    const list = byKind.get(kind);
    if (list) list.push(act);
    else byKind.set(kind, [act]);
  }
  return {
    of: <K extends EntryKind>(kind: K) => (byKind.get(kind) ?? []) as unknown as readonly Act<K>[],
    causality: new Causality(entries),
    ordered,
    carried,
    isInForce: inForce,
  };
}

/** Entries never change, so each is parsed once: a fold follows every take. */
const parsedPayloads = new WeakMap<Entry, Payload<EntryKind> | null>();

function parsePayload(kind: EntryKind, entry: Entry): Payload<EntryKind> | null {
  const before = parsedPayloads.get(entry);
  if (before !== undefined) return before;
  const parsed = payloads[kind].safeParse(entry.payload);
  const payload = parsed.success ? parsed.data : null;
  parsedPayloads.set(entry, payload);
  return payload;
}

/** Parses an entry's payload ahead of a fold, for callers that must not stand still for as long as a whole fold takes. */
export function parseAhead(entry: Entry): void {
  if (isKnownKind(entry.kind)) parsePayload(entry.kind, entry);
}

/** An entry is in force while no undo that is itself in force names it; so an undo can be undone. */
export function inForceCheck(entries: readonly Entry[]): (id: string) => boolean {
  const undoers = new Map<string, string[]>();
  for (const entry of entries) {
    if (entry.kind !== 'undo') continue;
    const parsed = payloads.undo.safeParse(entry.payload);
    if (!parsed.success) continue;
    const list = undoers.get(parsed.data.entry);
    if (list) list.push(entry.id);
    else undoers.set(parsed.data.entry, [entry.id]);
  }
  const known = new Map<string, boolean>();
  const inForce = (id: string, path: ReadonlySet<string>): boolean => {
    const before = known.get(id);
    if (before !== undefined) return before;
    // A ring of undos is nothing an honest device makes; breaking it here keeps the fold total.
    if (path.has(id)) return true;
    const deeper = new Set(path).add(id);
    const answer = !(undoers.get(id) ?? []).some((undo) => inForce(undo, deeper));
    if (path.size === 0) known.set(id, answer);
    return answer;
  };
  return (id) => inForce(id, new Set());
}

/** When and by whom, as the sheet shows it. */
export const signed = (entry: Entry): { at: string; who: Entry['who'] } => ({ at: entry.at, who: entry.who });

/** Marks an entry whose subject is not here yet: it takes effect when the rest of the logbook arrives. */
export function loose(gathered: Gathered, entry: Entry): void {
  gathered.carried.push({ entry: entry.id, kind: entry.kind, why: 'loose' });
}
