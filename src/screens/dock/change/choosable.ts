import type { Sheet } from '../../../core/job/index.ts';
import { wordsOfPoint } from '../step-words.ts';

export interface Choosable {
  id: string;
  /** Its label alone. */
  name: string;
  /** Its label and what it is. */
  told: string;
}

/** The points of a piece that a tape can be held to, as they are chosen from. */
export function choosable(sheet: Sheet, piece: string): Choosable[] {
  return sheet.points
    .filter(({ pieces, replacedBy }) => pieces.includes(piece) && replacedBy === null)
    .map(({ id, label }) => {
      const what = wordsOfPoint(sheet, id)?.name;
      return { id, name: label, told: what ? `${label}, ${what}` : label };
    });
}
