import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { SheetPiece } from '../../../core/job/index.ts';
import { type Drawing, factsOf, type Paper, scaledPlan, stateOfPiece } from '../../../core/packet/drawing/index.ts';
import { sayDrawing } from '../../../text/drawing.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { OpenJob } from '../../model/open-job.ts';
import type { Route } from '../../model/route.ts';
import { lengthText } from '../../model/words.ts';
import { type Frame, Pages } from '../../paper/Pages.tsx';
import { PrintBar } from '../../paper/PrintBar.tsx';
import { PointsHead, ReadingsHead } from './ReadingBlocks.tsx';
import { SheetFoot, SheetTop } from './SheetEdges.tsx';
import { sheetBlocks } from './sheet-blocks.tsx';
import { type SheetContent, WIDTHS } from './sheet-content.ts';
import { usePhotoUrls } from './use-photo-urls.ts';

interface Props {
  job: OpenJob;
  piece: SheetPiece;
  drawing: Drawing | null;
  paper: Paper;
  back: Route;
  controls: ComponentChildren;
}

/** A plan no higher than this leaves room for the head and the foot of its page, mm. */
const PLAN_HEIGHT = 175;

/** All that the bench knows of a piece, page by page as it will be printed. */
export function JobSheet({ job, piece, drawing, paper, back, controls }: Props) {
  const words = saySheet();
  const photos = job.sheet.photos.filter((photo) => photo.piece === piece.id);
  const urls = usePhotoUrls(photos.map(({ sha256 }) => sha256));
  const content = useMemo(
    () => (job.judged && urls ? contentOf({ job, piece, drawing, paper, photos, urls }) : null),
    [job, piece, drawing, paper, urls],
  );
  return (
    <>
      <PrintBar words={words} back={back} ready={content !== null}>
        {controls}
      </PrintBar>
      {content && <Pages blocks={sheetBlocks(content)} frame={frameOf(content)} content={content} />}
    </>
  );
}

function contentOf(known: Omit<SheetContent, 'facts' | 'plan'>): SheetContent {
  const { job, piece, drawing, paper } = known;
  const of = stateOfPiece(job.entries, job.sheet, piece.id);
  const room = { width: WIDTHS[paper], height: PLAN_HEIGHT };
  return {
    ...known,
    facts: factsOf(job.sheet, piece.id, of, sayDrawing()),
    plan: drawing && scaledPlan(drawing, room, sayDrawing(), (mm) => lengthText(mm, job.sheet)),
  };
}

const frameOf = (content: SheetContent): Frame => ({
  paper: content.paper,
  heads: { readings: () => <ReadingsHead />, points: () => <PointsHead content={content} /> },
  top: () => <SheetTop content={content} />,
  foot: (page, of) => <SheetFoot content={content} page={page} of={of} />,
});
