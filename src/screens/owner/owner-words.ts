import type { Sheet, SheetReading } from '../../core/job/index.ts';
import { sayGuide } from '../../text/guide.ts';
import { sayOwner } from '../../text/owner.ts';
import { readingInstruction, wordsOfPoint } from '../dock/step-words.ts';
import { pointLabel, wordsOfPiece } from '../model/words.ts';

/** A point with what it is and where on it: P2 (port edge, on the line you chose). */
function spotOf(sheet: Sheet, id: string): string {
  const known = wordsOfPoint(sheet, id);
  return sayGuide().spot(pointLabel(sheet, id), [known?.name, known?.where]);
}

/** What to do with the tape, in an owner's words where the trade's are short; the guide's own sentence where it has one. */
export function ownerInstruction(reading: SheetReading, sheet: Sheet): { text: string; mistake: string | null } {
  const { sentences, mistake } = readingInstruction(reading, sheet);
  const own = reading.slot === null ? undefined : wordsOfPiece(sheet, reading.piece)?.readings?.[reading.slot];
  const words = sayOwner().look;
  const [a, b] = reading.points;
  if (own || a === undefined) return { text: sentences.join(' '), mistake };
  const from = spotOf(sheet, a);
  const to = b === undefined ? null : spotOf(sheet, b);
  if (reading.kind === 'straight' && to !== null) return { text: words.straight(from, to), mistake };
  if (reading.kind === 'girth' && to !== null) return { text: words.girth(from, to), mistake };
  if (reading.kind === 'height' && (reading.baseline ?? []).length === 0) return { text: words.height(from), mistake };
  return { text: sentences.join(' '), mistake };
}
