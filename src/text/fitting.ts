import { fitting } from './en/fitting.ts';
import { inLanguage } from './rooms.ts';

/** The words about what was found at the fitting, apart from the rest: they come when a piece was cut. */
export function sayFitting(): typeof fitting {
  return inLanguage('fitting', fitting);
}
