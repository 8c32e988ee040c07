import { type Step, type StepState, stepsOf } from '../../core/guide/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { lengthText } from '../model/words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { type Mark, StateMark } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { questionWords, stepTitle } from './step-words.ts';

const marks: Record<StepState, Mark> = {
  open: 'open',
  done: 'good',
  'answered-without-value': 'note',
  'asked-again': 'doubt',
};

/** All steps of a piece in walking order, each a tap away. */
export function WalkScreen({ job, piece }: { job: OpenJob; piece: string }) {
  const steps = stepsOf(job.sheet, piece);
  const name = job.sheet.pieces.find((candidate) => candidate.id === piece)?.name ?? '';
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={name} />
      <PieceDrawing judgement={job.pieces.get(piece)} sheet={job.sheet} piece={piece} width={360} height={280} />
      <ol class="list">
        {steps.map((step) => (
          <li key={step.key}>
            <a class="item" href={routeHash({ at: 'step', job: job.id, piece, step: step.key })}>
              <span class="grow">
                {stepTitle(step, job.sheet)}
                {step.on === 'question' && <span class="quiet small answer">{stepValue(step, job.sheet, piece)}</span>}
              </span>
              {step.on !== 'question' && <span class="number quiet">{stepValue(step, job.sheet, piece)}</span>}
              <StateMark mark={stateMark(step, job)}>
                <span class={step.state === 'done' ? 'sr-only' : ''}>{say().dock.stepStates[step.state]}</span>
              </StateMark>
            </a>
          </li>
        ))}
      </ol>
    </div>
  );
}

function stateMark(step: Step, job: OpenJob): Mark {
  const id = step.on === 'reading' ? step.reading.id : step.on === 'run' ? step.run.id : step.key;
  const stops = job.findings.filter(
    (f) => f.severity === 'stop' && step.state !== 'open' && f.subjects.some((s) => s.id === id),
  );
  return stops.length > 0 ? 'stop' : marks[step.state];
}

function stepValue(step: Step, sheet: Sheet, piece: string): string {
  if (step.on === 'reading') return step.reading.value === null ? '' : lengthText(step.reading.value, sheet);
  if (step.on === 'run') return step.run.stations.length > 0 ? String(step.run.stations.length) : '';
  if (step.on === 'shot') return step.shot.photos.length > 0 ? String(step.shot.photos.length) : '';
  const { choice } = step.question;
  return choice === null ? '' : (questionWords(sheet, piece, step.key)?.choices[choice] ?? say().guide.couldNotTell);
}
