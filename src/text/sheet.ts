import { benchSheet } from './en/bench-sheet.ts';
import { inLanguage } from './rooms.ts';

/** The words of what is printed at the bench, apart from the rest so that nothing else carries them. */
export function saySheet(): typeof benchSheet {
  return inLanguage('benchSheet', benchSheet);
}
