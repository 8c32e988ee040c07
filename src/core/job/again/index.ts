/** A piece to be declared again: as a template, for a sister boat, on paper. Apart, so that the first load does not carry it. */
export { declarationOf } from './declaration-of.ts';
export { freshIds, renamed } from './renamed.ts';
export { sisterOf } from './sister.ts';
