import canonicalize from 'canonicalize';
import { shortAsk } from './ask.ts';
import { type Link, VERSION } from './link.ts';
import { shortRequest } from './request.ts';
import { shorten } from './short.ts';
import { writeFrame } from './write-frame.ts';

/** The link's code, for the end of an address. Null: too much for any link. */
export function writeLink(link: Link): string | null {
  const content = link.t === 'request' ? { t: 'r', ...shortRequest(link.request) } : { t: 'a', ...shortAsk(link.ask) };
  return writeFrame(canonicalize(shorten(content)) ?? '', VERSION);
}
