import { batch, computed, signal } from '@preact/signals';
import type { JobSummary, LastCopy } from '../../device/store/index.ts';
import { openJob } from './opened.ts';
import { store } from './services.ts';

const read = signal<JobSummary[] | null>(null);
/** How many jobs are here and not in the list yet: their records were lost and are being read anew. */
export const jobsToCome = signal(0);

/** The jobs on this device, latest first; null before they were read. The open one as it stands on the screen. */
export const jobs = computed<JobSummary[] | null>(() => {
  const open = openJob.value;
  const list = read.value;
  if (!list || !open) return list;
  return list.map((job) => (job.id === open.id ? { ...job, ...open.summary() } : job));
});

let readings = 0;

/** Reads the list from the device; what is known is shown while the rest is still read. */
export async function readJobs(): Promise<void> {
  readings += 1;
  const mine = readings;
  const show = (list: JobSummary[], left: number): void => {
    // A reading that was overtaken has nothing to say any more, nor has the beginning of one where all was known.
    if (mine !== readings || (left > 0 && list.length < (read.value?.length ?? 0))) return;
    batch(() => {
      read.value = list;
      jobsToCome.value = left;
    });
  };
  show(await store().listJobs(show), 0);
}

/** Puts a job away from the list, or takes it back. Nothing of it is touched. */
export async function setPutAway(id: string, archived: boolean): Promise<void> {
  await store().setArchived(id, archived);
  note(id, { archived });
}

/** Remembers that a copy of the job exists elsewhere. */
export async function rememberCopy(id: string, lastCopy: LastCopy): Promise<void> {
  await store().setLastCopy(id, lastCopy);
  note(id, { lastCopy });
}

function note(id: string, facts: Partial<JobSummary>): void {
  read.value = read.value?.map((job) => (job.id === id ? { ...job, ...facts } : job)) ?? null;
}
