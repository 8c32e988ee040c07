import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { uuid } from '../../../src/device/clock.ts';
import { openStore, type Store, type StoreOptions } from '../../../src/device/store/index.ts';
import { DATABASE, type Database } from '../../../src/device/store/schema.ts';
import { domError, entry, faultyDisk, note, onDisk, opening, photo, photoEntry, wipe } from './support.ts';

const job = uuid();
let stores: Store[] = [];
let disk = faultyDisk();
const start = async (options: StoreOptions = {}): Promise<Store> => {
  const store = await openStore({ open: disk.open, patience: 5000, ...options });
  stores.push(store);
  return store;
};
const idsOnDisk = (): Promise<string[]> => onDisk((database: Database) => database.getAllKeys('entries'));
const dead = (): never => {
  throw domError('InvalidStateError');
};
beforeEach(() => {
  disk = faultyDisk();
});
afterEach(async () => {
  for (const store of stores) store.close();
  stores = [];
  await wipe();
});

describe('a connection that died while the page slept', () => {
  it.each(['InvalidStateError', 'AbortError', 'UnknownError'])(
    'is opened again and the same write done once more (%s)',
    async (name) => {
      const store = await start();
      disk.fault = () => {
        disk.fault = null;
        throw domError(name);
      };
      const first = opening(job);
      expect(await store.append([first])).toBe('saved');
      expect(disk.opened).toBe(2);
      expect(await idsOnDisk()).toEqual([first.id]);
      expect(store.unsaved.value).toBeNull();
    },
  );

  it('really closed underneath, as the browser does it, is opened again for reads too', async () => {
    const store = await start();
    const first = opening(job);
    await store.append([first]);
    disk.fault = (database) => {
      disk.fault = null;
      database.close();
    };
    expect((await store.readJob(job)).entries).toEqual([first]);
    disk.fault = (database) => {
      disk.fault = null;
      database.close();
    };
    await store.settings.set('theme', 'dark');
    expect(await store.settings.get('theme')).toBe('dark');
    expect(disk.opened).toBe(3);
  });

  it('that swallows a write without an answer is given up after a while, and the write does not double', async () => {
    const store = await start({ patience: 400 });
    const real = IDBObjectStore.prototype.add;
    let swallowed = 0;
    IDBObjectStore.prototype.add = function (value, key) {
      const request = real.call(this, value, key);
      // The write goes through, but the page never hears of it.
      if (swallowed++ === 0) Object.defineProperty(request, 'addEventListener', { value: () => undefined });
      return request;
    };
    const first = opening(job);
    await onDisk((database) => database.put('jobs', record()));
    try {
      expect(await store.append([first])).toBe('saved');
    } finally {
      IDBObjectStore.prototype.add = real;
    }
    expect(swallowed).toBeGreaterThan(0);
    expect(await idsOnDisk()).toEqual([first.id]);
    expect((await store.listJobs())[0]?.entries).toBe(1);
  });

  it('that never comes back: the entry stays in memory, is read back from there, and is written when it can be', async () => {
    const store = await start();
    const first = opening(job);
    await store.append([first]);
    disk.fault = dead;
    const second = note(job, 'in memory only', [first.id]);
    const third = photoEntry(job, photo(1), [second.id]);
    expect(await store.append([second])).toBe('closed');
    expect(await store.append([third], [photo(1)])).toBe('closed');
    expect(store.unsaved.value).toEqual({ entries: [second, third], photos: [photo(1)], code: 'closed' });
    expect(store.atRisk.value).toBe(true);
    expect(store.trouble.value).toBe('closed');
    expect(await store.getPhoto(photo(1).sha256)).toEqual(photo(1));
    await expect(store.readJob(job)).rejects.toMatchObject({ code: 'closed' });
    await store.retry();
    expect(store.unsaved.value?.entries).toHaveLength(2);
    expect(await idsOnDisk()).toEqual([first.id]);

    disk.fault = null;
    expect((await store.readJob(job)).entries).toEqual([first, second, third]);
    expect((await store.listJobs())[0]).toMatchObject({ entries: 3, heads: [third.id] });
    expect(await store.photoIds(job)).toEqual({ here: [photo(1).sha256], missing: [] });
    const fourth = note(job, 'after', [third.id]);
    expect(await store.append([fourth])).toBe('saved');
    expect(await idsOnDisk()).toEqual([first, second, third, fourth].map(({ id }) => id).sort());
    expect(store.unsaved.value).toBeNull();
    expect(store.trouble.value).toBeNull();
    expect(store.atRisk.value).toBe(false);
  });

  it('is tried again when the page comes back to the front, not when it goes away', async () => {
    const page = Object.assign(new EventTarget(), { visibilityState: 'hidden' as DocumentVisibilityState });
    const store = await start({ page });
    disk.fault = dead;
    const first = opening(job);
    await store.append([first]);
    disk.fault = null;
    page.dispatchEvent(new Event('visibilitychange'));
    await store.settings.get('theme');
    expect(await idsOnDisk()).toEqual([]);
    page.visibilityState = 'visible';
    page.dispatchEvent(new Event('visibilitychange'));
    await vi.waitFor(() => expect(store.unsaved.value).toBeNull());
    expect(await idsOnDisk()).toEqual([first.id]);
  });

  it('shows a job that is only in memory in the list', async () => {
    const store = await start();
    disk.fault = dead;
    await store.append([opening(job)]);
    disk.fault = null;
    expect((await store.listJobs()).map(({ name }) => name)).toEqual(['Wind Rose']);
    await store.deleteJob(job);
    expect(store.unsaved.value).toBeNull();
    expect(await store.listJobs()).toEqual([]);
  });
});

