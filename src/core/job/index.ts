/** The job: entries, the logbook they make, and the sheet it folds to. */
export * from './declarations.ts';
export * from './entries.ts';
export { fold } from './fold.ts';
export { merge } from './merge.ts';
export { Causality, causalOrder, heads } from './order.ts';
export { sameContent } from './same-content.ts';
export * from './sheet.ts';
export * from './shop-rules.ts';
export * from './words.ts';
