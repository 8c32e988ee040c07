import { takeIn } from './en/take-in.ts';

/** What is said of files, apart from the rest: it is read when a file is opened. */
export function sayTakeIn(): typeof takeIn {
  return takeIn;
}
