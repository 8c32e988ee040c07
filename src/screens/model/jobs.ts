import { signal } from '@preact/signals';
import type { JobSummary } from '../../device/store/index.ts';
import { store } from './services.ts';

/** The jobs on this device, latest first; null before they were read. */
export const jobs = signal<JobSummary[] | null>(null);

export async function readJobs(): Promise<void> {
  jobs.value = await store().listJobs();
}

/** Where the last copy of a job stands: none made, older than the job, or the same. */
export function copyState(job: JobSummary): 'none' | 'older' | 'same' {
  if (!job.lastCopy) return 'none';
  return job.lastCopy.heads.join() === job.heads.join() ? 'same' : 'older';
}
