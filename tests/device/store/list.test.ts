/** How far each job is, as the list tells it without folding. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { declarePiece, stepsOf } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { type Entry, type EntryKind, fold, heads, type Payload } from '../../../src/core/job/index.ts';
import { uuid } from '../../../src/device/clock.ts';
import { type JobStanding, type JobSummary, openStore, type Store } from '../../../src/device/store/index.ts';
import { entry, note, onDisk, opening, wipe } from './support.ts';

let store: Store;
const job = uuid();
beforeEach(async () => {
  store = await openStore();
});
afterEach(async () => {
  store.close();
  await wipe();
});

const piece = declarePiece(guides[0] ?? never(), 'Shade', uuid);
function never(): never {
  throw new Error('there is no guide');
}
/** Everything of the job so far; each entry has seen all before it. */
let logbook: Entry[] = [];
beforeEach(() => {
  logbook = [];
});
async function does<K extends EntryKind>(kind: K, payload: Payload<K>): Promise<Entry> {
  const made = entry(job, kind, payload, heads(logbook));
  logbook.push(made);
  await store.append([made]);
  return made;
}
const take = (slot: string): Promise<Entry> => {
  const reading = piece.readings.find((candidate) => candidate.slot === slot)?.id ?? never();
  return does('take.add', { reading, text: '1000', unit: 'mm', value: 1000 });
};
const standing = async (): Promise<Omit<JobStanding, 'edition'> | null> => {
  const found = (await store.listJobs()).find(({ id }) => id === job)?.standing ?? null;
  if (!found) return null;
  const { edition: _, ...rest } = found;
  return rest;
};
const NONE = { done: 0, asked: 0, cleared: 0, voided: 0 };

describe('how far a job is', () => {
  /** What the guide asks while no question was answered. */
  let steps = 0;
  beforeEach(async () => {
    await does('job.open', { name: 'Wind Rose', system: 'metric', fraction: 16 });
    await does('piece.add', piece);
    steps = stepsOf(fold(logbook), piece.id).length;
    expect(steps).toBeGreaterThan(10);
  });

  it('counts the steps of the walk that are done, with a value or without', async () => {
    expect(await standing()).toEqual({ ...NONE, steps });
    await take('A-B');
    await take('A-B');
    const reading = piece.readings.find(({ slot }) => slot === 'A-C')?.id ?? never();
    await does('reading.answer', { reading, answer: 'could-not', reason: 'Weather' });
    expect(await standing()).toEqual({ ...NONE, steps, done: 2 });
  });

  it('goes back when a take is taken back', async () => {
    const one = await take('A-B');
    await does('undo', { entry: one.id });
    expect(await standing()).toEqual({ ...NONE, steps });
  });

  it('counts what the shop asked again until it is read again', async () => {
    await take('A-B');
    const reading = piece.readings.find(({ slot }) => slot === 'A-B')?.id ?? never();
    await does('ask.again', { piece: piece.id, note: '', items: [{ on: 'reading', id: reading, note: '' }] });
    expect(await standing()).toEqual({ ...NONE, steps, asked: 1 });
    await take('A-B');
    expect(await standing()).toEqual({ ...NONE, steps, done: 1 });
  });

  it('says of each piece whether its clearance stands or was voided', async () => {
    await does('piece.clear', { piece: piece.id, judged: heads(logbook), basis: 'rules' });
    expect(await standing()).toEqual({ ...NONE, steps, cleared: 1 });
    await does('note.add', { on: null, text: 'moved' });
    expect(await standing()).toEqual({ ...NONE, steps, voided: 1 });
    await does('piece.clear', { piece: piece.id, judged: heads(logbook), basis: 'rules' });
    expect(await standing()).toEqual({ ...NONE, steps, cleared: 1 });
  });

  it('is left open by a take, made by the list, and then kept on disk', async () => {
    await take('A-B');
    expect(await onDisk((database) => database.get('jobs', job))).toMatchObject({ standing: null, stale: false });
    await store.listJobs();
    expect(await onDisk((database) => database.get('jobs', job))).toMatchObject({ standing: { done: 1 } });
    await onDisk((database) => database.clear('entries').then(() => database.put('entries', logbook[0])));
    await store.listJobs();
    expect(await standing()).toMatchObject({ done: 1 });
  });

  it('is what a packet brings, at once', async () => {
    const other = await openStore({ name: 'other' });
    await take('A-B');
    await other.importEntries(job, logbook, []);
    const told: JobSummary[][] = [];
    await other.listJobs((jobs) => told.push(jobs));
    expect(told[0]?.[0]?.standing).toMatchObject({ done: 1, steps });
    other.close();
    indexedDB.deleteDatabase('other');
  });
});

describe('a list of which much must be read anew', () => {
  const ids = Array.from({ length: 5 }, uuid);
  const told: JobSummary[][] = [];
  beforeEach(async () => {
    told.length = 0;
    for (const [index, id] of ids.entries()) await store.append([opening(id, `Job ${index}`)]);
    await store.listJobs();
  });
  const names = (jobs: readonly JobSummary[] | undefined): string[] => (jobs ?? []).map(({ name }) => name).sort();

  it('shows the records of an earlier version at once, and how far each job is when it was read', async () => {
    await onDisk(async (database) => {
      for (const raw of await database.getAll('jobs')) {
        const { standing: _, ...before } = raw as { standing: unknown };
        await database.put('jobs', before);
      }
    });
    const list = await store.listJobs((jobs) => told.push(jobs));
    expect(names(told[0])).toEqual(['Job 0', 'Job 1', 'Job 2', 'Job 3', 'Job 4']);
    expect(told[0]?.every(({ standing }) => standing === null)).toBe(true);
    expect(list.every(({ standing }) => standing !== null)).toBe(true);
  });

  it('makes a standing of another edition anew', async () => {
    await onDisk(async (database) => {
      const raw = (await database.get('jobs', ids[2] ?? '')) as { standing: JobStanding };
      await database.put('jobs', { ...raw, standing: { ...raw.standing, edition: 0, steps: 99 } });
    });
    expect((await store.listJobs()).map(({ standing }) => standing?.steps)).toEqual([0, 0, 0, 0, 0]);
  });

  it('hides no job whose record is lost, also beside one that cannot be read', async () => {
    await onDisk((database) => database.delete('jobs', ids[1] ?? ''));
    expect(names(await store.listJobs((jobs) => told.push(jobs)))).toHaveLength(5);
    expect(names(told[0])).toEqual(['Job 0', 'Job 2', 'Job 3', 'Job 4']);
    await onDisk((database) => database.put('entries', { id: uuid(), job: uuid(), at: 'never' }));
    expect(await store.listJobs()).toHaveLength(6);
    await onDisk((database) => database.delete('jobs', ids[3] ?? ''));
    expect(await store.listJobs()).toHaveLength(6);
  });

  it('holds nobody up who writes meanwhile', async () => {
    await onDisk((database) => database.clear('jobs'));
    const [listed, outcome] = await Promise.all([
      store.listJobs(),
      store.append([note(ids[0] ?? '', 'meanwhile', [uuid()])]),
    ]);
    expect([listed.length, outcome]).toEqual([5, 'saved']);
    expect((await store.listJobs()).find(({ id }) => id === ids[0])?.entries).toBe(2);
  });
});
