import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { entriesOfPhoto, heads } from '../../../src/core/job/index.ts';
import { uuid } from '../../../src/device/clock.ts';
import { openStore, type Store } from '../../../src/device/store/index.ts';
import type { Database } from '../../../src/device/store/schema.ts';
import { domError, entry, note, onDisk, opening, photo, photoEntry, wipe } from './support.ts';

let store: Store;
const job = uuid();
beforeEach(async () => {
  store = await openStore();
});
afterEach(async () => {
  store.close();
  await wipe();
});
const everything = (): Promise<unknown[]> =>
  onDisk((database) => Promise.all((['entries', 'photos', 'jobs'] as const).map((name) => database.getAll(name))));
const erasing = (ids: string[], seen: string[]) => entry(job, 'erase', { entries: ids, reason: 'asked' }, seen);

describe('importing a packet', () => {
  it('into an empty device stores all of it', async () => {
    const picture = photo(1);
    const first = opening(job);
    const second = photoEntry(job, picture, [first.id]);
    expect(await store.importEntries(job, [first, second], [picture])).toEqual({ added: 2, known: 0, setAside: [] });
    expect((await store.readJob(job)).entries).toEqual([first, second]);
    expect((await store.photoIds(job)).here).toEqual([picture.sha256]);
    expect((await store.listJobs())[0]).toMatchObject({ name: 'Wind Rose', heads: [second.id], entries: 2 });
  });

  it('twice changes nothing', async () => {
    const picture = photo(1);
    const logbook = [opening(job), photoEntry(job, picture)];
    await store.importEntries(job, logbook, [picture]);
    const before = await everything();
    expect(await store.importEntries(job, logbook, [picture])).toEqual({ added: 0, known: 2, setAside: [] });
    expect(await everything()).toEqual(before);
  });

  it('unites what two devices wrote, and knows both heads', async () => {
    const first = opening(job);
    const mine = note(job, 'mine', [first.id]);
    const theirs = note(job, 'theirs', [first.id]);
    await store.append([first, mine]);
    expect(await store.importEntries(job, [first, theirs], [])).toMatchObject({ added: 1, known: 1 });
    const { entries } = await store.readJob(job);
    expect(heads(entries)).toEqual([mine.id, theirs.id].sort());
    expect((await store.listJobs())[0]?.heads).toEqual([mine.id, theirs.id].sort());
  });

  it('sets aside an entry that is here with other content, and merges the rest', async () => {
    const first = opening(job);
    await store.append([first]);
    const twisted = { ...first, at: '2020-01-01T00:00:00Z' };
    const good = note(job, 'good', [first.id]);
    expect(await store.importEntries(job, [twisted, good], [])).toEqual({ added: 1, known: 0, setAside: [twisted] });
    expect((await store.readJob(job)).entries).toEqual([first, good]);
  });

  it('stores nothing at all when the disk gives up in the middle', async () => {
    const first = opening(job);
    await store.append([first]);
    const before = await everything();
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (value, key) {
      if (this.name === 'photos' && value.sha256 === photo(2).sha256) throw domError('QuotaExceededError');
      return real.call(this, value, key);
    };
    const more = [note(job, 'a', [first.id]), photoEntry(job, photo(1)), photoEntry(job, photo(2))];
    try {
      await expect(store.importEntries(job, more, [photo(1), photo(2)])).rejects.toMatchObject({ code: 'full' });
    } finally {
      IDBObjectStore.prototype.put = real;
    }
    expect(await everything()).toEqual(before);
    expect(store.trouble.value).toBe('full');
  });
});

describe('a large packet', () => {
  const first = opening(job);
  const logbook = [first, ...Array.from({ length: 600 }, (_, i) => note(job, `n${i}`, [first.id]))];

  it('is merged without holding the page up in one stretch', async () => {
    let longest = 0;
    let last = performance.now();
    const beat = setInterval(() => {
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
    }, 1);
    const began = performance.now();
    await store.importEntries(job, logbook, []);
    await store.importEntries(job, [...logbook, note(job, 'more', [first.id])], []);
    clearInterval(beat);
    expect(longest).toBeLessThan((performance.now() - began) / 3);
    expect((await store.readJob(job)).entries).toHaveLength(logbook.length + 1);
  });

  it('is stored whole or not at all, however far it came', async () => {
    const real = IDBObjectStore.prototype.add;
    let added = 0;
    IDBObjectStore.prototype.add = function (value, key) {
      added += 1;
      if (added === logbook.length) throw domError('QuotaExceededError');
      return real.call(this, value, key);
    };
    try {
      await expect(store.importEntries(job, logbook, [])).rejects.toMatchObject({ code: 'full' });
    } finally {
      IDBObjectStore.prototype.add = real;
    }
    expect(added).toBe(logbook.length);
    expect(await everything()).toEqual([[], [], []]);
  });

  it('that holds an id of another job is refused whole, though that shows in the middle of the writing', async () => {
    const [, , taken] = logbook;
    const other = uuid();
    await store.append([{ ...opening(other), id: taken?.id ?? '' }]);
    const before = await everything();
    await expect(store.importEntries(job, logbook, [])).rejects.toMatchObject({ code: 'conflict' });
    expect(await everything()).toEqual(before);
  });
});

