import type { Entry } from './entries.ts';
import type { Causality } from './order.ts';
import type { Dispute } from './sheet.ts';

interface Setting<V> {
  entry: Entry;
  value: V;
}

/**
 * Things that have one answer. A later answer replaces those it had seen; answers given at the same time that
 * differ are all kept as a dispute, and the smallest id stands in until a person settles it.
 */
export class Registers {
  readonly #settings = new Map<string, Setting<string>[]>();
  readonly #causality: Causality;
  readonly disputes: Dispute[] = [];

  constructor(causality: Causality) {
    this.#causality = causality;
  }

  set(key: string, entry: Entry, value: string): void {
    const list = this.#settings.get(key);
    if (list) list.push({ entry, value });
    else this.#settings.set(key, [{ entry, value }]);
  }

  /** The answer in force and the entry that gave it; reports a dispute about it once. */
  get(key: string, about: { on: string; piece: string | null; subject: string | null }): Setting<string> | undefined {
    const settings = this.#settings.get(key);
    if (!settings) return undefined;
    const latest = new Set(this.#causality.latest(settings.map((setting) => setting.entry.id)));
    const standing = settings
      .filter((setting) => latest.has(setting.entry.id))
      .sort((a, b) => (a.entry.id < b.entry.id ? -1 : 1));
    if (new Set(standing.map((setting) => setting.value)).size > 1) {
      this.disputes.push({
        ...about,
        answers: standing.map(({ entry, value }) => ({ entry: entry.id, value, at: entry.at, who: entry.who })),
      });
    }
    return standing[0];
  }
}
