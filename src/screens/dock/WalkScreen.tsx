import { type Step, type StepState, stepsOf } from '../../core/guide/index.ts';
import { tablesOf } from '../../core/guide/tables.ts';
import { tallyOf } from '../../core/guide/tally.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayGuide } from '../../text/guide.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { type Change, routeHash } from '../model/route.ts';
import { hidden } from '../model/second-looks.ts';
import { actor } from '../model/services.ts';
import { againText, measurementsText, othersText } from '../model/tally-words.ts';
import { lengthText } from '../model/words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { type Mark, StateMark } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { SetAside } from './SetAside.tsx';
import { movedMarkOf, questionWords, stepTitle } from './step-words.ts';
import { tableTitle } from './table/table-words.ts';

const marks: Record<StepState, Mark> = {
  open: 'open',
  done: 'good',
  'answered-without-value': 'note',
  'asked-again': 'doubt',
};

/** All steps of a piece in walking order, each a tap away. */
export function WalkScreen({ job, piece }: { job: OpenJob; piece: string }) {
  const steps = stepsOf(job.sheet, piece);
  const declared = job.sheet.pieces.find((candidate) => candidate.id === piece);
  const name = declared ? pieceName(declared) : '';
  const owner = actor.value.role === 'owner';
  // Whoever is led does not lay the piece out; what no guide knows has to be.
  const led = owner && steps.length > 0;
  return (
    <div class="page">
      <TopBar back={{ at: 'job', job: job.id }} title={name} />
      <PieceDrawing judgement={job.pieces.get(piece)} sheet={job.sheet} piece={piece} width={360} height={280} />
      {owner ? <HowFar job={job} piece={piece} /> : <Tables job={job} piece={piece} />}
      {!led && <Changes job={job} piece={piece} heading />}
      {steps.length === 0 && <p>{sayWalk().change.nothingAsked}</p>}
      <a class="button" href={routeHash({ at: 'things', job: job.id, piece, thing: null })}>
        {say().dock.walk.things(job.sheet.obstructions.filter((thing) => thing.piece === piece).length)}
      </a>
      <ol class="list">
        {steps.map((step) => (
          <li key={step.key}>
            <a class="item" href={routeHash({ at: 'step', job: job.id, piece, step: step.key })}>
              <span class="grow">
                {stepTitle(step, job.sheet)}
                <Beside step={step} sheet={job.sheet} />
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
      {led && (
        <details>
          <summary>{sayWalk().change.heading}</summary>
          <Changes job={job} piece={piece} />
        </details>
      )}
      <SetAside sheet={job.sheet} piece={piece} />
    </div>
  );
}

/** What an owner's overview says of the whole job, of this piece. */
function HowFar({ job, piece }: { job: OpenJob; piece: string }) {
  const tally = tallyOf(job.sheet, job.findings, piece);
  return (
    <section>
      <p>{measurementsText(tally)}</p>
      <p class="quiet small">{[...othersText(tally), againText(tally)].filter(Boolean).join(' · ')}</p>
    </section>
  );
}

/** Whole columns of readings, for whoever has the tape hooked already. An owner reads one at a time, each afresh. */
function Tables({ job, piece }: { job: OpenJob; piece: string }) {
  const words = sayWalk().table;
  const tables = tablesOf(job.sheet, piece);
  if (tables.length === 0) return null;
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <p class="quiet small">{words.help}</p>
      <ul class="list">
        {tables.map((table) => (
          <li key={table.key}>
            <a class="item" href={routeHash({ at: 'table', job: job.id, piece, table: table.key })}>
              <span class="grow">{tableTitle(table, job.sheet)}</span>
              <span class="number quiet">
                {words.progress(
                  table.cells.filter(({ reading }) => reading.state !== 'open').length,
                  table.cells.length,
                )}
              </span>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

const CHANGES = ['points', 'reading', 'edge', 'picture'] as const satisfies readonly Change[];

function Changes({ job, piece, heading = false }: { job: OpenJob; piece: string; heading?: boolean }) {
  const words = sayWalk().change;
  return (
    <section class="stack">
      {heading && <h2>{words.heading}</h2>}
      <div class="row">
        {CHANGES.map((what) => (
          <a key={what} class="button" href={routeHash({ at: 'change', job: job.id, piece, what })}>
            {words[what]}
          </a>
        ))}
      </div>
    </section>
  );
}

/** A reading at a mark that was moved says so. */
function Beside({ step, sheet }: { step: Step; sheet: Sheet }) {
  const mark = step.on === 'reading' ? movedMarkOf(step.reading, sheet) : null;
  return mark && <span class="quiet small answer">{sayWalk().moved.readBefore(mark.label)}</span>;
}

function stateMark(step: Step, job: OpenJob): Mark {
  const id = step.on === 'reading' ? step.reading.id : step.on === 'run' ? step.run.id : step.key;
  const stops = job.findings.filter(
    (f) => f.severity === 'stop' && step.state !== 'open' && f.subjects.some((s) => s.id === id),
  );
  return stops.length > 0 ? 'stop' : marks[step.state];
}

function stepValue(step: Step, sheet: Sheet, piece: string): string {
  if (step.on === 'reading')
    return step.reading.value === null || hidden.value.has(step.reading.id)
      ? ''
      : lengthText(step.reading.value, sheet);
  if (step.on === 'run') return step.run.stations.length > 0 ? String(step.run.stations.length) : '';
  if (step.on === 'shot') return step.shot.photos.length > 0 ? String(step.shot.photos.length) : '';
  const { choice } = step.question;
  return choice === null ? '' : (questionWords(sheet, piece, step.key)?.choices[choice] ?? sayGuide().couldNotTell);
}
