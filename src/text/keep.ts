import { keep } from './en/keep.ts';

/** The words about keeping everything safe, apart from the rest: they are seldom needed. */
export function sayKeep(): typeof keep {
  return keep;
}
