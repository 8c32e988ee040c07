import { shownPlaces } from '../../../core/check/index.ts';
import { sketchPiece } from '../../../core/cloth/index.ts';
import { type Drawing, makePlan, stateOfPiece } from '../../../core/packet/drawing/index.ts';
import { sayDrawing } from '../../../text/drawing.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { readingTitle } from '../names.ts';
import { engineView } from './engine-view.ts';

/** A piece of the open job as it is drawn on paper and in files: the shape the bench shows; null where there is nothing to draw. */
export function planOf(job: OpenJob, piece: string): Drawing | null {
  const { sheet, entries } = job;
  const shape = engineView(job, piece);
  const { solved: adjusted = false, bent = false, without = [] } = shape ?? {};
  return makePlan({
    sheet,
    piece,
    places: sketchPiece(sheet, piece, shownPlaces(shape)).places,
    adjusted,
    bent,
    without: without.map((id) => readingTitle(sheet, id)),
    of: stateOfPiece(entries, sheet, piece),
    words: sayDrawing(),
  });
}
