import { sketchPiece } from '../../../core/cloth/index.ts';
import { type Drawing, makePlan, stateOfPiece } from '../../../core/packet/drawing/index.ts';
import { sayDrawing } from '../../../text/drawing.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { adjustedPlaces } from '../../model/sureness.ts';
import { placesOf } from '../drawing/scene.ts';
import { engineView } from './engine-view.ts';

/** A piece of the open job as it is drawn for files and in real size, from everything that was read; null where there is nothing to draw. */
export function planOf({ sheet, pieces, entries }: OpenJob, piece: string): Drawing | null {
  const judgement = pieces.get(piece);
  const { places } = sketchPiece(sheet, piece, adjustedPlaces(judgement));
  const adjusted = judgement?.adjustment.state === 'solved';
  return makePlan({ sheet, piece, places, adjusted, of: stateOfPiece(entries, sheet, piece), words: sayDrawing() });
}

/** The same as the bench shows it: without a reading that does not fit, where the others fix the shape without it. */
export function shownPlanOf(job: OpenJob, piece: string): Drawing | null {
  const shown = engineView(job, piece);
  if (!shown?.shown || shown.without.length === 0) return planOf(job, piece);
  const { sheet, entries } = job;
  const places = placesOf(sheet, piece, shown.shown);
  return makePlan({
    sheet,
    piece,
    places,
    adjusted: shown.solved,
    of: stateOfPiece(entries, sheet, piece),
    words: sayDrawing(),
  });
}
