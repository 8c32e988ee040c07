import { sayBench } from '../../text/bench.ts';
import { sayBenchLinks } from '../../text/bench-links.ts';
import { sayShop } from '../../text/shop.ts';
import { readJobs } from '../model/jobs.ts';
import { routeHash } from '../model/route.ts';
import { JobList } from '../parts/jobs/JobList.tsx';
import { JobRow } from '../parts/jobs/JobRow.tsx';
import { Later } from '../parts/Later.tsx';
import { OpenFile } from '../parts/OpenFile.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { DropHere } from './DropHere.tsx';

const loadBackup = () => import('../parts/keep/BackupSection.tsx').then((m) => m.BackupSection);

/** Where packets come in, and the jobs that are here. */
export function InboxScreen() {
  const words = sayBench().inbox;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={words.title} />
      <a class="button main wide" href={routeHash({ at: 'request', job: null })}>
        {sayBenchLinks().begin}
      </a>
      <p>{words.drop}</p>
      <DropHere current={null} />
      <OpenFile onTaken={() => void readJobs().catch(() => undefined)} open={(job) => ({ at: 'judge', job })} />
      <section class="stack" aria-labelledby="bench-inbox-jobs">
        <h2 id="bench-inbox-jobs">{words.jobs}</h2>
        <JobList
          looker="bench"
          empty={words.empty}
          row={(job, more) => (
            <JobRow key={job.id} job={job} to={{ at: 'judge', job: job.id }}>
              {more}
            </JobRow>
          )}
        />
      </section>
      <Later key="backup" load={loadBackup} props={{}} />
      <a class="button" href={routeHash({ at: 'keep' })}>
        {words.device}
      </a>
      <a class="button" href={routeHash({ at: 'shop' })}>
        {sayShop().title}
      </a>
    </div>
  );
}
