import { useEffect, useState } from 'preact/hooks';
import type { Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { jobs, readJobs } from '../model/jobs.ts';
import { go, type Route, routeHash } from '../model/route.ts';
import { store } from '../model/services.ts';
import { JobList } from '../parts/jobs/JobList.tsx';
import { JobRow } from '../parts/jobs/JobRow.tsx';
import { Later } from '../parts/Later.tsx';
import { StorageWarning } from '../parts/StorageWarning.tsx';
import { TopBar } from '../parts/TopBar.tsx';

const loadOpenFile = () => import('../parts/OpenFile.tsx').then((m) => m.OpenFile);
const openFile = { onTaken: () => void readJobs(), open: (job: string): Route => ({ at: 'job', job }) };

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
      <section class="stack">
        <h2>{words.heading}</h2>
        <JobList
          looker="dock"
          empty={words.empty}
          row={(job, more) => (
            <JobRow key={job.id} job={job} to={{ at: 'job', job: job.id }}>
              {more}
            </JobRow>
          )}
        />
      </section>
      <Later key="open" load={loadOpenFile} props={openFile} waiting={null} />
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
