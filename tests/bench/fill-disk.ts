import type { Page } from 'playwright-core';
import type { InventedJob } from './many-jobs.ts';

/** Jobs go to the page so many at a time. */
const BATCH = 40;

/** Writes jobs straight into the app's database, past the app: entries only, so that it makes its own records. */
export async function fillDisk(page: Page, jobs: readonly InventedJob[]): Promise<void> {
  for (let at = 0; at < jobs.length; at += BATCH) {
    const entries = JSON.stringify(jobs.slice(at, at + BATCH).flatMap((job) => job.entries));
    await page.evaluate(
      (text) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('tapetrue');
          opening.onsuccess = () => {
            const database = opening.result;
            const transaction = database.transaction('entries', 'readwrite', { durability: 'relaxed' });
            for (const entry of JSON.parse(text)) transaction.objectStore('entries').put(entry);
            transaction.oncomplete = () => resolve(database.close());
            transaction.onerror = () => reject(transaction.error);
          };
        }),
      entries,
    );
  }
}

/** How many jobs have a record that says how far they are. */
export async function recordsOnDisk(page: Page): Promise<number> {
  return await page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open('tapetrue');
        opening.onsuccess = () => {
          const reading = opening.result.transaction('jobs').objectStore('jobs').getAll();
          reading.onsuccess = () => {
            opening.result.close();
            resolve(reading.result.filter(({ standing }) => standing).length);
          };
        };
      }),
  );
}

/** Changes records where they lie, by the id of their job. */
export async function changeRecords(page: Page, changes: ReadonlyMap<string, object>): Promise<void> {
  await page.evaluate(
    (all) =>
      new Promise<void>((resolve, reject) => {
        const byId = new Map(all);
        const opening = indexedDB.open('tapetrue');
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction('jobs', 'readwrite');
          const store = transaction.objectStore('jobs');
          const reading = store.getAll();
          reading.onsuccess = () => {
            for (const record of reading.result) store.put({ ...record, ...byId.get(record.id) });
          };
          transaction.oncomplete = () => resolve(database.close());
          transaction.onerror = () => reject(transaction.error);
        };
      }),
    [...changes],
  );
}

/** What only the device knows of the invented jobs: copies that were made, and what was put away. */
export function factsOf(jobs: readonly InventedJob[]): Map<string, object> {
  return new Map(
    jobs.map(({ id, entries, archived, copy }) => {
      const [first, last] = [entries[0]?.id, entries.at(-1)?.id];
      const heads = [copy === 'same' ? last : first];
      const lastCopy = copy === 'none' ? null : { heads, at: '2026-06-30T17:00:00Z', how: 'shared' };
      return [id, { archived, lastCopy }];
    }),
  );
}