describe('a full disk', () => {
  it('says so by name, keeps the picture in memory, still takes what is small, and lets it in when there is room', async () => {
    const store = await start();
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (value, key) {
      if (this.name === 'photos') throw domError('QuotaExceededError');
      return real.call(this, value, key);
    };
    const first = opening(job);
    const named = photoEntry(job, photo(1), [first.id]);
    const small = note(job, 'small', [named.id]);
    try {
      await store.append([first]);
      expect(await store.append([named], [photo(1)])).toBe('full');
      expect(await idsOnDisk()).toEqual([first.id]);
      expect(await store.append([small])).toBe('saved');
      expect(store.unsaved.value).toEqual({ entries: [named], photos: [photo(1)], code: 'full' });
      await expect(store.putPhoto(photo(2))).rejects.toMatchObject({ code: 'full' });
    } finally {
      IDBObjectStore.prototype.put = real;
    }
    await store.retry();
    expect(store.unsaved.value).toBeNull();
    expect((await store.readJob(job)).entries).toEqual([first, named, small]);
    expect((await store.photoIds(job)).here).toEqual([photo(1).sha256]);
  });

  it('forgets a picture that is withdrawn before it ever was on disk', async () => {
    const store = await start();
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (value, key) {
      if (this.name === 'photos') throw domError('QuotaExceededError');
      return real.call(this, value, key);
    };
    const first = opening(job);
    const named = photoEntry(job, photo(1), [first.id]);
    try {
      await store.append([first]);
      expect(await store.append([named], [photo(1)])).toBe('full');
      expect(await store.getPhoto(photo(1).sha256)).not.toBeNull();
      await store.append([entry(job, 'erase', { entries: [named.id], reason: 'asked' }, [named.id])]);
      expect(await store.getPhoto(photo(1).sha256)).toBeNull();
      expect(JSON.stringify(store.unsaved.value ?? {})).not.toContain(photo(1).sha256);
    } finally {
      IDBObjectStore.prototype.put = real;
    }
    await store.retry();
    expect(store.unsaved.value).toBeNull();
    expect(await onDisk((database) => database.getAllKeys('photos'))).toEqual([]);
    expect((await store.readJob(job)).entries).toContainEqual({ ...named, payload: { erased: true } });
  });

  it('shows the list of jobs even when it cannot write the cache', async () => {
    const store = await start();
    await store.append([opening(job)]);
    await onDisk((database) => database.delete('jobs', job));
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => {
      throw domError('QuotaExceededError');
    };
    try {
      expect((await store.listJobs()).map(({ name }) => name)).toEqual(['Wind Rose']);
    } finally {
      IDBObjectStore.prototype.put = real;
    }
  });
});

