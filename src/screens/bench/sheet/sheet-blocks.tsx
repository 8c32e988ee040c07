import { saySheet } from '../../../text/sheet.ts';
import type { Block } from '../../paper/blocks.tsx';
import { inWalkingOrder } from '../sections/ReadingsSection.tsx';
import { engineView } from '../state/engine-view.ts';
import { plain, under } from './block-parts.tsx';
import { answerBlocks, cautionBlocks, noteBlocks, thingBlocks } from './CloseBlocks.tsx';
import { decisionBlocks } from './DecisionBlocks.tsx';
import { edgeBlocks } from './EdgeBlocks.tsx';
import { photoBlocks } from './PhotoBlocks.tsx';
import { PlanBlock } from './PlanBlock.tsx';
import { isShapeApart, PointLine, pointsOf, ReadingLine, ShapeNote } from './ReadingBlocks.tsx';
import type { SheetContent } from './sheet-content.ts';

/** The job sheet from its plan to its photos: what the bench looks at first comes first. */
export function sheetBlocks(content: SheetContent): Block[] {
  const words = saySheet();
  return [
    plain('plan', () => <PlanBlock content={content} />),
    ...decisionBlocks(content),
    ...under('cautions', words.cautions, cautionBlocks(content)),
    ...under('readings', words.readings, [...shapeNote('readings', content), ...readingBlocks(content)]),
    ...under('edges', words.edges, edgeBlocks(content)),
    ...under('things', words.things, thingBlocks(content)),
    ...under('points', words.points, [...shapeNote('points', content), ...pointBlocks(content)]),
    ...under('answers', words.answers, answerBlocks(content)),
    ...under('notes', words.notes, noteBlocks(content)),
    ...under('photos', words.photos, photoBlocks(content)),
  ];
}

const shapeNote = (over: string, content: SheetContent): Block[] =>
  isShapeApart(content) ? [{ ...plain(`shape of ${over}`, () => <ShapeNote content={content} />), keep: true }] : [];

function readingBlocks({ job, piece }: SheetContent): Block[] {
  const engine = engineView(job, piece.id);
  const stations = new Set(job.sheet.runs.flatMap((run) => run.stations));
  return inWalkingOrder(job, piece.id)
    .filter(({ id, needed, state }) => !stations.has(id) && (needed || state !== 'open'))
    .map((reading) => ({
      ...plain(`reading ${reading.id}`, () => <ReadingLine reading={reading} sheet={job.sheet} engine={engine} />),
      columns: 'readings',
    }));
}

function pointBlocks(content: SheetContent): Block[] {
  return (pointsOf(content)?.points ?? []).map((point) => ({
    ...plain(`point ${point.id}`, () => <PointLine point={point} content={content} />),
    columns: 'points',
  }));
}
