import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/core/job/index.ts';
import { uuid } from '../../../src/device/clock.ts';
import { openStore, type Store, StoreFailure } from '../../../src/device/store/index.ts';
import { DATABASE } from '../../../src/device/store/schema.ts';
import { entry, note, onDisk, opening, photo, photoEntry, wipe } from './support.ts';

let store: Store;
const job = uuid();
beforeEach(async () => {
  store = await openStore();
});
afterEach(async () => {
  store.close();
  await wipe();
});
const rawEntries = (): Promise<unknown[]> => onDisk((database) => database.getAll('entries'));
const withText = (one: Entry, text: string): Entry => ({ ...one, payload: { ...one.payload, text } });

describe('the same id with other content', () => {
  it('refuses the whole call, leaves the disk as it was and keeps nothing for later', async () => {
    const first = opening(job);
    const second = note(job, 'as written', [first.id]);
    await store.append([first, second]);
    const before = await rawEntries();
    const third = note(job, 'innocent', [second.id]);
    await expect(store.append([third, withText(second, 'changed')])).rejects.toMatchObject({ code: 'conflict' });
    expect(await rawEntries()).toEqual(before);
    expect(store.unsaved.value).toBeNull();
    expect(store.trouble.value).toBeNull();
  });

  it('refuses it where the logbook holds an erasure too', async () => {
    const first = opening(job);
    await store.append([first, entry(job, 'erase', { entries: [uuid()], reason: 'asked' }, [first.id])]);
    await expect(store.append([{ ...first, at: '2020-01-01T00:00:00Z' }])).rejects.toMatchObject({ code: 'conflict' });
  });

  it('refuses an id that sits in another job', async () => {
    const first = opening(job);
    await store.append([first]);
    const other = uuid();
    await expect(store.append([{ ...first, job: other }])).rejects.toMatchObject({ code: 'conflict' });
    await store.append([opening(other)]);
    await expect(store.append([{ ...first, job: other }])).rejects.toMatchObject({ code: 'conflict' });
    await expect(store.importEntries(other, [{ ...first, job: other }], [])).rejects.toBeInstanceOf(StoreFailure);
    expect((await store.readJob(job)).entries).toEqual([first]);
  });

  it('refuses entries of several jobs in one call', async () => {
    await expect(store.append([opening(job), opening(uuid())])).rejects.toMatchObject({ code: 'conflict' });
    await expect(store.importEntries(job, [opening(uuid())], [])).rejects.toMatchObject({ code: 'conflict' });
    expect(await rawEntries()).toEqual([]);
  });
});

describe('what does not parse', () => {
  const damage = { id: uuid(), job, at: 'yesterday', payload: { sha256: photo(3).sha256 } };

  it('stays on disk, is reported raw, and the rest is read', async () => {
    const first = opening(job);
    await store.append([first]);
    await onDisk((database) => database.put('entries', damage));
    expect(await store.readJob(job)).toEqual({ entries: [first], damaged: [{ id: damage.id, raw: damage }] });
    await store.append([note(job, 'goes on', [first.id])]);
    expect(await rawEntries()).toContainEqual(damage);
  });

  it('is never overwritten, not even by a packet that has it whole', async () => {
    await onDisk((database) => database.put('entries', damage));
    const whole = { ...opening(job), id: damage.id };
    expect(await store.importEntries(job, [whole], [])).toEqual({ added: 0, known: 0, setAside: [whole] });
    expect(await rawEntries()).toEqual([damage]);
  });

  it('still holds on to its picture', async () => {
    const picture = photo(3);
    const named = photoEntry(job, picture);
    await store.append([opening(job), named], [picture]);
    await onDisk((database) => database.put('entries', damage));
    await store.append([entry(job, 'erase', { entries: [named.id], reason: 'asked' })]);
    expect(await store.getPhoto(picture.sha256)).toEqual(picture);
  });

  it('does not hide a job of which nothing can be read', async () => {
    await onDisk((database) => database.put('entries', damage));
    expect((await store.listJobs()).map(({ id, entries }) => [id, entries])).toEqual([[job, 0]]);
  });
});

describe('a database this version may not have', () => {
  it('of a newer app: a named failure, nothing touched', async () => {
    await store.append([opening(job)]);
    store.close();
    const newer = await openDB(DATABASE, 9, { upgrade: (database) => void database.createObjectStore('later') });
    await newer.put('later', 'kept', 'key').catch(() => undefined);
    newer.close();
    await expect(openStore()).rejects.toMatchObject({ code: 'newer' });
    const again = await openDB(DATABASE);
    expect(again.version).toBe(9);
    expect(await again.count('entries')).toBe(1);
    again.close();
  });

  it('in a window without storage: private', async () => {
    const refuse = (error: Error) => (): never => {
      throw error;
    };
    for (const error of [new ReferenceError('indexedDB'), new DOMException('', 'SecurityError')])
      await expect(openStore({ open: refuse(error) })).rejects.toMatchObject({ code: 'private' });
    const rejecting = (): Promise<never> => Promise.reject(new DOMException('', 'InvalidStateError'));
    await expect(openStore({ open: rejecting })).rejects.toMatchObject({ code: 'private' });
  });
});
