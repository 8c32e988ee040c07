import { jobs } from './en/jobs.ts';

/** Words of finding and putting away, apart from the rest: they come after the list itself. */
export function sayJobs(): typeof jobs {
  return jobs;
}
