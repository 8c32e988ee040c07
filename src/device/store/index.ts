/** The jobs, pictures and settings on this device. */
export type { Store } from './contract.ts';
export { StoreFailure, type StoreFailureCode } from './failure.ts';
export type { Kept } from './kept.ts';
export { bringFolding } from './logbook.ts';
export type { JobStanding, JobSummary, LastCopy, StoredPhoto } from './schema.ts';
export type { Setting } from './settings.ts';
export { openStore, type StoreOptions } from './store.ts';
export { summaryOf } from './summarise.ts';
