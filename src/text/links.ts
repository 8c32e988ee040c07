import { links } from './en/links.ts';

/** What is said of links between shop and phone, apart from the rest: it is read when a link is opened or made. */
export function sayLinks(): typeof links {
  return links;
}
