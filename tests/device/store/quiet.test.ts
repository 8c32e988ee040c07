import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { uuid } from '../../../src/device/clock.ts';
import { type LastCopy, openStore, type Store } from '../../../src/device/store/index.ts';
import { DEVICE, entry, note, onDisk, opening, photo, photoEntry, wipe } from './support.ts';

let store: Store;
const job = uuid();
beforeEach(async () => {
  store = await openStore();
});
afterEach(async () => {
  store.close();
  await wipe();
});

describe('a disk that works', () => {
  it('starts empty and without trouble', async () => {
    expect(await store.listJobs()).toEqual([]);
    expect(await store.readJob(job)).toEqual({ entries: [], damaged: [] });
    expect(store.unsaved.value).toBeNull();
    expect(store.trouble.value).toBeNull();
    expect(store.atRisk.value).toBe(false);
  });

  it('has an entry on disk, field by field, when append resolves', async () => {
    const first = { ...opening(job), extra: 'of a later version' };
    expect(await store.append([first])).toBe('saved');
    expect(await onDisk((database) => database.getAll('entries'))).toEqual([first]);
    expect((await store.readJob(job)).entries).toEqual([first]);
  });

  it('asks for strict durability', async () => {
    const asked: unknown[] = [];
    const real = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (stores, mode, options) {
      if (mode === 'readwrite') asked.push(options?.durability);
      return real.call(this, stores, mode, options);
    };
    try {
      await store.append([opening(job)]);
    } finally {
      IDBDatabase.prototype.transaction = real;
    }
    expect(asked).toEqual(['strict']);
  });

  it('is at risk while a write is under way, and only then', async () => {
    const writing = store.append([opening(job)]);
    expect(store.atRisk.value).toBe(true);
    expect(store.unsaved.value).toBeNull();
    await writing;
    expect(store.atRisk.value).toBe(false);
  });

  it('passes over an entry that is here already, on the cheap way and on the thorough one', async () => {
    const first = opening(job);
    const second = note(job, 'hatch leaks', [first.id]);
    await store.append([first]);
    expect(await store.append([first, second])).toBe('saved');
    expect(await store.append([second])).toBe('saved');
    expect((await store.readJob(job)).entries).toHaveLength(2);
    expect((await store.listJobs())[0]?.entries).toBe(2);
  });

  it('writes a hundred appends at once, every one of them', async () => {
    const first = opening(job);
    const notes = Array.from({ length: 100 }, (_, i) => note(job, `n${i}`, [first.id]));
    await Promise.all([first, ...notes].map((one) => store.append([one])));
    expect((await store.readJob(job)).entries.map(({ id }) => id).sort()).toEqual(
      [first, ...notes].map(({ id }) => id).sort(),
    );
  });

  it('keeps the entries of two jobs apart', async () => {
    const other = uuid();
    await store.append([opening(job)]);
    await store.append([opening(other, 'Second')]);
    expect((await store.readJob(other)).entries.map((one) => one.job)).toEqual([other]);
  });
});

