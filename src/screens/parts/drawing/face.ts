import { type Face, faceOf } from '../../../core/geometry/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import type { PieceWords } from '../../../text/guides.ts';
import { say } from '../../../text/index.ts';
import type { View } from './project.ts';

/** The view for a piece, by the layout of its guide: it does not turn while readings come in. */
export const faceOfPiece = (sheet: Sheet, piece: string): Face =>
  faceOf(sheet.points.flatMap(({ pieces, nominal }) => (nominal && pieces.includes(piece) ? [nominal] : [])));

/** From where a drawing is seen; a piece that may lie or hang anywhere on the boat has words of its own for it. */
export const seenFrom = (view: View, words: PieceWords | undefined): string =>
  view === 'slant' ? say().general.views.slant : (words?.seen ?? say().general.views[view]);