describe('a packet that came from elsewhere', () => {
  const AT = '2026-05-05T08:00:00Z';
  const first = opening(job);
  const theirs = note(job, 'theirs', [first.id]);

  it('is itself a copy, once', async () => {
    await store.importEntries(job, [first, theirs], [], AT);
    const copy = { heads: [theirs.id], at: AT, how: 'received' };
    expect((await store.listJobs())[0]?.lastCopy).toEqual(copy);
    await store.importEntries(job, [first, theirs], [], '2026-05-06T08:00:00Z');
    expect((await store.listJobs())[0]?.lastCopy).toEqual(copy);
  });

  it('is none of what this device knows beyond it, nor is what the device wrote itself', async () => {
    await store.importEntries(job, [first], []);
    expect((await store.listJobs())[0]?.lastCopy).toBeNull();
    await store.append([note(job, 'mine', [first.id])]);
    await store.importEntries(job, [first, theirs], [], AT);
    expect((await store.listJobs())[0]?.lastCopy).toBeNull();
  });
});

describe('an erasure', () => {
  const picture = photo(5);
  const first = opening(job);
  const taken = photoEntry(job, picture, [first.id]);
  const bytesHere = async (): Promise<boolean> => (await store.getPhoto(picture.sha256)) !== null;

  it('of something else leaves pictures alone', async () => {
    const secret = note(job, 'private', [taken.id]);
    await store.append([first, taken, secret], [picture]);
    await store.append([erasing([secret.id], [secret.id])]);
    expect(await bytesHere()).toBe(true);
    expect(JSON.stringify(await everything())).not.toContain('private');
  });

  it('takes the content and the bytes off the disk', async () => {
    await store.append([first, taken], [picture]);
    await store.append([erasing([taken.id], [taken.id])]);
    expect(await bytesHere()).toBe(false);
    expect(await onDisk((database) => database.get('entries', taken.id))).toEqual({
      ...taken,
      payload: { erased: true },
    });
  });

  it('does the same when it comes in a packet', async () => {
    await store.append([first, taken], [picture]);
    await store.importEntries(job, [erasing([taken.id], [taken.id])], []);
    expect(await bytesHere()).toBe(false);
  });

  it('wins over a packet that still has the picture', async () => {
    await store.importEntries(job, [first, erasing([taken.id], [first.id])], []);
    expect(await store.importEntries(job, [first, taken], [picture])).toMatchObject({ added: 1, setAside: [] });
    expect(await bytesHere()).toBe(false);
    expect(JSON.stringify(await everything())).not.toContain(picture.sha256);
  });

  it('wins over an append that comes late', async () => {
    await store.append([first, erasing([taken.id], [first.id])]);
    expect(await store.append([taken], [picture])).toBe('saved');
    expect(await store.append([taken], [picture])).toBe('saved');
    expect(await bytesHere()).toBe(false);
  });

  it('reaches a picture that was taken back before, and its marks', async () => {
    const shot = String(taken.payload.photo);
    const mark = entry(job, 'photo.mark', { photo: shot, x: 0.1, y: 0.2, point: null, text: 'her name' }, [taken.id]);
    const back = entry(job, 'undo', { entry: taken.id }, [mark.id]);
    await store.append([first, taken, mark, back], [picture]);
    expect(await bytesHere()).toBe(true);
    await store.append([erasing(entriesOfPhoto([first, taken, mark, back], shot), [back.id])]);
    expect(await bytesHere()).toBe(false);
    expect(JSON.stringify(await everything())).not.toMatch(/her name|0{63}5/);
  });

  it('takes a customer off the list of jobs as well', async () => {
    const customer = entry(job, 'job.detail', { field: 'customer', value: 'M. Sample' }, [first.id]);
    await store.append([first, customer]);
    expect((await store.listJobs())[0]?.customer).toBe('M. Sample');
    await store.append([erasing([customer.id], [customer.id])]);
    expect((await store.listJobs())[0]?.customer).toBe('');
    expect(JSON.stringify(await everything())).not.toContain('Sample');
  });

  it('spares bytes that another entry, or another job, still names', async () => {
    const again = photoEntry(job, picture, [taken.id]);
    await store.append([first, taken, again], [picture]);
    await store.append([erasing([taken.id], [again.id])]);
    expect(await bytesHere()).toBe(true);
    const other = uuid();
    await store.append([opening(other), photoEntry(other, picture)]);
    await store.append([erasing([again.id], [again.id])]);
    expect(await bytesHere()).toBe(true);
  });
});

describe('deleting a job', () => {
  it('removes it whole, and nothing of any other', async () => {
    const shared = photo(6);
    const own = photo(7);
    const other = uuid();
    await store.append([opening(other), photoEntry(other, shared)], [shared]);
    const before = await everything();
    await store.append([opening(job), photoEntry(job, shared), photoEntry(job, own)], [shared, own]);
    await store.deleteJob(job);
    expect(await everything()).toEqual(before);
  });

  it('removes what cannot be read of it too', async () => {
    await onDisk((database: Database) => database.put('entries', { id: uuid(), job, at: 'never' }));
    await store.deleteJob(job);
    expect(await everything()).toEqual([[], [], []]);
  });

  it('of an unknown job does nothing', async () => {
    await store.append([opening(job)]);
    const before = await everything();
    await store.deleteJob(uuid());
    expect(await everything()).toEqual(before);
  });
});
