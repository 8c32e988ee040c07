import type { Entry } from './entries.ts';

/** The entries nobody has seen yet: what the next entry must name. */
export function heads(entries: readonly Entry[]): string[] {
  const seen = new Set<string>();
  for (const entry of entries) for (const id of entry.seen) seen.add(id);
  return entries
    .map((entry) => entry.id)
    .filter((id) => !seen.has(id))
    .sort();
}

/**
 * Causal order: after everything an entry had seen, ties by id, never by a clock. Deterministic for a set of
 * entries whatever order they arrive in. Names of entries not here (half a packet) are passed over. A ring of
 * entries that claim to have seen each other, which no honest device makes, is broken at the smallest id.
 */
export function causalOrder(entries: readonly Entry[]): Entry[] {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const waiting = new Map<string, number>();
  const followers = new Map<string, string[]>();
  for (const entry of byId.values()) {
    const before = new Set(entry.seen.filter((id) => byId.has(id) && id !== entry.id));
    waiting.set(entry.id, before.size);
    for (const id of before) {
      const list = followers.get(id);
      if (list) list.push(entry.id);
      else followers.set(id, [entry.id]);
    }
  }
  const ready = new MinHeap([...waiting].filter(([, count]) => count === 0).map(([id]) => id));
  const ordered: Entry[] = [];
  const release = (id: string): void => {
    const entry = byId.get(id);
    if (!entry || !waiting.delete(id)) return;
    ordered.push(entry);
    for (const next of followers.get(id) ?? []) {
      const count = waiting.get(next);
      if (count === undefined) continue;
      waiting.set(next, count - 1);
      if (count === 1) ready.push(next);
    }
  };
  while (waiting.size > 0) {
    const id = ready.pop() ?? [...waiting.keys()].sort()[0];
    if (id === undefined) break;
    release(id);
  }
  return ordered;
}

/** Answers "had `later` seen `earlier`?" for a set of entries. */
export class Causality {
  readonly #byId: ReadonlyMap<string, Entry>;
  readonly #past = new Map<string, ReadonlySet<string>>();

  constructor(entries: readonly Entry[]) {
    this.#byId = new Map(entries.map((entry) => [entry.id, entry]));
  }

  /** Ids of everything these entries had seen, themselves included. */
  past(ids: readonly string[]): ReadonlySet<string> {
    const found = new Set<string>();
    const stack = [...ids];
    for (let id = stack.pop(); id !== undefined; id = stack.pop()) {
      if (found.has(id)) continue;
      found.add(id);
      for (const before of this.#byId.get(id)?.seen ?? []) stack.push(before);
    }
    return found;
  }

  saw(later: string, earlier: string): boolean {
    if (later === earlier) return false;
    let past = this.#past.get(later);
    if (!past) {
      past = this.past([later]);
      this.#past.set(later, past);
    }
    return past.has(earlier);
  }

  /** Those of the ids that none of the others had seen: one, unless people answered at the same time. */
  latest(ids: readonly string[]): string[] {
    if (ids.length < 2) return [...ids];
    return ids.filter((id) => !ids.some((other) => this.saw(other, id))).sort();
  }
}

class MinHeap {
  readonly #items: string[] = [];

  constructor(items: readonly string[]) {
    for (const item of items) this.push(item);
  }

  push(item: string): void {
    const items = this.#items;
    let at = items.push(item) - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const above = items[parent] as string;
      if (above <= item) break;
      items[at] = above;
      at = parent;
    }
    items[at] = item;
  }

  pop(): string | undefined {
    const items = this.#items;
    const top = items[0];
    const last = items.pop();
    if (top === undefined || last === undefined || items.length === 0) return top;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= items.length) break;
      if (child + 1 < items.length && (items[child + 1] as string) < (items[child] as string)) child += 1;
      const below = items[child] as string;
      if (below >= last) break;
      items[at] = below;
      at = child;
    }
    items[at] = last;
    return top;
  }
}
