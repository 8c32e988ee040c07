import { useEffect, useState } from 'preact/hooks';
import { askToPersist, estimateRoom, isPersistent, type Room } from '../../device/storage-state.ts';
import type { JobSummary, Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { sayShop } from '../../text/shop.ts';
import { jobs, readJobs } from '../model/jobs.ts';
import { deleteJob, loadJob } from '../model/open-job.ts';
import { routeHash } from '../model/route.ts';
import { handOver, preparePacket } from '../model/send-out.ts';
import { choosePerson, chooseTheme, chooseUnits, person, theme, units } from '../model/services.ts';
import { bytesText, jobTitle } from '../model/words.ts';
import { JobList } from '../parts/jobs/JobList.tsx';
import { InstallOffer } from '../parts/StorageWarning.tsx';
import { TopBar } from '../parts/TopBar.tsx';
import { UnitsField } from '../parts/UnitsField.tsx';
import { PadSettings } from './PadSettings.tsx';

const THEMES = ['system', 'light', 'dark'] as const satisfies readonly Setting<'theme'>[];

/** What this device keeps, for whom, and how it looks. */
export function KeepScreen() {
  const words = say().dock.keep;
  return (
    <div class="page">
      <TopBar back={{ at: 'jobs' }} title={words.heading} />
      <section class="stack">
        <h2>{words.you}</h2>
        <label class="field">
          <span>{say().dock.begin.you}</span>
          <input
            value={person.value.name}
            maxLength={80}
            onChange={(e) => void choosePerson({ ...person.value, name: e.currentTarget.value.trim() })}
          />
        </label>
      </section>
      <section class="stack">
        <h2>{words.units}</h2>
        <UnitsField value={units.value} onChange={(chosen) => void chooseUnits(chosen)} />
      </section>
      <a class="button wide" href={routeHash({ at: 'shop' })}>
        {sayShop().title}
      </a>
      <section class="stack">
        <h2>{words.look}</h2>
        <div class="row">
          {THEMES.map((choice) => (
            <button
              key={choice}
              type="button"
              class="button"
              aria-pressed={theme.value === choice}
              onClick={() => void chooseTheme(choice)}
            >
              {words.themes[choice]}
            </button>
          ))}
        </div>
      </section>
      <PadSettings />
      <Storage />
      <section class="stack">
        <h2>{words.install}</h2>
        <InstallOffer />
      </section>
      <DeleteJobs />
    </div>
  );
}

function Storage() {
  const [room, setRoom] = useState<Room | null>(null);
  const [promised, setPromised] = useState(false);
  const words = say().store;
  const look = async (): Promise<void> => {
    setRoom(await estimateRoom());
    setPromised((await isPersistent()) === true);
  };
  useEffect(() => void look(), []);
  return (
    <section class="stack">
      <h2>{say().dock.keep.storage}</h2>
      <p>{room?.plausible ? words.used(bytesText(room.used), bytesText(room.quota)) : words.usedUnknown}</p>
      <p>{promised ? words.persistent : words.notPersistent}</p>
      {!promised && (
        <button type="button" class="button" onClick={() => void askToPersist().then(look)}>
          {words.askPersistent}
        </button>
      )}
    </section>
  );
}

/** Deleting is the one thing that loses something: it says what, offers the copy first, and asks twice. */
function DeleteJobs() {
  const [asking, setAsking] = useState<string | null>(null);
  const words = say().dock.keep;
  useEffect(() => void readJobs().catch(() => undefined), []);
  const saveFirst = async (id: string): Promise<void> => {
    const job = await loadJob(id);
    if (job) await handOver(id, await preparePacket(job), 'download');
  };
  if (!jobs.value?.length) return null;
  const row = (job: JobSummary) => (
    <li key={job.id} class="stack">
      {asking === job.id ? (
        <>
          <p role="alert">{words.deleteAsk(jobTitle(job))}</p>
          <div class="row">
            <button type="button" class="button main" onClick={() => void saveFirst(job.id)}>
              {words.deleteSendFirst}
            </button>
            <button type="button" class="button" onClick={() => void deleteJob(job.id).then(readJobs)}>
              {words.deleteNow}
            </button>
            <button type="button" class="button plain" onClick={() => setAsking(null)}>
              {say().general.cancel}
            </button>
          </div>
        </>
      ) : (
        <button type="button" class="item" onClick={() => setAsking(job.id)}>
          <span class="grow">{jobTitle(job)}</span>
        </button>
      )}
    </li>
  );
  return (
    <section class="stack">
      <h2>{words.deleteJob}</h2>
      <JobList looker="dock" empty="" narrow all row={row} />
    </section>
  );
}