describe('the list of jobs', () => {
  it('shows what the logbook says, without reading it again', async () => {
    const first = opening(job);
    const boat = entry(job, 'job.detail', { field: 'boat', value: '34 ft sloop' }, [first.id]);
    const customer = entry(job, 'job.detail', { field: 'customer', value: 'M. Loos' }, [boat.id]);
    for (const one of [first, boat, customer]) await store.append([one]);
    expect(await store.listJobs()).toEqual([
      {
        id: job,
        name: 'Wind Rose',
        customer: 'M. Loos',
        boat: '34 ft sloop',
        pieces: [],
        entries: 3,
        lastAt: '2026-05-04T09:30:00+02:00',
        heads: [customer.id],
        demo: false,
        standing: { edition: 1, steps: 0, done: 0, asked: 0, cleared: 0, voided: 0 },
        lastCopy: null,
        archived: false,
      },
    ]);
  });

  it('is right after an undo, which only a fold understands', async () => {
    const first = opening(job);
    const boat = entry(job, 'job.detail', { field: 'boat', value: 'wrong boat' }, [first.id]);
    const back = entry(job, 'undo', { entry: boat.id }, [boat.id]);
    for (const one of [first, boat, back]) await store.append([one]);
    expect((await store.listJobs())[0]).toMatchObject({ boat: '', heads: [back.id], entries: 3 });
  });

  it('is right after an entry that had not seen the one before', async () => {
    const first = opening(job);
    const late = note(job, 'written beside', []);
    for (const one of [first, late]) await store.append([one]);
    expect((await store.listJobs())[0]?.heads).toEqual([first.id, late.id].sort());
  });

  it('puts the latest first, by the instant and not by the letters', async () => {
    const earlier = uuid();
    // Later by the letters, earlier in truth.
    await store.append([{ ...opening(earlier, 'Early'), at: '2026-05-04T10:00:00+02:00' }]);
    await store.append([{ ...opening(job, 'Late'), at: '2026-05-04T09:00:00+00:00' }]);
    expect((await store.listJobs()).map(({ name }) => name)).toEqual(['Late', 'Early']);
  });

  it('finds a job whose cache is lost or damaged, and keeps nothing of the damage', async () => {
    await store.append([opening(job)]);
    await onDisk((database) => database.delete('jobs', job));
    expect((await store.listJobs()).map(({ name }) => name)).toEqual(['Wind Rose']);
    await onDisk((database) => database.put('jobs', { id: job, name: 7, archived: true, lastCopy: 'yesterday' }));
    expect((await store.listJobs()).map(({ name }) => name)).toEqual(['Wind Rose']);
    // Whether it was put away is known nowhere else, and could still be read.
    const facts = { archived: true, lastCopy: null };
    expect(await onDisk((database) => database.get('jobs', job))).toMatchObject({
      name: 'Wind Rose',
      stale: false,
      ...facts,
    });
  });

  it('remembers the last copy and the archive through every rebuild', async () => {
    const first = opening(job);
    await store.append([first]);
    const copy: LastCopy = { heads: [first.id], at: '2026-05-04T10:00:00Z', how: 'shared' };
    await store.setLastCopy(job, copy);
    await store.setArchived(job, true);
    await store.append([entry(job, 'undo', { entry: uuid() }, [first.id])]);
    expect((await store.listJobs())[0]).toMatchObject({ lastCopy: copy, archived: true, entries: 2 });
  });
});

describe('pictures', () => {
  it('come back byte for byte, stored with the entry that names them', async () => {
    const picture = photo(7);
    await store.append([opening(job), photoEntry(job, picture)], [picture]);
    expect(await store.getPhoto(picture.sha256)).toEqual(picture);
    expect(await store.photoIds(job)).toEqual({ here: [picture.sha256], missing: [] });
  });

  it('are on disk as an ArrayBuffer, never a Blob', async () => {
    await store.putPhoto(photo(7));
    const raw = await onDisk((database) => database.get('photos', photo(7).sha256));
    expect(raw).toMatchObject({ bytes: expect.any(ArrayBuffer) });
  });

  it('that a logbook names but that are not here are listed as missing', async () => {
    await store.append([opening(job), photoEntry(job, photo(9))]);
    expect(await store.photoIds(job)).toEqual({ here: [], missing: [photo(9).sha256] });
    expect(await store.getPhoto(photo(9).sha256)).toBeNull();
  });
});

describe('settings', () => {
  it('are null until set, then what was set', async () => {
    expect(await store.settings.get('person')).toBeNull();
    await store.settings.set('person', { name: 'Ona', role: 'owner' });
    expect(await store.settings.get('person')).toEqual({ name: 'Ona', role: 'owner' });
    await store.settings.remove('person');
    expect(await store.settings.get('person')).toBeNull();
  });

  it('that do not parse are as if never set', async () => {
    await onDisk((database) => database.put('settings', { name: 'Ona', role: 'king' }, 'person'));
    expect(await store.settings.get('person')).toBeNull();
  });

  it('hold the place across a restart, where a camera that killed the page left it', async () => {
    const place = { job, piece: uuid(), step: 'bow-width' };
    await store.settings.set('place', place);
    store.close();
    store = await openStore();
    expect(await store.settings.get('place')).toEqual(place);
  });

  it('hold one device id for ever', async () => {
    const [a, b] = await Promise.all([store.deviceId(), store.deviceId()]);
    expect(a).toBe(b);
    store.close();
    store = await openStore();
    expect(await store.deviceId()).toBe(a);
    await store.settings.set('device', DEVICE);
    store.close();
    store = await openStore();
    expect(await store.deviceId()).toBe(DEVICE);
  });
});
