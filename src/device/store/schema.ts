import type { DBSchema, IDBPDatabase } from 'idb';
import * as z from 'zod/mini';
import { Id, PieceKind, Sha256 } from '../../core/job/index.ts';

export const DATABASE = 'tapetrue';
export const VERSION = 1;

/** How a copy of the job left this device. */
export const CopyWay = z.enum(['shared', 'downloaded', 'sent']);
export type CopyWay = z.infer<typeof CopyWay>;

/** heads: what the copy held; equal to the job's heads while nothing happened since. at: ISO 8601. */
export const LastCopy = z.object({ heads: z.array(Id), at: z.string(), how: CopyWay });
export type LastCopy = z.infer<typeof LastCopy>;

/**
 * One line of the list of jobs: a cache of the logbook, rebuilt whenever it is missing, damaged or stale. Only
 * lastCopy and archived are known nowhere else. entries: how many. lastAt: ISO 8601, the latest by the clocks.
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
  lastCopy: z.nullable(LastCopy),
  archived: z.boolean(),
});
export type JobSummary = z.infer<typeof JobSummary>;

/** stale: must be rebuilt before it is shown. erasures: the logbook holds some, so a new entry may arrive erased. */
export const JobRecord = z.extend(JobSummary, { stale: z.boolean(), erasures: z.boolean() });
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
