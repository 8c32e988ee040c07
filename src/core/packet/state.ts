import type { Entry } from '../job/index.ts';
import { sealOf } from './seal.ts';

/** Which state of a job a drawing or a print was made from. */
export interface StateMark {
  /** SHA-256 over the logbook alone (RFC 8785), the same on every device that has the same entries. */
  readonly seal: string;
  readonly entries: number;
  /** When the latest entry was made, by its device's clock; null for a job without entries. */
  readonly latest: string | null;
}

/** The mark of a logbook, in whatever order its entries are given. */
export function stateOf(entries: readonly Entry[]): StateMark {
  const logbook = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1));
  const latest = entries.reduce<string | null>((most, { at }) => (most === null || at > most ? at : most), null);
  return { seal: sealOf({ logbook }), entries: entries.length, latest };
}
