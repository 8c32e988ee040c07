import type { JobSummary } from '../../device/store/index.ts';

/** Where the last copy of a job stands: none made, older than the job, or the same. */
export function copyState(job: Pick<JobSummary, 'lastCopy' | 'heads'>): 'none' | 'older' | 'same' {
  if (!job.lastCopy) return 'none';
  return job.lastCopy.heads.join() === job.heads.join() ? 'same' : 'older';
}
