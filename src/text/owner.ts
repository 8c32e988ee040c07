import { glossary } from './en/glossary.ts';
import { lessons } from './en/lessons.ts';
import { owner } from './en/owner.ts';
import { inLanguage } from './rooms.ts';

/** Words for whoever measures a boat of their own for the first time, apart from the rest: only they load them. */
export const sayOwner = (): typeof owner => inLanguage('owner', owner);
export const sayLessons = (): typeof lessons => inLanguage('lessons', lessons);
export const sayGlossary = (): typeof glossary => inLanguage('glossary', glossary);
