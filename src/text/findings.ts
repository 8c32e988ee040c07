import { findings } from './en/findings.ts';

/** What the rules say, apart from the rest: it is read with the first step, not with the first screen. */
export function sayFindings(): typeof findings {
  return findings;
}
