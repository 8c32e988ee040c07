import { useEffect, useState } from 'preact/hooks';
import { sayBench } from '../../text/bench.ts';
import { readJobs } from '../model/jobs.ts';
import { route } from '../model/route.ts';
import { readShop } from '../model/shop.ts';
import { Banner } from '../parts/marks.tsx';
import { WithJob } from '../parts/WithJob.tsx';
import { InboxScreen } from './InboxScreen.tsx';
import { JudgeScreen } from './JudgeScreen.tsx';
import './bench.css';
import './engine.css';
import './plan.css';

/** The shop's side of the app, loaded when it is first gone to. */
export default function Bench() {
  const at = route.value;
  const [unreadable, setUnreadable] = useState(false);
  useEffect(() => void readShop().catch(() => undefined), []);
  useEffect(() => {
    void readJobs().then(
      () => setUnreadable(false),
      () => setUnreadable(true),
    );
  }, [at]);
  return (
    <>
      {unreadable && <Banner tone="stop">{sayBench().inbox.cannotRead}</Banner>}
      {at.at === 'judge' ? (
        <WithJob key={at.job} id={at.job} back={{ at: 'inbox' }} show={(job) => <JudgeScreen job={job} />} />
      ) : (
        <InboxScreen />
      )}
    </>
  );
}
