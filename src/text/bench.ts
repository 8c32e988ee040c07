import { bench } from './en/bench.ts';
import { inLanguage } from './rooms.ts';

/** The bench's own words, apart from the rest so that the dock's first load does not carry them. */
export function sayBench(): typeof bench {
  return inLanguage('bench', bench);
}
