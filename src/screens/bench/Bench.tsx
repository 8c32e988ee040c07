import { useEffect, useState } from 'preact/hooks';
import { sayBench } from '../../text/bench.ts';
import { say } from '../../text/index.ts';
import { readJobs } from '../model/jobs.ts';
import { loadJob, openJob } from '../model/open-job.ts';
import { route } from '../model/route.ts';
import { Banner } from '../parts/marks.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { InboxScreen } from './InboxScreen.tsx';
import { JudgeScreen } from './JudgeScreen.tsx';
import './bench.css';
import './engine.css';
import './plan.css';

/** The shop's side of the app, loaded when it is first gone to. */
export default function Bench() {
  const at = route.value;
  const [unreadable, setUnreadable] = useState(false);
  const entries = openJob.value?.entries.length;
  useEffect(() => {
    void readJobs().then(
      () => setUnreadable(false),
      () => setUnreadable(true),
    );
  }, [at, entries]);
  return (
    <>
      {unreadable && <Banner tone="stop">{sayBench().inbox.cannotRead}</Banner>}
      {at.at === 'judge' ? <Loaded key={at.job} id={at.job} /> : <InboxScreen />}
    </>
  );
}

function Loaded({ id }: { id: string }) {
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    if (openJob.peek()?.id === id) return;
    void loadJob(id).then(
      (job) => setMissing(job === null),
      () => setMissing(true),
    );
  }, [id]);
  const job = openJob.value;
  if (job?.id === id) return <JudgeScreen job={job} />;
  if (!missing) return <p class="page quiet">{say().general.loading}</p>;
  return (
    <div class="page">
      <TopBar back={{ at: 'inbox' }} title={sayBench().judge.notFound} />
    </div>
  );
}
