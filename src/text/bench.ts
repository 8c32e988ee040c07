import { bench } from './en/bench.ts';

/** The bench's own words, apart from the rest so that the dock's first load does not carry them. */
export function sayBench(): typeof bench {
  return bench;
}
