import { benchLinks } from './en/bench-links.ts';
import { inLanguage } from './rooms.ts';

/** What the shop reads when it sends a link. */
export function sayBenchLinks(): typeof benchLinks {
  return inLanguage('benchLinks', benchLinks);
}
