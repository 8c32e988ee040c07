import type { AskAgain } from './ask.ts';
import { lengthOfFrame } from './frame.ts';
import type { JobRequest } from './request.ts';

/** Raised when an older reader would misread what is written; what it can pass over needs no new number. */
export const VERSION = 1;

/** A link, by what it is for. Its `t` is permanent. */
export type Link =
  | { readonly t: 'request'; readonly request: JobRequest }
  | { readonly t: 'ask'; readonly ask: AskAgain };

/** What every address of a link has before its code. */
const LINK_FRAGMENT = '#/r/';

/** The address of a link. page: the app's own, without its fragment. */
export const linkAddress = (page: string, code: string): string => `${page}${LINK_FRAGMENT}${code}`;

/** The code of the first link in a text, whatever stands round it; mail may have broken its lines. Null where there is none. */
export function codeInText(text: string): string | null {
  const at = text.indexOf(LINK_FRAGMENT);
  if (at < 0) return null;
  const rest = text.slice(at + LINK_FRAGMENT.length);
  const unbroken = rest.replace(/\s+/g, '');
  const length = lengthOfFrame(unbroken);
  return length === null ? (/^[\w-]*/.exec(rest)?.[0] ?? '') : unbroken.slice(0, length);
}
