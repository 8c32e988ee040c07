import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetPiece } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { sayBenchLinks } from '../../text/bench-links.ts';
import { say } from '../../text/index.ts';
import { jobTitle } from '../model/job-words.ts';
import type { OpenJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { JobList } from '../parts/jobs/JobList.tsx';
import { JobRow } from '../parts/jobs/JobRow.tsx';
import { Banner } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { Details } from './Details.tsx';
import { DropHere } from './DropHere.tsx';
import { BenchDrawing } from './drawing/BenchDrawing.tsx';
import { LargePhoto } from './drawing/LargePhoto.tsx';
import { PieceChoice } from './PieceChoice.tsx';
import { LimitsNotice } from './sections/LimitsSection.tsx';
import { jumpTo, Section, type SectionKey } from './sections/Section.tsx';
import { endAsk } from './state/ask-draft.ts';
import { suspicion } from './state/engine-view.ts';
import { litBy } from './state/lit.ts';
import { usePointed } from './state/pointed.ts';
import { largePhoto, pointedAt, selected } from './state/selection.ts';
import { useWide } from './use-wide.ts';

/** One job to be judged: the jobs, the plan, and all that was said about it, side by side or one below the other. */
export function JudgeScreen({ job }: { job: OpenJob }) {
  const wide = useWide();
  const [chosen, setChosen] = useState<string | null>(null);
  const { sheet } = job;
  const piece = sheet.pieces.find(({ id }) => id === chosen) ?? sheet.pieces[0];
  useEffect(() => letGo, [job.id, piece?.id]);
  const columns = useRef<HTMLDivElement>(null);
  usePointed(columns);
  return (
    <div class="bench">
      <TopBar back={{ at: 'inbox' }} title={jobTitle(job.sheet.details)} />
      <Notices job={job} />
      <div class="bench-columns" ref={columns}>
        {wide && (
          <nav class="bench-jobs" aria-label={sayBench().inbox.jobs}>
            <JobList
              looker="bench"
              empty={sayBench().inbox.empty}
              narrow
              row={(one) => (
                <JobRow key={one.id} job={one} to={{ at: 'judge', job: one.id }} here={one.id === job.id} />
              )}
            />
          </nav>
        )}
        <div class="bench-middle stack">
          {!wide && <JumpList slips={piece !== undefined && suspicion(job, piece.id) !== null} />}
          <PieceChoice job={job} piece={piece?.id ?? ''} onChoose={setChosen} />
          {piece ? <Middle job={job} piece={piece.id} /> : <p>{sayBench().judge.noPiece}</p>}
        </div>
        <Beside job={job} piece={piece ?? null} />
      </div>
    </div>
  );
}

/** The plan, or a picture in its place. */
function Middle({ job, piece }: { job: OpenJob; piece: string }) {
  const photo = job.sheet.photos.find((candidate) => candidate.id === largePhoto.value && candidate.piece === piece);
  const shown = litBy(pointedAt.value ?? selected.value, job, piece);
  return photo ? (
    <Section key="photo" at="photo">
      <LargePhoto key={photo.id} job={job} photo={photo} lit={shown} />
    </Section>
  ) : (
    <Section key="plan" at="plan">
      <BenchDrawing key={piece} job={job} piece={piece} lit={shown} />
    </Section>
  );
}

/** The lists; what is selected alone says which of the history is shown, or rows would come and go under the mouse. */
function Beside({ job, piece }: { job: OpenJob; piece: SheetPiece | null }) {
  const id = piece?.id ?? '';
  const kept = litBy(selected.value, job, id);
  const shown = pointedAt.value ? litBy(pointedAt.value, job, id) : kept;
  return <Details job={job} piece={piece} lit={shown} kept={kept} />;
}

function letGo(): void {
  selected.value = null;
  pointedAt.value = null;
  largePhoto.value = null;
  endAsk();
}

function Notices({ job }: { job: OpenJob }) {
  return (
    <>
      {job.sheet.demo && <p class="demo-mark">{say().general.demoMark}</p>}
      <DropHere current={job.id} />
      {job.sheet.request && (
        <p>
          <a class="button plain" href={routeHash({ at: 'request', job: job.id })}>
            {sayBenchLinks().asked.show}
          </a>
        </p>
      )}
      <LimitsNotice job={job} />
      {job.damaged > 0 && (
        <Banner tone="doubt">
          <p>{say().store.damaged(job.damaged)}</p>
        </Banner>
      )}
    </>
  );
}

const JUMPS: readonly SectionKey[] = [
  'decide',
  'plan',
  'slips',
  'sure',
  'findings',
  'readings',
  'runs',
  'photos',
  'answers',
  'asks',
  'drawings',
  'compare',
  'history',
];

/** On a narrow screen: every part a tap away. */
function JumpList({ slips }: { slips: boolean }) {
  const words = sayBench();
  return (
    <nav aria-label={words.judge.jumpTo}>
      <ul class="row bench-jumps">
        {JUMPS.filter((key) => slips || key !== 'slips').map((key) => (
          <li key={key}>
            <button type="button" class="button plain" onClick={() => jumpTo(key)}>
              {words.sections[key]}
            </button>
          </li>
        ))}
        <li>
          <a class="button plain" href={routeHash({ at: 'inbox' })}>
            {words.judge.allJobs}
          </a>
        </li>
      </ul>
    </nav>
  );
}
