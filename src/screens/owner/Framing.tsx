import type { SheetShot } from '../../core/job/index.ts';
import { sayOwner } from '../../text/owner.ts';
import type { OpenJob } from '../model/open-job.ts';
import { pointLabel } from '../model/words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';

/** What should be in the picture: the frame of a photo with the points in it, room all round, and a sheet of paper. */
export function Framing({ job, piece, shot }: { job: OpenJob; piece: string; shot: SheetShot }) {
  const words = sayOwner().frame;
  const labels = sayOwner().before.time.and(shot.points.map((id) => pointLabel(job.sheet, id)));
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <div class="frame-drawing">
        <PieceDrawing
          judgement={job.pieces.get(piece)}
          sheet={job.sheet}
          piece={piece}
          width={330}
          height={170}
          askedPoints={shot.points}
          values="none"
        />
        <svg
          class="explained"
          viewBox="0 0 330 190"
          preserveAspectRatio="none"
          role="img"
          aria-label={words.alt(labels)}
        >
          <path class="lit line" d="M10 36V10H36M294 10H320V36M320 154V180H294M36 180H10V154" />
          <path class="paper" d="M276 138L306 138L310 164L280 164Z" />
        </svg>
      </div>
      <ul class="owner-bullets stack">
        <li>{labels === '' ? words.plain : words.all(labels)}</li>
        <li>{words.paper}</li>
        <li>{words.light}</li>
        {labels !== '' && <li>{words.numbers}</li>}
      </ul>
      {labels !== '' && <p class="quiet">{words.after}</p>}
    </section>
  );
}
