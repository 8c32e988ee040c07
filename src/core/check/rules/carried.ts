import type { Draft, Rule } from '../rule.ts';

/**
 * Entries that have no effect here. Not understood ('unknown-kind', 'unreadable'): doubt, because a newer app may have said
 * something that matters. Waiting for the rest of their logbook ('loose'): note. Erased ones were meant to go: silent.
 * One finding for each reason and kind; the subject is the detail `why:kind`, the entries are listed by the sheet.
 * numbers: why, kind (of entry), entries (how many).
 */
export const carried: Rule = {
  key: 'carried',
  find(context) {
    const groups = new Map<string, { why: string; kind: string; entries: Set<string> }>();
    for (const { entry, kind, why } of context.sheet.carried) {
      if (why === 'erased') continue;
      const key = `${why}:${kind}`;
      const group = groups.get(key) ?? { why, kind, entries: new Set() };
      group.entries.add(entry);
      groups.set(key, group);
    }
    return [...groups].map(
      ([key, { why, kind, entries }]): Draft => ({
        severity: why === 'loose' ? 'note' : 'doubt',
        piece: null,
        slot: null,
        subjects: [{ on: 'detail', id: key }],
        numbers: { why, kind, entries: entries.size },
        basis: [...entries],
      }),
    );
  },
};
