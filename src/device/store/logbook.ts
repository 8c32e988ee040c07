import { Entry, heads, isErased, merge, picturesOf, sameContent } from '../../core/job/index.ts';
import { StoreFailure } from './failure.ts';
import { JobRecord, type LastCopy, OwnFacts, type StoredPhoto } from './schema.ts';
import { extend, NO_FACTS } from './summary.ts';
import { OneBreath, type ReadTransaction, Stretches, type WriteTransaction } from './transact.ts';

/** Something on disk that does not parse: kept where it is, and to be put into backups as it is. */
export interface Damaged {
  id: string;
  raw: unknown;
}
export interface JobRead {
  entries: Entry[];
  damaged: Damaged[];
}

/** What an import did. known: entries that were here already. setAside: same id, other content; not stored. */
export interface Imported {
  added: number;
  known: number;
  setAside: Entry[];
}

type Transaction = ReadTransaction | WriteTransaction;

/** Everything on disk of one job, parsed. */
export async function readLogbook(transaction: Transaction, job: string): Promise<JobRead> {
  const entries: Entry[] = [];
  const damaged: Damaged[] = [];
  const store = transaction.objectStore('entries');
  const raws = await store.index('job').getAll(job);
  const stretches = new Stretches(transaction);
  for (const raw of raws) {
    await stretches.pause();
    const parsed = Entry.safeParse(raw);
    if (parsed.success) entries.push(parsed.data);
    else damaged.push({ id: textField(raw, 'id') ?? '', raw });
  }
  return { entries, damaged };
}

/** The record of one job as it is on disk; null when there is none that can be read. */
export async function readRecord(transaction: Transaction, job: string): Promise<JobRecord | null> {
  const parsed = JobRecord.safeParse(await transaction.objectStore('jobs').get(job));
  return parsed.success ? parsed.data : null;
}

/** Makes the record of one job anew from its logbook. */
export async function rebuildRecord(transaction: WriteTransaction, job: string): Promise<JobRecord> {
  const facts = await ownFacts(transaction, job);
  const { entries } = await readLogbook(transaction, job);
  const record = await summariseCalmly(transaction, job, entries, facts);
  await transaction.objectStore('jobs').put(record);
  return record;
}

/** What folds a logbook: not in the first load, and to be here before a transaction begins, which would not wait for it. */
let folding: typeof import('./summarise.ts') | null = null;

export async function bringFolding(): Promise<void> {
  folding ??= await import('./summarise.ts');
}

/** The summary of a whole logbook, without standing still for all of it. Only after `bringFolding`. */
export async function summariseCalmly(
  transaction: Transaction,
  job: string,
  entries: readonly Entry[],
  facts: OwnFacts,
): Promise<JobRecord> {
  if (!folding) throw new Error('nothing to fold with has been brought');
  const { parseAhead, summarise } = folding;
  const stretches = new Stretches(transaction);
  for (const entry of entries) {
    parseAhead(entry);
    await stretches.pause();
  }
  if (entries.length > SHORT) await stretches.rest();
  return summarise(job, entries, facts);
}

/** Logbooks of so many entries are folded in a few milliseconds. */
const SHORT = 200;

/** Whether anything of a job is on the disk, readable or not. */
export async function isHere(transaction: Transaction, job: string): Promise<boolean> {
  return (await transaction.objectStore('entries').index('job').getKey(job)) !== undefined;
}

/**
 * Adds this device's own entries. One that is here already is passed over; one whose id is here with other content
 * refuses the whole batch with StoreFailure 'conflict'. Entries that go on with a job of which nothing is here are
 * refused with 'gone': alone they would be a job without a beginning. alone: they are to be kept all the same.
 */
export async function appendTo(
  transaction: WriteTransaction,
  job: string,
  entries: readonly Entry[],
  photos: readonly StoredPhoto[],
  alone: boolean,
): Promise<void> {
  const record = await readRecord(transaction, job);
  const begins = entries.some((entry) => entry.seen.length === 0);
  if (!record?.entries && !begins && !alone && !(await isHere(transaction, job))) throw new StoreFailure('gone');
  const plain = record !== null && !record.erasures && !entries.some((entry) => entry.kind === 'erase');
  if (!plain) {
    const { setAside } = await mergeInto(transaction, job, entries, photos);
    if (setAside.length > 0) throw new StoreFailure('conflict', setAside);
    return;
  }
  const store = transaction.objectStore('entries');
  const here = await Promise.all(entries.map((entry) => store.get(entry.id)));
  const writes = new OneBreath();
  let next = record;
  for (const [index, entry] of entries.entries()) {
    const known = here[index];
    if (known === undefined) {
      writes.ask(store.add(entry));
      next = extend(next, entry);
    } else if (!sameContent(known, entry)) throw new StoreFailure('conflict', entry);
  }
  for (const photo of photos) writes.ask(transaction.objectStore('photos').put(photo));
  if (next !== record) writes.ask(transaction.objectStore('jobs').put(next));
  await writes.done();
}

/**
 * Merges another logbook of the job and its pictures into what is on disk. Erasures win from either side: the
 * content of what they name is overwritten, and pictures that only erased entries named are removed or not stored.
 * received: when the logbook came from elsewhere, ISO 8601; null when it is this device's own.
 */
