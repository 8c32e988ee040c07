import { useEffect, useState } from 'preact/hooks';
import type { JobSummary, Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { copyState, jobs, readJobs } from '../model/jobs.ts';
import { go, routeHash } from '../model/route.ts';
import { store } from '../model/services.ts';
import { dateText } from '../model/words.ts';
import { StateMark } from '../parts/marks.tsx';
import { OpenFile } from '../parts/OpenFile.tsx';
import { StorageWarning } from '../parts/StorageWarning.tsx';
import { TopBar } from '../parts/TopBar.tsx';

/** The first screen: the jobs on this device, and what can be begun. */
export function JobsScreen() {
  const words = say().dock.jobs;
  const [place, setPlace] = useState<Setting<'place'> | null>(null);
  useEffect(() => {
    void readJobs().catch(() => undefined);
    void store()
      .settings.get('place')
      .then(setPlace, () => undefined);
  }, []);
  const list = jobs.value;
  const resumable = place && list?.some((job) => job.id === place.job) ? place : null;
  return (
    <div class="page">
      <TopBar title={say().general.app}>
        <a class="button plain" href={routeHash({ at: 'inbox' })}>
          {words.toBench}
        </a>
      </TopBar>
      <p class="quiet">{say().general.tagline}</p>
      <StorageWarning jobs={list ?? []} />
      {resumable?.piece && resumable.step && (
        <a
          class="button main wide"
          href={routeHash({ at: 'step', job: resumable.job, piece: resumable.piece, step: resumable.step })}
        >
          {words.resume}
        </a>
      )}
      <a class={`button wide ${resumable ? '' : 'main'}`} href={routeHash({ at: 'new' })}>
        {words.begin}
      </a>
      <JobList list={list} />
      <OpenFile onTaken={() => void readJobs()} />
      {list?.every((job) => !job.demo) && (
        <button type="button" class="button plain" onClick={() => void loadDemo()}>
          {words.demo}
        </button>
      )}
      <a class="button plain" href={routeHash({ at: 'keep' })}>
        {words.keep}
      </a>
    </div>
  );
}

/** The demo travels apart from the app's first load. */
async function loadDemo(): Promise<void> {
  const { loadDemoJob } = await import('../demo/demo-job.ts');
  go({ at: 'job', job: await loadDemoJob() });
}

function JobList({ list }: { list: JobSummary[] | null }) {
  const words = say().dock.jobs;
  if (!list) return <p class="quiet">{say().general.loading}</p>;
  if (list.length === 0) return <p>{words.empty}</p>;
  return (
    <section class="stack">
      <h2>{words.heading}</h2>
      <ul class="list">
        {list.map((job) => (
          <li key={job.id}>
            <a class="item" href={routeHash({ at: 'job', job: job.id })}>
              <span class="grow">
                <strong>{job.name || words.unnamed}</strong>
                <br />
                <span class="quiet small">
                  {[...job.pieces.map((piece) => piece.name), job.lastAt ? dateText(job.lastAt) : '']
                    .filter(Boolean)
                    .join(' · ')}
                </span>
              </span>
              <CopyMark job={job} />
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}

function CopyMark({ job }: { job: JobSummary }) {
  const words = say().dock.jobs;
  if (job.demo) return <span class="demo-mark">demo</span>;
  const state = copyState(job);
  if (state === 'same') return <StateMark mark="good">{words.sent(dateText(job.lastCopy?.at ?? ''))}</StateMark>;
  return <StateMark mark="doubt">{state === 'none' ? words.notSent : words.changedSince}</StateMark>;
}
