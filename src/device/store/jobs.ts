import type { Connection } from './connection.ts';
import type { HeldBatches } from './held.ts';
import { readLogbook, readRecord, rebuildRecord } from './logbook.ts';
import { JobRecord, type JobSummary } from './schema.ts';
import { shown, summarise } from './summary.ts';
import { read, write } from './transact.ts';

/** The list of jobs, latest first: whatever has entries on disk or in memory. Caches that cannot be used are rebuilt. */
export async function listSummaries(connection: Connection, held: HeldBatches): Promise<JobSummary[]> {
  const { jobs, records } = await connection.run((database) =>
    read(database, async (tx) => {
      const raws = await tx.objectStore('jobs').getAll();
      const found: string[] = [];
      // The index, not the cache, says which jobs there are: a lost cache must not hide a job.
      let cursor = await tx.objectStore('entries').index('job').openKeyCursor(null, 'nextunique');
      while (cursor) {
        found.push(cursor.key);
        cursor = await cursor.continue();
      }
      return { jobs: found, records: raws };
    }),
  );
  const usable = new Map<string, JobRecord>();
  for (const raw of records) {
    const record = JobRecord.safeParse(raw);
    if (record.success && !record.data.stale) usable.set(record.data.id, record.data);
  }
  const summaries: JobSummary[] = [];
  for (const job of new Set([...jobs, ...held.jobs()])) {
    const cached = held.entriesOf(job).length === 0 ? usable.get(job) : undefined;
    summaries.push(shown(cached ?? (await anew(connection, held, job))));
  }
  return summaries.sort((a, b) => Date.parse(b.lastAt ?? '') - Date.parse(a.lastAt ?? ''));
}

async function anew(connection: Connection, held: HeldBatches, job: string): Promise<JobRecord> {
  if (held.entriesOf(job).length === 0) {
    try {
      return await connection.run((database) => write(database, (tx) => rebuildRecord(tx, job)));
    } catch {
      // A full disk takes no cache, but can still be read.
    }
  }
  return await connection.run((database) =>
    read(database, async (tx) => {
      const record = await readRecord(tx, job);
      const { entries } = await readLogbook(tx, job);
      return summarise(job, held.complete(job, entries), record ?? undefined);
    }),
  );
}
