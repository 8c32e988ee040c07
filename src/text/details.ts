import { details } from './en/details.ts';
import { inLanguage } from './rooms.ts';

/** The words about a job's own details, apart from the rest: they are seldom looked at. */
export function sayDetails(): typeof details {
  return inLanguage('details', details);
}
