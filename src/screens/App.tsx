import { useEffect } from 'preact/hooks';
import { say } from '../text/index.ts';
import { gone } from './model/gone.ts';
import { updates } from './model/outside.ts';
import { type Route, route } from './model/route.ts';
import { actor, store } from './model/services.ts';
import { Later, quiet } from './parts/Later.tsx';
import { Banner } from './parts/marks.tsx';

const loadGone = () => import('./parts/GoneNotice.tsx').then((m) => m.GoneNotice);
const loadJobs = () => import('./dock/JobsScreen.tsx').then((m) => m.JobsScreen);
const loadLink = () => import('./dock/open-link/OpenLink.tsx').then((m) => m.OpenLink);
const dock = () => import('./dock/Dock.tsx');
const loadDock = () => dock().then((m) => m.Dock);
const loadOwner = () => import('./owner/OwnerRoom.tsx').then((m) => m.OwnerRoom);

/** Begins to bring the two screens that people start with; a failure shows when the screen is wanted. */
export function bringFirst({ at }: Route): void {
  if (at === 'jobs') void loadJobs().catch(() => undefined);
  if (at === 'link') void loadLink().catch(() => undefined);
}

/** The whole app: one screen at a time, by the address. */
export function App() {
  const at = route.value;
  // After the first screen, but there before anybody has chosen a job.
  useEffect(() => {
    void quiet()
      .then(dock)
      .then((m) => m.bringSteps())
      .catch(() => undefined);
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
      return <Later key="jobs" load={loadJobs} props={{}} words="first" />;
    case 'new':
      return <Later key="new" load={() => import('./dock/NewJobScreen.tsx').then((m) => m.NewJobScreen)} props={{}} />;
    case 'keep':
      return <Later key="keep" load={() => import('./dock/KeepScreen.tsx').then((m) => m.KeepScreen)} props={{}} />;
    case 'link':
      return <Later key={`link ${at.code}`} load={loadLink} props={{ code: at.code }} words="links" />;
    case 'shop':
    case 'paper':
    case 'sheet':
      return <Later key={at.at} load={() => import('./shop/ShopRoom.tsx').then((m) => m.ShopRoom)} props={{ at }} />;
    case 'inbox':
    case 'judge':
    case 'request':
    case 'print':
      return <Later key="bench" load={() => import('./bench/Bench.tsx').then((m) => m.default)} props={{}} />;
    default:
      return isOwners(at) ? (
        <Later key="owner" load={loadOwner} props={{ at }} />
      ) : (
        <Later key="dock" load={loadDock} props={{ at }} />
      );
  }
}

/** A job and its steps as an owner is led through them; everything else is the same for everybody. */
const isOwners = ({ at }: Route): boolean =>
  at === 'owner' || ((at === 'job' || at === 'step') && actor.value.role === 'owner');

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
        <Later key={job.id} load={loadGone} props={{ job }} />
      ))}
      {unsaved && unsaved.code !== 'gone' && (
        <Notice tone="stop" text={words.failures[unsaved.code]} action={words.saveCopyNow} act={saveCopy} />
      )}
      {store().torn.value && <Notice tone="stop" text={words.torn} action={words.saveCopyNow} act={saveCopy} />}
      {store().emptied.value && (
        <Notice
          tone="stop"
          text={words.emptied}
          action={words.writeBack}
          act={() => void import('./model/open-job.ts').then((m) => m.writeBack())}
        />
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
