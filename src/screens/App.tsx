import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/index.ts';
import { JobScreen } from './dock/JobScreen.tsx';
import { JobsScreen } from './dock/JobsScreen.tsx';
import { LeaveScreen } from './dock/LeaveScreen.tsx';
import { NewJobScreen } from './dock/NewJobScreen.tsx';
import { StepScreen } from './dock/step/StepScreen.tsx';
import { WalkScreen } from './dock/WalkScreen.tsx';
import { loadJob, type OpenJob, openJob } from './model/open-job.ts';
import { updates } from './model/outside.ts';
import { type Route, route } from './model/route.ts';
import { saveCopyNow } from './model/send-out.ts';
import { store } from './model/services.ts';
import { Banner } from './parts/marks.tsx';
import { TopBar } from './parts/TopBar.tsx';

/** The whole app: one screen at a time, by the address. */
export function App() {
  const at = route.value;
  return (
    <>
      <Notices />
      <main>
        <Screen at={at} />
      </main>
    </>
  );
}

function Screen({ at }: { at: Route }) {
  switch (at.at) {
    case 'jobs':
      return <JobsScreen />;
    case 'new':
      return <NewJobScreen />;
    case 'keep':
      return <Later load={() => import('./dock/KeepScreen.tsx').then((m) => m.KeepScreen)} />;
    case 'inbox':
    case 'judge':
      return <Later load={() => import('./bench/Bench.tsx').then((m) => m.default)} />;
    default:
      return <WithJob key={at.job} id={at.job} show={(job) => <DockScreen at={at} job={job} />} />;
  }
}

function DockScreen({ at, job }: { at: Extract<Route, { job: string }>; job: OpenJob }) {
  switch (at.at) {
    case 'walk':
      return <WalkScreen job={job} piece={at.piece} />;
    case 'step':
      return <StepScreen job={job} piece={at.piece} stepKey={at.step} />;
    case 'leave':
      return <LeaveScreen job={job} />;
    case 'send':
      return <Later load={() => import('./dock/SendScreen.tsx').then((m) => () => <m.SendScreen job={job} />)} />;
    default:
      return <JobScreen job={job} />;
  }
}

/** A screen that is not part of the first load. It is in the offline store all the same. */
function Later({ load }: { load: () => Promise<ComponentType> }) {
  const [Part, setPart] = useState<ComponentType | null>(null);
  useEffect(() => {
    void load().then((part) => setPart(() => part));
  }, []);
  return Part ? <Part /> : <p class="page quiet">{say().general.loading}</p>;
}

function WithJob({ id, show }: { id: string; show: (job: OpenJob) => preact.JSX.Element }) {
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
  if (missing)
    return (
      <div class="page">
        <TopBar back={{ at: 'jobs' }} title={say().dock.job.notFound} />
      </div>
    );
  return <p class="page quiet">{say().general.loading}</p>;
}

/** What must be seen on every screen: entries that are not on disk, and a new version that waits for consent. */
function Notices() {
  const words = say().store;
  const unsaved = store().unsaved.value;
  const update = updates.value?.state.value ?? 'none';
  return (
    <div class="notices no-print">
      {unsaved && (
        <Banner tone="stop">
          <p>{words.failures[unsaved.code]}</p>
          <button type="button" class="button" onClick={() => void saveCopyNow()}>
            {words.saveCopyNow}
          </button>
        </Banner>
      )}
      {update !== 'none' && route.value.at !== 'step' && (
        <Banner tone="note">
          <p>{words.updateWaits}</p>
          <button type="button" class="button" onClick={() => void updates.value?.applyUpdate()}>
            {words.updateNow}
          </button>
        </Banner>
      )}
    </div>
  );
}
