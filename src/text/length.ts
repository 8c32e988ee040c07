import { length } from './en/length.ts';
import { inLanguage } from './rooms.ts';

/** Why a length was not understood, apart from the rest: it comes with the pad. */
export function sayLength(): typeof length {
  return inLanguage('length', length);
}
