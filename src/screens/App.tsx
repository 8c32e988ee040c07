import { useEffect } from 'preact/hooks';
import { say } from '../text/index.ts';
import { JobsScreen } from './dock/JobsScreen.tsx';
import { gone } from './model/gone.ts';
import { type OpenJob, writeBack } from './model/open-job.ts';
import { updates } from './model/outside.ts';
import { type Route, route } from './model/route.ts';
import { store } from './model/services.ts';
import { GoneNotice } from './parts/GoneNotice.tsx';
import { bring, Later } from './parts/Later.tsx';
import { Banner } from './parts/marks.tsx';
import { WithJob } from './parts/WithJob.tsx';

const loadJob = () => import('./dock/JobScreen.tsx').then((m) => m.JobScreen);
const loadWalk = () => import('./dock/WalkScreen.tsx').then((m) => m.WalkScreen);
const loadTable = () => import('./dock/table/TableScreen.tsx').then((m) => m.TableScreen);
const loadChange = () => import('./dock/change/ChangeScreen.tsx').then((m) => m.ChangeScreen);
const loadStep = () => import('./dock/step/StepScreen.tsx').then((m) => m.StepScreen);

/** The whole app: one screen at a time, by the address. */
export function App() {
  const at = route.value;
  // Not with the first screen, but there before anybody has chosen a job.
  useEffect(() => {
    void Promise.all([bring(loadJob), bring(loadWalk), bring(loadStep)]).catch(() => undefined);
  }, []);
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
    case 'shop':
    case 'paper':
    case 'sheet':
      return <Later key={at.at} load={() => import('./shop/ShopRoom.tsx').then((m) => m.ShopRoom)} props={{ at }} />;
    case 'inbox':
    case 'judge':
      return <Later key="bench" load={() => import('./bench/Bench.tsx').then((m) => m.default)} props={{}} />;
    default:
      return (
        <WithJob key={at.job} id={at.job} back={{ at: 'jobs' }} show={(job) => <DockScreen at={at} job={job} />} />
      );
  }
}

function DockScreen({ at, job }: { at: Extract<Route, { job: string }>; job: OpenJob }) {
  switch (at.at) {
    case 'walk':
      return <Later key="walk" load={loadWalk} props={{ job, piece: at.piece }} />;
    case 'step':
      return (
        <Later
          key="step"
          load={loadStep}
          props={{ job, piece: at.piece, stepKey: at.step, photos: at.photos === true }}
        />
      );
    case 'table': {
      const { piece, table, cell = null } = at;
      return <Later key={`table ${piece} ${table}`} load={loadTable} props={{ job, piece, table, cell }} />;
    }
    case 'change':
      return <Later key={`change ${at.what}`} load={loadChange} props={{ job, piece: at.piece, what: at.what }} />;
    case 'details':
      return (
        <Later
          key="details"
          load={() => import('./dock/DetailsScreen.tsx').then((m) => m.DetailsScreen)}
          props={{ job }}
        />
      );
    case 'things':
      return (
        <Later
          key="things"
          load={() => import('./dock/things/ThingsScreen.tsx').then((m) => m.ThingsScreen)}
          props={{ job, piece: at.piece, thing: at.thing }}
        />
      );
    case 'leave':
      return (
        <Later key="leave" load={() => import('./dock/LeaveScreen.tsx').then((m) => m.LeaveScreen)} props={{ job }} />
      );
    case 'send':
      return (
        <Later key="send" load={() => import('./dock/SendScreen.tsx').then((m) => m.SendScreen)} props={{ job }} />
      );
    default:
      return <Later key="job" load={loadJob} props={{ job }} />;
  }
}

/** Where a number may be half typed: nothing asks for a tap of another kind there. */
const ENTERING: ReadonlySet<Route['at']> = new Set(['step', 'table']);

/** What must be seen on every screen: entries that are not on disk, and a new version that waits for consent. */
function Notices() {
  const words = say().store;
  const unsaved = store().unsaved.value;
  const update = updates.value?.state.value ?? 'none';
  const saveCopy = (): void => void import('./model/send-out.ts').then((m) => m.saveCopyNow());
  return (
    <div class="notices no-print">
      {gone.value.map((job) => (
        <GoneNotice key={job.id} job={job} />
      ))}
      {unsaved && unsaved.code !== 'gone' && (
        <Notice tone="stop" text={words.failures[unsaved.code]} action={words.saveCopyNow} act={saveCopy} />
      )}
      {store().torn.value && <Notice tone="stop" text={words.torn} action={words.saveCopyNow} act={saveCopy} />}
      {store().emptied.value && (
        <Notice tone="stop" text={words.emptied} action={words.writeBack} act={() => void writeBack()} />
      )}
      {update !== 'none' && !ENTERING.has(route.value.at) && (
        <Notice
          tone="note"
          text={words.updateWaits}
          action={words.updateNow}
          act={() => void updates.value?.applyUpdate()}
        />
      )}
    </div>
  );
}

function Notice(props: { tone: 'stop' | 'note'; text: string; action: string; act: () => void }) {
  return (
    <Banner tone={props.tone}>
      <p>{props.text}</p>
      <button type="button" class="button" onClick={props.act}>
        {props.action}
      </button>
    </Banner>
  );
}
