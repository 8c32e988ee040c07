import { benchLinks } from './en/bench-links.ts';

/** What the shop reads when it sends a link. */
export function sayBenchLinks(): typeof benchLinks {
  return benchLinks;
}
