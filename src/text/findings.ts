import { findings } from './en/findings.ts';
import { slips } from './en/slips.ts';
import { inLanguage } from './rooms.ts';

/** What the rules say, apart from the rest: it is read with the first step, not with the first screen. */
export function sayFindings(): typeof findings {
  return inLanguage('findings', findings);
}

/** What slips are called; nobody is told of one before the first step either. */
export function saySlips(): typeof slips {
  return inLanguage('slips', slips);
}
