import type { Entry } from '../../core/job/index.ts';
import type { Connection } from './connection.ts';
import type { HeldBatches } from './held.ts';
import { jobsOnDisk } from './jobs.ts';
import { type Imported, isHere, mergeInto, ownFacts, readLogbook, textField } from './logbook.ts';
import { OwnFacts, StoredPhoto } from './schema.ts';
import { OneBreath, type ReadTransaction, read, type WriteTransaction } from './transact.ts';

/** One job as it is kept: its entries, those that cannot be read as they are, and what only this device knows of it. */
export interface KeptJob {
  id: string;
  entries: readonly Entry[];
  damaged: readonly unknown[];
  facts: OwnFacts;
}

/**
 * Something this device keeps. counts: told first, for whoever shows how far a walk over everything is. stray: a record
 * among the entries that belongs to no job. lost: a picture whose record cannot be read.
 */
export type Kept =
  | { readonly is: 'counts'; readonly jobs: number; readonly photos: number }
  | { readonly is: 'setting'; readonly key: string; readonly value: unknown }
  | { readonly is: 'job'; readonly job: KeptJob }
  | { readonly is: 'stray'; readonly raw: unknown }
  | { readonly is: 'photo'; readonly photo: StoredPhoto }
  | { readonly is: 'lost'; readonly sha256: string };

/** What putting a job back did. damaged: unreadable records put back as they are. */
export interface Restored extends Imported {
  damaged: number;
}

/** Everything on the disk and in memory, one thing after the other: never more than one job or one picture at once. */
export async function* everythingKept(connection: Connection, held: HeldBatches): AsyncGenerator<Kept> {
  const jobs = [...new Set([...(await jobsOnDisk(connection)), ...held.jobs()])];
  const photos = await connection.run((database) => database.getAllKeys('photos'));
  yield { is: 'counts', jobs: jobs.length, photos: photos.length };
  for (const key of await connection.run((database) => database.getAllKeys('settings')))
    yield { is: 'setting', key, value: await connection.run((database) => database.get('settings', key)) };
  for (const id of jobs) {
    const job = await connection.run((database) => read(database, (tx) => keptJob(tx, id)));
    yield { is: 'job', job: { ...job, entries: held.complete(id, [...job.entries]) } };
  }
  for (const raw of await strays(connection)) yield { is: 'stray', raw };
  const inMemory = held.photos().filter(({ sha256 }) => !photos.includes(sha256));
  for (const sha256 of photos) {
    const raw = await connection.run((database) => database.get('photos', sha256));
    const photo = StoredPhoto.safeParse(raw);
    if (photo.success) yield { is: 'photo', photo: photo.data };
    // Removed while this went on: nothing is lost.
    else if (raw !== undefined) yield { is: 'lost', sha256 };
  }
  for (const photo of inMemory) yield { is: 'photo', photo };
}

async function keptJob(transaction: ReadTransaction, id: string): Promise<KeptJob> {
  const { entries, damaged } = await readLogbook(transaction, id);
  return { id, entries, damaged: damaged.map(({ raw }) => raw), facts: await ownFacts(transaction, id) };
}

/** Records whose job cannot be told are in no index; only where the counts differ are they looked for. */
async function strays(connection: Connection): Promise<unknown[]> {
  return await connection.run((database) =>
    read(database, async (tx) => {
      const store = tx.objectStore('entries');
      if ((await store.count()) === (await store.index('job').count())) return [];
      const found: unknown[] = [];
      let cursor = await store.openCursor();
      while (cursor) {
        if (textField(cursor.value, 'job') === null) found.push(cursor.value);
        cursor = await cursor.continue();
      }
      return found;
    }),
  );
}

/**
 * Puts a kept job back: its entries are merged as a packet's are, so nothing here is overwritten or removed; a damaged
 * record only where its place is empty; what only a device knows of a job, only where the job was not here.
 */
export async function putBack(
  transaction: WriteTransaction,
  { id, entries, damaged, facts }: Omit<KeptJob, 'facts'> & { facts: unknown },
): Promise<Restored> {
  const wasHere = await isHere(transaction, id);
  const imported = await mergeInto(transaction, id, entries, []);
  const added = await putBackDamaged(transaction, damaged);
  if (!wasHere) {
    const jobs = transaction.objectStore('jobs');
    const record = await jobs.get(id);
    await jobs.put({ ...Object(record), id, ...OwnFacts.parse(facts) });
  }
  return { ...imported, damaged: added };
}

/** How many found their place empty. */
export async function putBackDamaged(transaction: WriteTransaction, damaged: readonly unknown[]): Promise<number> {
  const store = transaction.objectStore('entries');
  const writes = new OneBreath();
  let added = 0;
  for (const raw of damaged) {
    const id = textField(raw, 'id');
    if (id === null || (await store.getKey(id)) !== undefined) continue;
    writes.ask(store.add(raw));
    added += 1;
  }
  await writes.done();
  return added;
}
