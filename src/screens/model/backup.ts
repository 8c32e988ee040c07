import { now } from '../../device/clock.ts';
import { type BackupFile, type BackupFound, makeBackup } from '../../device/packet-file/index.ts';
import { type RestoreOptions, type RestoreOutcome, restoreBackup } from '../../device/restore.ts';
import { readJobs } from './jobs.ts';
import { loadJob, openJob } from './open-job.ts';
import { actor, choosePerson, chooseTheme, chooseUnits, device, store } from './services.ts';
import { readShop } from './shop.ts';

/** Everything this device keeps as one file. */
export function backUp(onProgress: (fraction: number) => void): Promise<BackupFile> {
  const made = { at: now(), device: device.value, by: actor.value };
  return makeBackup(made, () => store().everything(), onProgress);
}

/** What restoring would do: jobs that are new to this device, and jobs that are here and would be added to. */
export async function planOf({ jobs }: BackupFound): Promise<{ fresh: number; known: number }> {
  const here = new Set((await store().listJobs()).map(({ id }) => id));
  const known = jobs.filter(({ id }) => here.has(id)).length;
  return { fresh: jobs.length - known, known };
}

/** Restores, and shows what is there now. */
export async function restore(file: Blob, found: BackupFound, options: RestoreOptions): Promise<RestoreOutcome> {
  const outcome = await restoreBackup(store(), file, found, options);
  const { settings } = store();
  const [person, units, theme] = await Promise.all([
    settings.get('person'),
    settings.get('units'),
    settings.get('theme'),
  ]);
  if (person) await choosePerson(person);
  if (units) await chooseUnits(units);
  if (theme) await chooseTheme(theme);
  await readShop();
  await readJobs();
  if (openJob.value) await loadJob(openJob.value.id);
  return outcome;
}
