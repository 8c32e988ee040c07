import { useEffect, useState } from 'preact/hooks';
import { say } from '../text/index.ts';
import { JobScreen } from './dock/JobScreen.tsx';
import { JobsScreen } from './dock/JobsScreen.tsx';
import { StepScreen } from './dock/step/StepScreen.tsx';
import { WalkScreen } from './dock/WalkScreen.tsx';
import { loadJob, type OpenJob, openJob, writeBack } from './model/open-job.ts';
import { updates } from './model/outside.ts';
import { type Route, route } from './model/route.ts';
import { store } from './model/services.ts';
import { Later } from './parts/Later.tsx';
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
      return <Later key="new" load={() => import('./dock/NewJobScreen.tsx').then((m) => m.NewJobScreen)} props={{}} />;
    case 'keep':
      return <Later key="keep" load={() => import('./dock/KeepScreen.tsx').then((m) => m.KeepScreen)} props={{}} />;
    case 'inbox':
    case 'judge':
      return <Later key="bench" load={() => import('./bench/Bench.tsx').then((m) => m.default)} props={{}} />;
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
      return (
        <Later key="leave" load={() => import('./dock/LeaveScreen.tsx').then((m) => m.LeaveScreen)} props={{ job }} />
      );
    case 'send':
      return (
        <Later key="send" load={() => import('./dock/SendScreen.tsx').then((m) => m.SendScreen)} props={{ job }} />
      );
    default:
      return <JobScreen job={job} />;
  }
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
          <button
            type="button"
            class="button"
            onClick={() => void import('./model/send-out.ts').then((m) => m.saveCopyNow())}
          >
            {words.saveCopyNow}
          </button>
        </Banner>
      )}
      {store().torn.value && (
        <Banner tone="stop">
          <p>{words.torn}</p>
          <button
            type="button"
            class="button"
            onClick={() => void import('./model/send-out.ts').then((m) => m.saveCopyNow())}
          >
            {words.saveCopyNow}
          </button>
        </Banner>
      )}
      {store().emptied.value && (
        <Banner tone="stop">
          <p>{words.emptied}</p>
          <button type="button" class="button" onClick={() => void writeBack()}>
            {words.writeBack}
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
