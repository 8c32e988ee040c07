/** The job: entries, the logbook they make, and the sheet it folds to. */
export * from './declarations.ts';
export { type Deed, deed } from './deed.ts';
export * from './entries.ts';
export { fold } from './fold.ts';
export { inForceCheck, parseAhead } from './gather.ts';
export { merge } from './merge.ts';
export { Causality, causalOrder, heads } from './order.ts';
export { picturesOf } from './pictures.ts';
export { REFERENCE_SIZES, referenceLength, widthAtReference } from './references.ts';
export { type RemovedPhoto, removedPhotos } from './removed-photos.ts';
export { sameContent } from './same-content.ts';
export * from './sheet.ts';
export type { Fitting, Practice } from './sheet-beside.ts';
export * from './shop-rules.ts';
export { isOfClosure, lacksOfStretch, type StretchLack } from './stretch-lacks.ts';
export { nextToTakeBack, takenBackWith } from './undo.ts';
export { entriesOfPhoto, withdrawDetails } from './withdraw.ts';
export * from './words.ts';
