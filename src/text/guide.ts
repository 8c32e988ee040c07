import { guide } from './en/guide.ts';
import { inLanguage } from './rooms.ts';

/** How readings are named and asked for, apart from the rest: it comes with a job. */
export function sayGuide(): typeof guide {
  return inLanguage('guide', guide);
}
