import type { Sheet } from '../../job/index.ts';
import { type PieceState, shortState, standingClearance } from '../state.ts';
import type { DrawingWords, PieceFacts } from './drawing.ts';

/** An instant as paper says it, the same on every device. */
const paperTime = (iso: string): string => `${iso.slice(0, 16).replace('T', ' ')} UTC`;

/** What every paper about a piece says of it. of: the state it was made from. */
export function factsOf(sheet: Sheet, piece: string, of: PieceState, words: DrawingWords): PieceFacts {
  const { name, customer, boat } = sheet.details;
  const clearance = standingClearance(sheet, piece);
  const judged = shortState(of.judged ?? of);
  return {
    // A name may be made of the other two already.
    job: [name, ...[customer, boat].filter((one) => !name.includes(one))].filter(Boolean).join(' · '),
    piece: sheet.pieces.find(({ id }) => id === piece)?.name ?? '',
    demo: sheet.demo ? words.demo : null,
    isCleared: clearance !== null,
    cleared: clearance
      ? words.cleared(clearance.who.name || words.nameless, paperTime(clearance.at), judged)
      : words.notCleared,
    state: words.state(shortState(of), of.entries, of.latest ? paperTime(of.latest) : ''),
    seal: words.seal(of.seal),
  };
}
