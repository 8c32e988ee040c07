/** The jobs, pictures and settings on this device. */

export type { AppendOutcome, PhotoIds, Store, Unsaved } from './contract.ts';
export { StoreFailure, type StoreFailureCode } from './failure.ts';
export type { Damaged, Imported, JobRead } from './logbook.ts';
export type { CopyWay, JobSummary, LastCopy, StoredPhoto } from './schema.ts';
export type { Setting, SettingKey, Settings } from './settings.ts';
export { openStore, type StoreOptions } from './store.ts';
