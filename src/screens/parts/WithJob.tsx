import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { loadJob, type OpenJob, openJob } from '../model/open-job.ts';
import type { Route } from '../model/route.ts';
import { TopBar } from './TopBar.tsx';

interface Props {
  id: string;
  /** Where the way back leads when the job is not here. */
  back: Route;
  show: (job: OpenJob) => JSX.Element;
}

/** Opens a job before its screen is shown; says so when it is not on this device. Give it the job's id as its key. */
export function WithJob({ id, back, show }: Props) {
  const [missing, setMissing] = useState(false);
  useEffect(() => {
    if (openJob.peek()?.id === id) return;
    void loadJob(id).then(
      (job) => setMissing(job === null),
      () => setMissing(true),
    );
  }, [id]);
  const job = openJob.value;
  if (job?.id === id) return show(job);
  if (!missing) return <p class="page quiet">{say().general.loading}</p>;
  return (
    <div class="page">
      <TopBar back={back} title={say().dock.job.notFound} />
    </div>
  );
}
