import { gates } from '../../core/check/index.ts';
import type { SheetPiece } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { StateMark } from '../parts/marks.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  onChoose: (piece: string) => void;
}

/** The pieces of the job, each with how it stands. */
export function PieceChoice({ job, piece, onChoose }: Props) {
  return (
    <fieldset class="bench-pieces">
      <legend class="sr-only">{sayBench().judge.pieces}</legend>
      {job.sheet.pieces.map((one) => (
        <button
          key={one.id}
          type="button"
          class="bench-piece"
          aria-pressed={one.id === piece}
          onClick={() => onChoose(one.id)}
        >
          <strong>{pieceName(one)}</strong>
          <PieceState job={job} piece={one} />
        </button>
      ))}
    </fieldset>
  );
}

function PieceState({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const words = sayBench().judge;
  const cleared = job.sheet.clearances.some((one) => one.piece === piece.id && one.voidedBy.length === 0);
  if (cleared) return <StateMark mark="good">{sayBench().decide.clear}</StateMark>;
  const { standing } = gates(job.sheet, job.findings, piece.id).cut;
  const stops = standing.filter(({ severity }) => severity === 'stop').length;
  const doubts = standing.length - stops;
  if (standing.length === 0) return <StateMark mark="open">{words.clear}</StateMark>;
  return (
    <span class="row">
      {stops > 0 && <StateMark mark="stop">{words.stops(stops)}</StateMark>}
      {doubts > 0 && <StateMark mark="doubt">{words.doubts(doubts)}</StateMark>}
    </span>
  );
}
