import type { Step } from '../../core/guide/index.ts';
import { sayOwner } from '../../text/owner.ts';
import { stepTitle } from '../dock/step-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { go, type Route, routeHash } from '../model/route.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { Lesson } from '../parts/lesson/Lesson.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { tell } from './told.ts';

type AtStep = Extract<Route, { at: 'step' }>;

/** The step that waits while marks are put up. */
let waiting: AtStep | null = null;

/** In place of that step: why a bit of tape with a number on each point, and where that is shown. */
export function MarksOffer({ job, at, step }: { job: OpenJob; at: AtStep; step: Step }) {
  const words = sayOwner().marks;
  const begin = async (): Promise<void> => {
    waiting = at;
    go({ at: 'owner', job: job.id, page: 'marks' });
    await tell(at.piece);
  };
  const points = job.sheet.points.filter(({ pieces, replacedBy }) => pieces.includes(at.piece) && replacedBy === null);
  return (
    <div class="page owner-page">
      <TopBar back={{ at: 'job', job: job.id }} title={words.offer} />
      <div class="owner-read stack">
        <p>{words.why}</p>
        <PieceDrawing
          judgement={job.pieces.get(at.piece)}
          sheet={job.sheet}
          piece={at.piece}
          width={360}
          height={180}
          askedPoints={points.map(({ id }) => id)}
          values="none"
        />
        <Lesson lesson="mark" />
      </div>
      <div class="owner-foot stack">
        <button type="button" class="button main wide" onClick={() => void begin()} data-testid="marks-begin">
          {words.begin}
        </button>
        <button type="button" class="button wide" onClick={() => void tell(at.piece)} data-testid="marks-skip">
          {words.skip(stepTitle(step, job.sheet))}
        </button>
      </div>
    </div>
  );
}

/** From the marks on to the step that waits for them. */
export function OnFromMarks({ job }: { job: OpenJob }) {
  const to = waiting?.job === job.id ? waiting : null;
  return (
    to && (
      <a class="button main wide" href={routeHash(to)} data-testid="marks-done">
        {sayOwner().marks.goOn}
      </a>
    )
  );
}
