import type { DBSchema, IDBPDatabase } from 'idb';
import * as z from 'zod/mini';
import { Id, PieceKind, Sha256 } from '../../core/job/index.ts';

export const DATABASE = 'tapetrue';
export const VERSION = 1;

/** How a copy of the job left this device; received: it came from elsewhere, so a copy is there. */
const CopyWay = z.enum(['shared', 'downloaded', 'sent', 'received']);

/** heads: what the copy held; equal to the job's heads while nothing happened since. at: ISO 8601. */
export const LastCopy = z.object({ heads: z.array(Id), at: z.string(), how: CopyWay });
export type LastCopy = z.infer<typeof LastCopy>;

/** Raised when the same logbook would give another standing: those of an older edition are made anew. */
export const STANDING_EDITION = 1;

/**
 * How far a job is. steps, done: over all pieces; asked: steps the shop asked again. cleared, voided: pieces whose last
 * clearance stands, or was voided by what came after it. waiting: a shop asked for it and nobody has begun.
 */
export const JobStanding = z.object({
  edition: z.literal(STANDING_EDITION),
  steps: z.int(),
  done: z.int(),
  asked: z.int(),
  cleared: z.int(),
  voided: z.int(),
  waiting: z.optional(z.literal(true)),
});
export type JobStanding = z.infer<typeof JobStanding>;

/**
 * One line of the list of jobs: a cache of the logbook, rebuilt whenever it is missing, damaged or stale. Only
 * lastCopy and archived are known nowhere else. entries: how many. lastAt: ISO 8601, the latest by the clocks.
 * standing: null while it is not known.
 */
export const JobSummary = z.object({
  id: Id,
  name: z.string(),
  customer: z.string(),
  boat: z.string(),
  pieces: z.array(z.object({ id: Id, kind: PieceKind, name: z.string() })),
  entries: z.int(),
  lastAt: z.nullable(z.string()),
  heads: z.array(Id),
  demo: z.boolean(),
  standing: z.nullable(JobStanding),
  lastCopy: z.nullable(LastCopy),
  archived: z.boolean(),
});
export type JobSummary = z.infer<typeof JobSummary>;

/** What of a record only this device knows; each is kept whatever became of the rest. */
export const OwnFacts = z.object({
  lastCopy: z.catch(z.nullable(LastCopy), null),
  archived: z.catch(z.boolean(), false),
});
export type OwnFacts = z.infer<typeof OwnFacts>;

/**
 * stale: only a fold can tell what the names are now. erasures: the logbook holds some, so a new entry may arrive erased.
 * A standing of another edition, or none as earlier versions wrote it, leaves the rest of the record readable.
 */
export const JobRecord = z.extend(JobSummary, {
  standing: z.catch(z.nullable(JobStanding), null),
  stale: z.boolean(),
  erasures: z.boolean(),
});
export type JobRecord = z.infer<typeof JobRecord>;

/**
 * A picture's bytes under their own SHA-256. An ArrayBuffer always, never a Blob: private windows of WebKit abort
 * every transaction that puts a Blob, with no error given.
 */
export const StoredPhoto = z.object({
  sha256: Sha256,
  mime: z.string(),
  size: z.int().check(z.gt(0)),
  bytes: z.custom<ArrayBuffer>((value) => value instanceof ArrayBuffer),
});
export type StoredPhoto = z.infer<typeof StoredPhoto>;

/** Values are unknown on purpose: what comes from a disk is parsed, never trusted. */
export interface Schema extends DBSchema {
  entries: { key: string; value: unknown; indexes: { job: string } };
  photos: { key: string; value: unknown };
  jobs: { key: string; value: unknown };
  settings: { key: string; value: unknown };
}
export type Database = IDBPDatabase<Schema>;
export type StoreName = 'entries' | 'photos' | 'jobs' | 'settings';
export const STORE_NAMES = ['entries', 'photos', 'jobs', 'settings'] as const satisfies readonly StoreName[];

/** Brings a database of an older version up to VERSION, one step a version. */
export function upgrade(database: Database, from: number): void {
  if (from < 1) {
    database.createObjectStore('entries', { keyPath: 'id' }).createIndex('job', 'job');
    database.createObjectStore('photos', { keyPath: 'sha256' });
    database.createObjectStore('jobs', { keyPath: 'id' });
    database.createObjectStore('settings');
  }
}
