import { keep } from './en/keep.ts';
import { inLanguage } from './rooms.ts';

/** The words about keeping everything safe, apart from the rest: they are seldom needed. */
export function sayKeep(): typeof keep {
  return inLanguage('keep', keep);
}
