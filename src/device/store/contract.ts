import type { ReadonlySignal } from '@preact/signals';
import type { Entry } from '../../core/job/index.ts';
import type { StoreFailureCode } from './failure.ts';
import type { Unsaved } from './held.ts';
import type { SoFar } from './jobs.ts';
import type { Kept, KeptJob, Restored } from './kept.ts';
import type { Imported, JobRead } from './logbook.ts';
import type { JobSummary, LastCopy, StoredPhoto } from './schema.ts';
import type { Settings } from './settings.ts';

export type AppendOutcome = 'saved' | Exclude<StoreFailureCode, 'conflict'>;

/** Which of a job's pictures are on this device, and which its logbook names but are not here. */
export interface PhotoIds {
  here: string[];
  missing: string[];
}

/** The jobs on this device. What a method throws is a StoreFailure. */
export interface Store {
  /** What could not be written; null when everything is on disk. Offer a backup file of it and block leaving. */
  readonly unsaved: ReadonlySignal<Unsaved | null>;
  /** Something given to the store is not known to be on disk: under way, or unsaved. */
  readonly atRisk: ReadonlySignal<boolean>;
  /** The latest trouble with the disk; null after the next write that went through. */
  readonly trouble: ReadonlySignal<StoreFailureCode | null>;
  /**
   * The site's data was cleared under the open page, by a person or the browser. What a screen still holds can be
   * written back with `importEntries`.
   */
  readonly emptied: ReadonlySignal<boolean>;
  /**
   * The disk was full to the last byte in the middle of a write, and what is stored has not been made safe since.
   * Some browsers throw such a database away at their next start: offer copies of all jobs before anything else.
   */
  readonly torn: ReadonlySignal<boolean>;
  readonly settings: Settings;
  /** This device's own id: made once, the same ever after. Never throws; where it cannot be kept it lasts the visit. */
  deviceId(): Promise<string>;
  /**
   * Writes entries of one job, and the pictures they name, in one strict transaction. 'saved': all of it is on disk,
   * and only then. Any other code: it is kept in `unsaved` and tried again with every later append, with `retry` and
   * when the page comes back to the front. An entry that is here already is passed over. Throws on 'conflict' only
   * (an id that is here with other content, or entries of several jobs): then nothing of the call is stored or kept.
   * 'gone': the job they go on with was deleted meanwhile, from another tab; it comes back with `importEntries` of all
   * that is still held of it, which takes what is unsaved along, or is let go with `deleteJob`.
   */
  append(entries: readonly Entry[], photos?: readonly StoredPhoto[]): Promise<AppendOutcome>;
  /** Tries to write what is unsaved; `unsaved` tells the outcome. */
  retry(): Promise<void>;
  /** A job's logbook, what is unsaved included; and what is on disk but cannot be read. Empty for an unknown job. */
  readJob(job: string): Promise<JobRead>;
  /** Latest first. soFar: told what is known already, before the lost and the stale of thousands are read anew. */
  listJobs(soFar?: SoFar): Promise<JobSummary[]>;
  /**
   * Merges a packet's logbook and pictures, all or nothing. The caller has checked that the bytes have their hashes.
   * Entries of another job are a 'conflict'. received: when it came from elsewhere, ISO 8601: then a copy is there.
   */
  importEntries(
    job: string,
    entries: readonly Entry[],
    photos: readonly StoredPhoto[],
    received?: string | null,
  ): Promise<Imported>;
  putPhoto(photo: StoredPhoto): Promise<void>;
  /** Null when it is not here, or cannot be read. */
  getPhoto(sha256: string): Promise<StoredPhoto | null>;
  photoIds(job: string): Promise<PhotoIds>;
  setLastCopy(job: string, copy: LastCopy): Promise<void>;
  setArchived(job: string, archived: boolean): Promise<void>;
  /** Removes the job, its unsaved entries and its pictures from this device for good. */
  deleteJob(job: string): Promise<void>;
  /** All that is kept here, what is unsaved included, one thing after the other: for a backup, and to weigh it. */
  everything(): AsyncIterable<Kept>;
  /**
   * Puts one job of a backup back, all or nothing, its pictures having been put before. A merge: nothing that is here is
   * overwritten or removed, and an entry with a known id and other content is set aside.
   */
  restore(job: Omit<KeptJob, 'facts'> & { facts: unknown }): Promise<Restored>;
  /** Puts records that belong to no job back where their place is empty; how many that were. */
  restoreStrays(raws: readonly unknown[]): Promise<number>;
  /** Every picture on the disk, whoever names it. */
  photosHere(): Promise<ReadonlySet<string>>;
  /** Lets go of the database; the next use opens it again. */
  close(): void;
}
