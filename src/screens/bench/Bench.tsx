import { useEffect, useState } from 'preact/hooks';
import { sayBench } from '../../text/bench.ts';
import { readJobs } from '../model/jobs.ts';
import type { OpenJob } from '../model/open-job.ts';
import { type Route, route } from '../model/route.ts';
import { readShop } from '../model/shop.ts';
import { Later } from '../parts/Later.tsx';
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
      <Screen at={at} />
    </>
  );
}

function Screen({ at }: { at: Route }) {
  if (at.at === 'judge')
    return <WithJob key={at.job} id={at.job} back={{ at: 'inbox' }} show={(job) => <JudgeScreen job={job} />} />;
  if (at.at === 'print') {
    const { job, piece, as } = at;
    const show = (open: OpenJob) => <Later key={`${as} ${piece}`} load={loadPrint} props={{ job: open, piece, as }} />;
    return <WithJob key={job} id={job} back={{ at: 'inbox' }} show={show} />;
  }
  if (at.at !== 'request') return <InboxScreen />;
  const { job } = at;
  if (job === null) return <Later key="ask" load={loadAsk} props={{}} />;
  const show = (open: OpenJob) => <Later load={loadAsked} props={{ job: open }} />;
  return <WithJob key={`asked ${job}`} id={job} back={{ at: 'inbox' }} show={show} />;
}

const loadAsk = () => import('./request/AskToMeasure.tsx').then((m) => m.AskToMeasure);
const loadAsked = () => import('./request/AskedFor.tsx').then((m) => m.AskedFor);
const loadPrint = () => import('./sheet/PrintScreen.tsx').then((m) => m.PrintScreen);
