import { jobs } from './en/jobs.ts';
import { inLanguage } from './rooms.ts';

/** Words of finding and putting away, apart from the rest: they come after the list itself. */
export function sayJobs(): typeof jobs {
  return inLanguage('jobs', jobs);
}
