import { takeIn } from './en/take-in.ts';
import { inLanguage } from './rooms.ts';

/** What is said of files, apart from the rest: it is read when a file is opened. */
export function sayTakeIn(): typeof takeIn {
  return inLanguage('takeIn', takeIn);
}