export async function mergeInto(
  transaction: WriteTransaction,
  job: string,
  entries: readonly Entry[],
  photos: readonly StoredPhoto[],
  received: string | null = null,
): Promise<Imported> {
  const store = transaction.objectStore('entries');
  const { entries: here, damaged } = await readLogbook(transaction, job);
  const unreadable = new Set(damaged.map(({ id }) => id));
  const before = new Map(here.map((entry) => [entry.id, entry]));
  const readable = entries.filter((entry) => !unreadable.has(entry.id));
  const merged = merge(here, await unlike(transaction, before, readable));
  const after = new Map(merged.entries.map((entry) => [entry.id, entry]));
  const withdrawn = [...here, ...entries].filter(({ id }) => {
    const now = after.get(id);
    return now !== undefined && isErased(now);
  });
  const dead = await unnamed(transaction, picturesOf(withdrawn), merged.entries);
  // Pictures first and one by one, so that many of them never hold the page up for long; without the entries that
  // name them they mean nothing yet.
  for (const photo of photos) if (!dead.has(photo.sha256)) await transaction.objectStore('photos').put(photo);
  const isNew = merged.entries.some((entry) => before.get(entry.id) !== entry);
  const record =
    (isNew ? null : await readRecord(transaction, job)) ??
    (await summariseCalmly(transaction, job, merged.entries, await ownFacts(transaction, job)));
  const writes = new OneBreath();
  const stretches = new Stretches(transaction);
  for (const entry of merged.entries) {
    await stretches.pause();
    const old = before.get(entry.id);
    // add, not put: an id that sits in another job, or whose record hides its job, must never be overwritten.
    if (!old) writes.ask(store.add(entry));
    else if (old !== entry) writes.ask(store.put(entry));
  }
  for (const sha256 of dead) writes.ask(transaction.objectStore('photos').delete(sha256));
  writes.ask(transaction.objectStore('jobs').put({ ...record, lastCopy: copyAfter(record, entries, received) }));
  await writes.done();
  const setAside = [...merged.setAside, ...entries.filter((entry) => unreadable.has(entry.id))];
  return { added: merged.added.length, known: entries.length - merged.added.length - setAside.length, setAside };
}

/** Those that are not here already just as they are: only they need merging. */
async function unlike(
  transaction: Transaction,
  here: ReadonlyMap<string, Entry>,
  entries: readonly Entry[],
): Promise<Entry[]> {
  const stretches = new Stretches(transaction);
  const found: Entry[] = [];
  for (const entry of entries) {
    await stretches.pause();
    const known = here.get(entry.id);
    if (!known || !sameContent(known, entry)) found.push(entry);
  }
  return found;
}

/** Where a logbook came from there is a copy of the job, if what is here now is nothing more. */
function copyAfter(record: JobRecord, came: readonly Entry[], received: string | null): LastCopy | null {
  const { heads: now, lastCopy } = record;
  const isMore = (copy: readonly string[] | undefined): boolean => copy?.join() !== now.join();
  if (received === null || isMore(heads(came)) || !isMore(lastCopy?.heads)) return lastCopy;
  return { heads: now, at: received, how: 'received' };
}

/** Removes a job and the pictures no other job names. */
export async function removeJob(transaction: WriteTransaction, job: string): Promise<void> {
  const store = transaction.objectStore('entries');
  const index = store.index('job');
  const [raws, ids] = await Promise.all([index.getAll(job), index.getAllKeys(job)]);
  const dead = await unnamed(transaction, picturesOf(raws), [], new Set(ids));
  const writes = new OneBreath();
  for (const id of ids) writes.ask(store.delete(id));
  for (const sha256 of dead) writes.ask(transaction.objectStore('photos').delete(sha256));
  writes.ask(transaction.objectStore('jobs').delete(job));
  await writes.done();
}

/**
 * Those of the hashes that no entry names once `coming` is written and `going` is gone. Walks over every entry of
 * every job: only for rare acts.
 */
async function unnamed(
  transaction: WriteTransaction,
  hashes: ReadonlySet<string>,
  coming: readonly Entry[],
  going: ReadonlySet<string> = new Set(coming.map(({ id }) => id)),
): Promise<ReadonlySet<string>> {
  const left = new Set(hashes);
  for (const sha256 of picturesOf(coming)) left.delete(sha256);
  let cursor = left.size > 0 ? await transaction.objectStore('entries').openCursor() : null;
  while (cursor && left.size > 0) {
    if (!going.has(cursor.primaryKey)) for (const sha256 of picturesOf([cursor.value])) left.delete(sha256);
    cursor = await cursor.continue();
  }
  return left;
}

/** What only this device knows of a job, whatever became of the rest of its record. */
export async function ownFacts(transaction: Transaction, job: string): Promise<OwnFacts> {
  const facts = OwnFacts.safeParse(await transaction.objectStore('jobs').get(job));
  return facts.success ? facts.data : NO_FACTS;
}

export function textField(raw: unknown, field: string): string | null {
  if (typeof raw !== 'object' || raw === null) return null;
  const value: unknown = Reflect.get(raw, field);
  return typeof value === 'string' ? value : null;
}
