import type { Connection } from './connection.ts';
import type { HeldBatches } from './held.ts';
import { bringFolding, readLogbook, readRecord, rebuildRecord, summariseCalmly, textField } from './logbook.ts';
import { JobRecord, type JobSummary } from './schema.ts';
import { NO_FACTS, shown } from './summary.ts';
import { type ReadTransaction, read, type WriteTransaction, write } from './transact.ts';

/** Told what is known of the list while the rest is still read. left: jobs that are here and not in it yet. */
export type SoFar = (jobs: JobSummary[], left: number) => void;

/** Logbooks are read for so long before somebody else's write has its turn; ms. */
const SLICE = 40;
/** Records beyond the first screens are parsed in stretches; ms. */
const FIRST_ROWS = 60;
const STRETCH = 8;
/** So often the list is told while logbooks are read; ms. */
const BEAT = 250;

/**
 * The list of jobs, latest first: whatever has entries on disk or in memory. The records say it at once; then the
 * entries say which jobs there really are (a lost cache must not hide a job), and those whose record cannot be used
 * as it is are read anew, a few at a time.
 */
export async function listSummaries(
  connection: Connection,
  held: HeldBatches,
  soFar: SoFar = () => undefined,
): Promise<JobSummary[]> {
  const known = await recordsOnDisk(connection, soFar);
  if (known.size > 0) soFar(latestFirst(known.values()), 0);
  const onDisk = (await isEverythingKnown(connection, known)) ? known.keys() : await jobsOnDisk(connection);
  const jobs = new Set([...onDisk, ...held.jobs()]);
  for (const id of known.keys()) if (!jobs.has(id)) known.delete(id);
  const inMemory = new Set(held.jobs());
  const isDue = (id: string): boolean => {
    const record = known.get(id);
    return !record || record.stale || record.standing === null || inMemory.has(id);
  };
  let told = performance.now();
  await readAnew(connection, held, [...jobs].filter(isDue), (records) => {
    for (const record of records) known.set(record.id, record);
    if (performance.now() - told < BEAT) return;
    told = performance.now();
    soFar(latestFirst(known.values()), jobs.size - known.size);
  });
  return latestFirst(known.values());
}

/** The records that can be read. Of thousands the latest are told first, and the page goes on between the others. */
async function recordsOnDisk(connection: Connection, soFar: SoFar): Promise<Map<string, JobRecord>> {
  const raws = await connection.run((database) => database.getAll('jobs'));
  const inOrder = raws.map((raw) => ({ raw, at: instant(textField(raw, 'lastAt')) })).sort((a, b) => b.at - a.at);
  const known = new Map<string, JobRecord>();
  let began = performance.now();
  for (const [index, { raw }] of inOrder.entries()) {
    if (index === FIRST_ROWS) soFar(latestFirst(known.values()), raws.length - index);
    if (index >= FIRST_ROWS && performance.now() - began > STRETCH) {
      await new Promise((resolve) => setTimeout(resolve));
      began = performance.now();
    }
    const record = JobRecord.safeParse(raw);
    if (record.success) known.set(record.data.id, record.data);
  }
  return known;
}

/**
 * Whether the records account for every entry on the disk. Counting is quick; walking the index is not (half a
 * millisecond a job in Chromium), and is left to the day when a record was lost or an entry cannot be read.
 */
async function isEverythingKnown(connection: Connection, known: ReadonlyMap<string, JobRecord>): Promise<boolean> {
  const counts = [...known.values()].map(({ entries }) => entries);
  if (counts.includes(0)) return false;
  const all = await connection.run((database) => database.count('entries'));
  return all === counts.reduce((sum, count) => sum + count, 0);
}

/** Every job that has an entry on the disk, by the index of entries. */
export function jobsOnDisk(connection: Connection): Promise<string[]> {
  return connection.run((database) =>
    read(database, async (tx) => {
      const found: string[] = [];
      let cursor = await tx.objectStore('entries').index('job').openKeyCursor(null, 'nextunique');
      while (cursor) {
        found.push(cursor.key);
        cursor = await cursor.continue();
      }
      return found;
    }),
  );
}

/** Makes records anew, a slice of them in each transaction. */
async function readAnew(
  connection: Connection,
  held: HeldBatches,
  jobs: readonly string[],
  onMade: (records: readonly JobRecord[]) => void,
): Promise<void> {
  if (jobs.length > 0) await bringFolding();
  let canWrite = true;
  for (let at = 0; at < jobs.length; ) {
    const slice = jobs.slice(at);
    const made = await connection
      .run((database) =>
        canWrite
          ? write(database, (tx) => forAWhile(slice, (job) => anew(tx, held, job)))
          : read(database, (tx) => forAWhile(slice, (job) => onlyRead(tx, held, job))),
      )
      .catch((error: unknown) => {
        // A full disk takes no cache, but can still be read.
        if (!canWrite) throw error;
        canWrite = false;
        return [];
      });
    at += made.length;
    if (made.length > 0) onMade(made);
  }
}

async function forAWhile<T>(jobs: readonly string[], work: (job: string) => Promise<T>): Promise<T[]> {
  const began = performance.now();
  const done: T[] = [];
  for (const job of jobs) {
    done.push(await work(job));
    if (performance.now() - began > SLICE) break;
  }
  return done;
}

/** What is only in memory is shown, but the cache is of what is on disk. */
const anew = (tx: WriteTransaction, held: HeldBatches, job: string): Promise<JobRecord> =>
  held.entriesOf(job).length > 0 ? onlyRead(tx, held, job) : rebuildRecord(tx, job);

async function onlyRead(tx: ReadTransaction | WriteTransaction, held: HeldBatches, job: string): Promise<JobRecord> {
  const record = await readRecord(tx, job);
  const { entries } = await readLogbook(tx, job);
  return await summariseCalmly(tx, job, held.complete(job, entries), record ?? NO_FACTS);
}

const instant = (at: string | null): number => Date.parse(at ?? '') || 0;

function latestFirst(records: Iterable<JobRecord>): JobSummary[] {
  return [...records]
    .map((record) => ({ record, at: instant(record.lastAt) }))
    .sort((a, b) => b.at - a.at || (a.record.id < b.record.id ? 1 : -1))
    .map(({ record }) => shown(record));
}