describe('a disk full to the last byte, which tears the browser’s own log', () => {
  const NO_SPACE = 'Connection is closing because of: IO error: 000003.log: FILE_ERROR_NO_SPACE';
  const noSpace = (): never => {
    throw new DOMException(NO_SPACE, 'UnknownError');
  };
  const settings = (): Promise<string[]> => onDisk((database: Database) => database.getAllKeys('settings'));

  it('is not tried again at once, and goes on as full when the database cannot even be opened', async () => {
    const store = await start();
    disk.fault = noSpace;
    expect(await store.append([opening(job)])).toBe('full');
    expect(disk.opened).toBe(1);
    expect(store.torn.value).toBe(true);
    disk.fault = dead;
    expect(await store.append([note(job, 'more')])).toBe('full');
    expect(store.unsaved.value?.entries).toHaveLength(2);
  });

  it('has its log begun anew with the first write that goes through, and nothing of that is left', async () => {
    const store = await start();
    disk.fault = noSpace;
    await store.append([opening(job)]);
    let transactions = 0;
    disk.fault = () => void transactions++;
    expect(await store.append([note(job, 'more')])).toBe('saved');
    expect(transactions).toBe(2 + 11);
    expect([store.torn.value, store.unsaved.value]).toEqual([false, null]);
    expect(await settings()).toEqual([]);
    await store.append([note(job, 'and more')]);
    expect(transactions).toBe(2 + 11 + 1);
  });

  it('stays torn while there is no room for that, without asking with every entry; a retry asks again', async () => {
    const store = await start();
    disk.fault = noSpace;
    await store.append([opening(job)]);
    let asked = 0;
    disk.fault = () => {
      asked += 1;
      // The entry that waited goes through; there is no room for the noise that follows.
      if (asked === 2) noSpace();
    };
    expect(await store.append([note(job, 'more')])).toBe('saved');
    expect([store.torn.value, store.unsaved.value]).toEqual([true, null]);
    let transactions = 0;
    disk.fault = () => void transactions++;
    expect(await store.append([note(job, 'small')])).toBe('saved');
    expect([transactions, store.torn.value]).toEqual([1, true]);
    await store.retry();
    expect(store.torn.value).toBe(false);
    expect((await store.readJob(job)).entries).toHaveLength(3);
  });

  it('is told from a large value that found no room, which tears nothing', async () => {
    const store = await start();
    disk.fault = () => {
      throw new DOMException('Failed to write blobs (IOError)', 'DataError');
    };
    expect(await store.append([opening(job)])).toBe('full');
    expect(store.torn.value).toBe(false);
  });
});

describe('data cleared under the open page', () => {
  it('is not said of a first visit, nor of a connection opened again', async () => {
    const store = await start();
    disk.fault = (database) => {
      disk.fault = null;
      database.close();
    };
    await store.append([opening(job)]);
    expect(store.emptied.value).toBe(false);
  });

  it('is noticed, and what the screen holds can be written back', async () => {
    const store = await start();
    const first = opening(job);
    await store.append([first]);
    await wipe();
    const second = note(job, 'after', [first.id]);
    expect(await store.append([second])).toBe('saved');
    expect(store.emptied.value).toBe(true);
    await store.importEntries(job, [first, second], []);
    expect((await store.readJob(job)).entries).toEqual([first, second]);
    expect((await store.listJobs())[0]).toMatchObject({ name: 'Wind Rose', heads: [second.id] });
  });
});

describe('two tabs and two versions', () => {
  it('steps aside for the upgrade of another tab, reports it, and keeps what comes after in memory', async () => {
    const store = await start();
    await store.append([opening(job)]);
    const blocked = vi.fn();
    const newer = await openDB(DATABASE, 2, { blocked });
    expect(blocked).not.toHaveBeenCalled();
    expect(store.trouble.value).toBe('newer');
    const late = note(job, 'late');
    expect(await store.append([late])).toBe('newer');
    expect(store.unsaved.value?.entries).toEqual([late]);
    expect(await newer.count('entries')).toBe(1);
    newer.close();
  });

  it('gives up by name on a tab that does not let go, and does not hold the database afterwards', async () => {
    const old = await openDB(DATABASE, 1);
    const open: NonNullable<StoreOptions['open']> = (name, _version, callbacks) => openDB(name, 2, callbacks);
    await expect(openStore({ open, patience: 400 })).rejects.toMatchObject({ code: 'blocked' });
    old.close();
    // Were the late connection kept, deleting would be blocked.
    await new Promise((resolve) => setTimeout(resolve, 30));
    const blocked = vi.fn();
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.deleteDatabase(DATABASE);
      request.onblocked = blocked;
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
    });
    expect(blocked).not.toHaveBeenCalled();
  });

  it('waits for a tab that lets go in time', async () => {
    const old = await openDB(DATABASE, 1);
    const open: NonNullable<StoreOptions['open']> = (name, _version, callbacks) => openDB(name, 2, callbacks);
    const opening = openStore({ open, patience: 5000 });
    setTimeout(() => old.close(), 20);
    stores.push(await opening);
    expect(stores[0]?.trouble.value).toBeNull();
  });

  it('does not wait for ever for a database that never answers', async () => {
    await expect(openStore({ open: () => new Promise(() => undefined), patience: 20 })).rejects.toMatchObject({
      code: 'closed',
    });
  });
});

function record(): unknown {
  const empty = { name: '', customer: '', boat: '', pieces: [], entries: 0, lastAt: null, heads: [] };
  return { ...empty, id: job, demo: false, lastCopy: null, archived: false, stale: false, erasures: false };
}
