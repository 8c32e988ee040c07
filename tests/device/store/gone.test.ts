/** A job that another tab deleted while this one goes on with it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { uuid } from '../../../src/device/clock.ts';
import { openStore, type Store } from '../../../src/device/store/index.ts';
import { domError, note, onDisk, opening, photo, photoEntry, wipe } from './support.ts';

let here: Store;
let elsewhere: Store;
const job = uuid();
const first = opening(job);
const second = note(job, 'before', [first.id]);
const third = note(job, 'after', [second.id]);
beforeEach(async () => {
  here = await openStore();
  elsewhere = await openStore();
  await here.append([first, second]);
});
afterEach(async () => {
  here.close();
  elsewhere.close();
  await wipe();
});
const everything = (): Promise<unknown[]> =>
  onDisk((database) => Promise.all((['entries', 'photos', 'jobs'] as const).map((name) => database.getAll(name))));

describe('a job that is still there', () => {
  it('goes on, whichever tab wrote what', async () => {
    expect(await elsewhere.append([third])).toBe('saved');
    expect(await here.append([note(job, 'beside', [second.id])])).toBe('saved');
    expect(here.unsaved.value).toBeNull();
  });

  it('goes on when its record is lost, or nothing of it can be read', async () => {
    await onDisk((database) => database.delete('jobs', job));
    expect(await here.append([third])).toBe('saved');
    const other = uuid();
    await onDisk((database) => database.put('entries', { id: uuid(), job: other, at: 'never' }));
    expect(await here.append([note(other, 'on top', [uuid()])])).toBe('saved');
  });
});

describe('a job that another tab deleted', () => {
  beforeEach(() => elsewhere.deleteJob(job));

  it('does not come back hollow: what is entered is kept in memory, and nothing is on the disk', async () => {
    expect(await here.append([third])).toBe('gone');
    expect(here.unsaved.value).toMatchObject({ entries: [third], code: 'gone' });
    expect(here.atRisk.value).toBe(true);
    expect(here.trouble.value).toBeNull();
    await here.retry();
    expect(await everything()).toEqual([[], [], []]);
  });

  it('does not hold up another job', async () => {
    await here.append([third]);
    const other = uuid();
    expect(await here.append([opening(other)])).toBe('saved');
    expect(here.unsaved.value).toMatchObject({ entries: [third], code: 'gone' });
    expect((await elsewhere.listJobs()).map(({ id }) => id)).toEqual([other]);
  });

  it('comes back whole when what this tab holds is written back, with what was entered since', async () => {
    const picture = photo(3);
    const named = photoEntry(job, picture, [third.id]);
    await here.append([third]);
    await here.append([named], [picture]);
    await here.importEntries(job, [first, second, third, named], []);
    expect(here.unsaved.value).toBeNull();
    expect((await elsewhere.readJob(job)).entries).toEqual([first, second, third, named]);
    expect(await elsewhere.getPhoto(picture.sha256)).toEqual(picture);
    expect(await here.append([note(job, 'goes on', [named.id])])).toBe('saved');
  });

  it('comes back when a packet brings it, and what was entered since joins it', async () => {
    await here.append([third]);
    await elsewhere.importEntries(job, [first, second], []);
    await here.retry();
    expect(here.unsaved.value).toBeNull();
    expect((await here.readJob(job)).entries).toEqual([first, second, third]);
  });

  it('can be let go for good', async () => {
    await here.append([third]);
    await here.deleteJob(job);
    expect(here.unsaved.value).toBeNull();
    expect(await everything()).toEqual([[], [], []]);
  });

  it('leaves no empty record behind when a copy is noted or it is put away', async () => {
    await here.setLastCopy(job, { heads: [second.id], at: '2026-05-05T08:00:00Z', how: 'shared' });
    await here.setArchived(job, true);
    expect(await everything()).toEqual([[], [], []]);
    expect(await here.append([third])).toBe('gone');
  });

  it('is not taken to be gone where an earlier version left such a record', async () => {
    await here.append([third]);
    const record = { id: job, name: '', customer: '', boat: '', pieces: [], entries: 0, lastAt: null, heads: [] };
    const facts = { demo: false, lastCopy: null, archived: false, stale: false, erasures: false };
    await onDisk((database) => database.put('jobs', { ...record, ...facts }));
    expect(await here.append([note(job, 'more', [third.id])])).toBe('gone');
    expect((await elsewhere.listJobs()).map(({ id }) => id)).toEqual([]);
  });
});

describe('a job whose beginning found no room', () => {
  it('is not gone: what is small is kept by itself until there is room', async () => {
    const other = uuid();
    const begun = photoEntry(other, photo(4));
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (value, key) {
      if (this.name === 'photos') throw domError('QuotaExceededError');
      return real.call(this, value, key);
    };
    const small = note(other, 'small', [begun.id]);
    try {
      expect(await here.append([begun], [photo(4)])).toBe('full');
      expect(await here.append([small])).toBe('saved');
    } finally {
      IDBObjectStore.prototype.put = real;
    }
    await here.retry();
    expect((await here.readJob(other)).entries).toEqual([begun, small]);
  });
});
