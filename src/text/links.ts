import { links } from './en/links.ts';
import { inLanguage } from './rooms.ts';

/** What is said of links between shop and phone, apart from the rest: it is read when a link is opened or made. */
export function sayLinks(): typeof links {
  return inLanguage('links', links);
}
