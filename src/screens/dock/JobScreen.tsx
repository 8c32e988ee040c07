import type { ComponentType } from 'preact';
import { useState } from 'preact/hooks';
import { nextOpen, stepsOf } from '../../core/guide/steps.ts';
import { tallyOf } from '../../core/guide/tally.ts';
import type { SheetPiece } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { jobTitle, pieceName } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { actor } from '../model/services.ts';
import { measurementsText } from '../model/tally-words.ts';
import { PieceDrawing } from '../parts/drawing/PieceDrawing.tsx';
import { GateLine } from '../parts/GateLine.tsx';
import { Later } from '../parts/Later.tsx';
import { TopBar } from '../parts/TopBar.tsx';

/** One job at the dock: its pieces, how far each is, and what remains before leaving. */
export function JobScreen({ job }: { job: OpenJob }) {
  const { sheet } = job;
  const words = say().dock.job;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={jobTitle(sheet.details)} />
      {sheet.demo && <p class="demo-mark">{say().general.demoMark}</p>}
      <div class="row spread">
        <p class="quiet">{[sheet.details.customer, sheet.details.boat].filter(Boolean).join(' · ')}</p>
        <a class="button plain" href={routeHash({ at: 'details', job: job.id })}>
          {words.details}
        </a>
      </div>
      {sheet.pieces.map((piece) => (
        <PieceSummary key={piece.id} job={job} piece={piece} />
      ))}
      {sheet.pieces.length > 0 && (
        <section class="stack">
          <GateLine job={job} />
          <a class="button wide" href={routeHash({ at: 'leave', job: job.id })}>
            {words.toLeave}
          </a>
          <a class="button main wide" href={routeHash({ at: 'send', job: job.id })}>
            {words.send}
          </a>
        </section>
      )}
      <Behind
        label={words.addPiece}
        job={job}
        open={sheet.pieces.length === 0}
        load={() => import('./AddPiece.tsx').then((m) => m.AddPiece)}
      />
      {sheet.pieces.length > 0 && (
        <Behind
          label={words.more}
          job={job}
          open={false}
          load={() => import('../shop/JobMore.tsx').then((m) => m.JobMore)}
        />
      )}
    </div>
  );
}

function PieceSummary({ job, piece }: { job: OpenJob; piece: SheetPiece }) {
  const words = say().dock.job;
  const steps = stepsOf(job.sheet, piece.id);
  const done = steps.filter((step) => step.state === 'done' || step.state === 'answered-without-value').length;
  const asked = steps.filter((step) => step.state === 'asked-again').length;
  const next = nextOpen(steps, -1);
  const far =
    actor.value.role === 'owner'
      ? measurementsText(tallyOf(job.sheet, job.findings, piece.id))
      : words.progress(done, steps.length);
  return (
    <section class="stack piece">
      <div class="row spread">
        <h2>{pieceName(piece)}</h2>
        <span class="number quiet">{far}</span>
      </div>
      <progress class="walk-progress" max={steps.length} value={done}>
        {far}
      </progress>
      <PieceDrawing judgement={job.pieces.get(piece.id)} sheet={job.sheet} piece={piece.id} width={360} height={220} />
      {asked > 0 && (
        <p class="state doubt">
          {words.askedAgain}: {words.remeasure(asked)}
        </p>
      )}
      <div class="row">
        {next && (
          <a class="button main grow" href={routeHash({ at: 'step', job: job.id, piece: piece.id, step: next.key })}>
            {done === 0 ? words.start : words.goOn}
          </a>
        )}
        <a class="button grow" href={routeHash({ at: 'walk', job: job.id, piece: piece.id })}>
          {words.list}
        </a>
      </div>
    </section>
  );
}

/** A part that comes at a tap; at once where nothing else is there. */
function Behind({ label, job, load, open: shown }: BehindProps) {
  const [open, setOpen] = useState(shown);
  if (open) return <Later load={load} props={{ job }} />;
  return (
    <button type="button" class="button plain" onClick={() => setOpen(true)}>
      {label}
    </button>
  );
}

interface BehindProps {
  label: string;
  job: OpenJob;
  load: () => Promise<ComponentType<{ job: OpenJob }>>;
  open: boolean;
}
