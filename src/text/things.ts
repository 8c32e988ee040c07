import { dockThings } from './en/dock-things.ts';
import { inLanguage } from './rooms.ts';

/** The words of things in the way at the dock, apart from the rest so that the first load does not carry them. */
export function sayThings(): typeof dockThings {
  return inLanguage('dockThings', dockThings);
}
