import { useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { bringBack, type GoneJob } from '../model/gone.ts';
import { deleteJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import { Banner } from './marks.tsx';

/** A job was deleted in another tab while this page goes on with it: nothing is lost, and nothing comes back, unasked. */
export function GoneNotice({ job }: { job: GoneJob }) {
  const [sure, setSure] = useState(false);
  const [failed, setFailed] = useState(false);
  const words = say().store.gone;
  const settle = (work: Promise<void>): void =>
    void work.then(
      () => setFailed(false),
      () => setFailed(true),
    );
  const letGo = (): void => {
    go({ at: 'jobs' }, 'replace');
    settle(deleteJob(job.id));
  };
  return (
    <Banner tone="stop">
      <p>{sure ? words.sure(job.title) : words.what(job.title)}</p>
      {failed && <p>{say().store.failures.unknown}</p>}
      <div class="row">
        <button type="button" class="button" onClick={() => settle(bringBack(job))}>
          {say().store.writeBack}
        </button>
        <button type="button" class="button plain" onClick={() => (sure ? letGo() : setSure(true))}>
          {sure ? words.letGoNow : words.letGo}
        </button>
      </div>
    </Banner>
  );
}
