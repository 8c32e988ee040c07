/** The jobs, pictures and settings on this device. */
export { StoreFailure, type StoreFailureCode } from './failure.ts';
export type { Damaged, Imported, JobRead } from './logbook.ts';
export type { CopyWay, JobSummary, LastCopy, StoredPhoto } from './schema.ts';
export type { Setting, SettingKey, Settings } from './settings.ts';
export { type AppendOutcome, openStore, type PhotoIds, type Store, type StoreOptions, type Unsaved } from './store.ts';
