import { useState } from 'preact/hooks';
import { sayKeep } from '../../../text/keep.ts';
import { jobs, readJobs } from '../../model/jobs.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { go } from '../../model/route.ts';
import { DeleteJob } from '../../parts/keep/DeleteJob.tsx';

/** The job off this device, last of all there is to do with it. */
export function RemoveSection({ job }: { job: OpenJob }) {
  const [asking, setAsking] = useState(false);
  const line = jobs.value?.find(({ id }) => id === job.id);
  const open = (): void => {
    setAsking(true);
    if (!line) void readJobs().catch(() => undefined);
  };
  const leave = (): void => {
    go({ at: 'inbox' });
    void readJobs().catch(() => undefined);
  };
  if (asking && line) return <DeleteJob key={job.id} job={line} onDeleted={leave} onCancel={() => setAsking(false)} />;
  return (
    <div>
      <button type="button" class="button plain" onClick={open}>
        {sayKeep().remove.open}
      </button>
    </div>
  );
}
