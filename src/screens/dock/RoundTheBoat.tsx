import { type RoundPoint, roundOf } from '../../core/check/index.ts';
import type { SheetPiece } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { sureText } from '../model/sureness.ts';
import { pointLabel, wordsOfPiece } from '../model/words.ts';
import { type Mark, StateMark } from '../parts/marks.tsx';

/** Every point in walking order: what is fixed, checked, doubtful or missing, each a tap away. */
export function RoundTheBoat({ job }: { job: OpenJob }) {
  const rounds = job.sheet.pieces
    .map((piece) => ({ piece, points: roundOf(job.sheet, piece.id, job.findings, job.pieces.get(piece.id)) }))
    .filter(({ points }) => points.length > 0);
  if (rounds.length === 0) return null;
  return (
    <section class="stack">
      <h2>{say().dock.leave.round}</h2>
      {rounds.map(({ piece, points }) => (
        <div key={piece.id} class="stack">
          {rounds.length > 1 && <h3>{pieceName(piece)}</h3>}
          <ul class="list">
            {points.map((point) => (
              <li key={point.point}>
                <PointRow job={job} piece={piece} row={point} />
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}

const MARKS: Record<RoundPoint['standing'], Mark> = {
  doubtful: 'stop',
  missing: 'open',
  floats: 'open',
  fixed: 'doubt',
  checked: 'good',
};

function PointRow({ job, piece, row }: { job: OpenJob; piece: SheetPiece; row: RoundPoint }) {
  const { sheet } = job;
  const slot = sheet.points.find(({ id }) => id === row.point)?.slot;
  const name = slot ? wordsOfPiece(sheet, piece.id)?.points[slot]?.name : undefined;
  const words = (
    <>
      <span class="grow">
        <strong>{pointLabel(sheet, row.point)}</strong> {name && <span class="quiet small">{name}</span>}
      </span>
      <StateMark mark={MARKS[row.standing]}>{standingText(row, job)}</StateMark>
    </>
  );
  if (row.slot === null) return <span class="item">{words}</span>;
  return (
    <a class="item" href={routeHash({ at: 'step', job: job.id, piece: piece.id, step: row.slot })}>
      {words}
    </a>
  );
}

function standingText({ standing, open, sure }: RoundPoint, job: OpenJob): string {
  const words = say().dock.leave.standing;
  if (standing === 'missing') return words.missing(open);
  const state = words[standing];
  const settled = standing === 'checked' || standing === 'fixed';
  return settled && sure !== null ? words.within(state, sureText(sure, job.sheet)) : state;
}
