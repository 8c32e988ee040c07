import { useEffect, useState } from 'preact/hooks';
import type { JobSummary, Setting } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { sayKeep } from '../../text/keep.ts';
import { sayShop } from '../../text/shop.ts';
import { jobTitle } from '../model/job-words.ts';
import { jobs, readJobs } from '../model/jobs.ts';
import { routeHash } from '../model/route.ts';
import { choosePerson, chooseTheme, chooseUnits, person, theme, units } from '../model/services.ts';
import { JobList } from '../parts/jobs/JobList.tsx';
import { BackupSection } from '../parts/keep/BackupSection.tsx';
import { DeleteJob } from '../parts/keep/DeleteJob.tsx';
import { StorageUse } from '../parts/keep/StorageUse.tsx';
import { LanguageField } from '../parts/LanguageField.tsx';
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
        <h2>{words.language}</h2>
        <LanguageField />
        <p class="quiet small">{words.languageHelp}</p>
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
      <StorageUse />
      <BackupSection />
      <section class="stack">
        <h2>{words.install}</h2>
        <InstallOffer />
      </section>
      <DeleteJobs />
    </div>
  );
}

/** Every job, those put away among them; a tap asks whether it is to go. */
function DeleteJobs() {
  const [asking, setAsking] = useState<string | null>(null);
  useEffect(() => void readJobs().catch(() => undefined), []);
  if (!jobs.value?.length) return null;
  const row = (job: JobSummary) => (
    <li key={job.id} class="stack">
      {asking === job.id ? (
        <DeleteJob job={job} onDeleted={() => void readJobs()} onCancel={() => setAsking(null)} />
      ) : (
        <button type="button" class="item" onClick={() => setAsking(job.id)}>
          <span class="grow">{jobTitle(job)}</span>
        </button>
      )}
    </li>
  );
  return (
    <section class="stack">
      <h2>{sayKeep().remove.heading}</h2>
      <JobList looker="dock" empty="" narrow all row={row} />
    </section>
  );
}
