import { Causality, type Entry, type Sheet } from '../job/index.ts';
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

/** Enough of a seal to tell one state of a job from another by eye. */
export const shortState = ({ seal }: Pick<StateMark, 'seal'>): string => seal.slice(0, 8);

/** The state of a job, and the one that was judged when a piece of it was cleared to cut; null where no clearance stands. */
export interface PieceState extends StateMark {
  readonly judged: StateMark | null;
}

export function stateOfPiece(entries: readonly Entry[], sheet: Sheet, piece: string): PieceState {
  const clearance = standingClearance(sheet, piece);
  const known = clearance ? new Causality(entries).past(clearance.judged) : new Set();
  return { ...stateOf(entries), judged: clearance && stateOf(entries.filter(({ id }) => known.has(id))) };
}

/** The clearance that stands for a piece; null where there is none, or where something has changed since. */
export const standingClearance = (sheet: Sheet, piece: string): Sheet['clearances'][number] | null =>
  sheet.clearances.findLast((one) => one.piece === piece && one.voidedBy.length === 0) ?? null;
