import { walk } from './en/walk.ts';
import { inLanguage } from './rooms.ts';

/** Words of tables and of what a person changes about a piece, apart from the rest so that the first load does not carry them. */
export function sayWalk(): typeof walk {
  return inLanguage('walk', walk);
}
