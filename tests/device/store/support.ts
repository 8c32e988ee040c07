import { deleteDB, openDB } from 'idb';
import type { Entry, EntryKind, Payload } from '../../../src/core/job/index.ts';
import { uuid } from '../../../src/device/clock.ts';
import type { OpenFunction } from '../../../src/device/store/connection.ts';
import { DATABASE, type Database, type Schema, type StoredPhoto } from '../../../src/device/store/schema.ts';

export const DEVICE = '0198a000-0000-7000-8000-000000000001';

/** One thing done in a job. seen: the entry before it, unless said otherwise. */
export function entry<K extends EntryKind>(job: string, kind: K, payload: Payload<K>, seen: string[] = []): Entry {
  return {
    id: uuid(),
    job,
    at: '2026-05-04T09:30:00+02:00',
    who: { name: 'Ona', role: 'installer' },
    device: DEVICE,
    seen,
    kind,
    payload,
  };
}

export const opening = (job: string, name = 'Wind Rose'): Entry =>
  entry(job, 'job.open', { name, system: 'imperial', fraction: 16 });

export const note = (job: string, text: string, seen: string[] = []): Entry =>
  entry(job, 'note.add', { on: null, text }, seen);

export function photo(seed: number, size = 64): StoredPhoto {
  const bytes = new Uint8Array(size).fill(seed).buffer;
  return { sha256: seed.toString(16).padStart(64, '0'), mime: 'image/jpeg', size, bytes };
}

export function photoEntry(job: string, picture: StoredPhoto, seen: string[] = []): Entry {
  const { sha256, mime, size } = picture;
  const about = { photo: uuid(), width: 8, height: 8, piece: uuid(), slot: null, placeKept: false };
  return entry(job, 'photo.add', { ...about, sha256, mime, size }, seen);
}

/** What happens to a transaction before it is made. */
export type Fault = (database: Database) => void;

/**
 * A disk whose connections can be made to fail. fault: called before every transaction, throws to play a failure.
 * opened: how often a connection was made.
 */
export function faultyDisk(): { open: OpenFunction; opened: number; fault: Fault | null } {
  const disk = {
    opened: 0,
    fault: null as Fault | null,
    open: (async (name, version, callbacks) => {
      disk.opened += 1;
      const database = await openDB<Schema>(name, version, callbacks);
      return new Proxy(database, {
        get(target, property) {
          // idb's own shortcuts (get, put, ...) go through its proxy, not ours.
          if (['transaction', 'get', 'put'].includes(String(property))) disk.fault?.(target);
          const value: unknown = Reflect.get(target, property);
          return typeof value === 'function' ? value.bind(target) : value;
        },
      });
    }) as OpenFunction,
  };
  return disk;
}

export const domError = (name: string): DOMException => new DOMException('played by the test', name);

/** A look past the store, straight at the disk; and a hand that can damage it. */
export async function onDisk<T>(work: (database: Database) => Promise<T>): Promise<T> {
  const database = await openDB<Schema>(DATABASE);
  try {
    return await work(database);
  } finally {
    database.close();
  }
}

export const wipe = (): Promise<void> => deleteDB(DATABASE);
