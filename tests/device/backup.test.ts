import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../src/core/job/index.ts';
import { uuid } from '../../src/device/clock.ts';
import { type BackupFound, makeBackup, readBackup } from '../../src/device/packet-file/index.ts';
import { restoreBackup } from '../../src/device/restore.ts';
import { openStore, type Store, type StoredPhoto } from '../../src/device/store/index.ts';
import { hashOf } from '../core/packet/sample.ts';
import { entry, note, onDisk, opening, photoEntry, wipe } from './store/support.ts';

const MADE = { at: '2026-05-04T17:00:00+02:00', device: uuid(), by: { name: 'Ona', role: 'installer' } } as const;

let store: Store;
beforeEach(async () => {
  store = await openStore();
});
afterEach(async () => {
  store.close();
  await wipe();
});

/** The same app on another device that has nothing. */
async function emptyDevice(): Promise<void> {
  store.close();
  await wipe();
  store = await openStore();
}

function picture(seed: number, size = 4000): StoredPhoto {
  const bytes = Uint8Array.from({ length: size }, (_, at) => (at * seed + seed) % 251);
  return { sha256: hashOf(bytes), mime: 'image/jpeg', size, bytes: bytes.buffer };
}

const backUp = async (): Promise<Blob> => (await makeBackup(MADE, () => store.everything())).file;

async function found(file: Blob): Promise<BackupFound> {
  const reading = await readBackup(file);
  if (!reading.ok) throw new Error(reading.why);
  return reading.found;
}

const restore = async (file: Blob, settings: 'missing' | 'all' = 'missing') =>
  restoreBackup(store, file, await found(file), { settings });

/** All that is kept, in an order that says nothing, without what belongs to the device alone. */
async function kept(): Promise<unknown[]> {
  const all: unknown[] = [];
  for await (const one of store.everything()) {
    if (one.is === 'photo') all.push({ ...one.photo, bytes: hashOf(new Uint8Array(one.photo.bytes)) });
    else if (one.is !== 'counts' && !(one.is === 'setting' && one.key === 'device')) all.push(one);
  }
  return [...all, ...(await store.listJobs())];
}

/** A job with pictures, a struck record and one that cannot be read. */
async function aJob(name: string, pictures: readonly StoredPhoto[] = []): Promise<{ id: string; entries: Entry[] }> {
  const id = uuid();
  const entries = [opening(id, name)];
  for (const one of pictures) entries.push(photoEntry(id, one, [entries.at(-1)?.id ?? '']));
  await store.append(entries, pictures);
  return { id, entries };
}

const damage = (raw: Record<string, unknown>) => onDisk((database) => database.put('entries', raw));

describe('a backup put into an empty device', () => {
  it('gives back jobs, pictures, settings, templates, what was put away and what cannot be read', async () => {
    const shared = picture(3);
    const one = await aJob('Wind Rose', [shared, picture(5, 1_700_000)]);
    const two = await aJob('Tilda', [shared]);
    await store.setArchived(two.id, true);
    await store.setLastCopy(one.id, { heads: [one.entries[0]?.id ?? ''], at: MADE.at, how: 'sent' });
    await damage({ id: uuid(), job: one.id, kind: 'take.add', at: 'noon', more: { deep: [1, null, '=1+1\n"'] } });
    await damage({ id: uuid(), kind: 'take.add' });
    await store.settings.set('units', { system: 'metric', fraction: 16 });
    await store.settings.set('shop', { shop: 'Loft' });
    await store.settings.set('shop.templates', [{ id: uuid(), name: 'Shade' }, 'what nobody can read']);
    const before = await kept();
    const file = await backUp();
    expect(await found(file)).toMatchObject({
      counts: { jobs: 2, entries: 5, damaged: 2, photos: 2, settings: 3 },
      made: MADE,
    });
    await emptyDevice();
    expect(await restore(file)).toEqual({
      jobs: 2,
      entries: 7,
      photos: 2,
      settings: 2,
      templates: 2,
      setAside: 0,
      refused: 0,
      failure: null,
    });
    expect(await kept()).toEqual(before);
  });

  it('keeps every letter, halves of letters too', async () => {
    const text = 'a\u0000b\ud800c\u202ed\u2028e"\\\n=1+1';
    const id = uuid();
    const first = opening(id);
    await store.append([first, note(id, text, [first.id])]);
    const file = await backUp();
    await emptyDevice();
    await restore(file);
    expect((await store.readJob(id)).entries[1]?.payload.text).toBe(text);
  });

  it('carries a picture whose bytes are not what its name says, as it is', async () => {
    const id = uuid();
    const twisted = { ...picture(7), sha256: 'f'.repeat(64) };
    const first = opening(id);
    await store.append([first, photoEntry(id, twisted, [first.id])], [twisted]);
    const before = await kept();
    const file = await backUp();
    await emptyDevice();
    await restore(file);
    expect(await kept()).toEqual(before);
  });
});

/** What people do on a device: a job by its number, and how many things they do in it. */
const deeds = fc.array(fc.record({ job: fc.nat(3), notes: fc.nat(4), photo: fc.option(fc.nat(5)) }), { maxLength: 6 });
type Deeds = typeof deeds extends fc.Arbitrary<infer T> ? T : never;

const JOBS = Array.from({ length: 4 }, uuid);
const FIRST = JOBS.map((job) => opening(job));

async function work(done: Deeds): Promise<void> {
  for (const { job, notes, photo } of done) {
    const id = JOBS[job] ?? '';
    const here = (await store.readJob(id)).entries;
    const made = here.length === 0 ? [FIRST[job] as Entry] : [];
    for (let at = 0; at < notes; at += 1) made.push(note(id, `note ${at}`, [(made.at(-1) ?? here.at(-1))?.id ?? '']));
    const shown = photo === null ? [] : [picture(photo + 11, 100 + photo)];
    for (const one of shown) made.push(photoEntry(id, one, [(made.at(-1) ?? here.at(-1))?.id ?? '']));
    await store.append(made, shown);
  }
}

const idsOf = async (): Promise<string[]> =>
  (await Promise.all(JOBS.map(async (job) => (await store.readJob(job)).entries))).flat().map(({ id }) => id);

describe('putting a backup back', () => {
  it('into an empty device gives equal jobs, and twice is once', async () => {
    await fc.assert(
      fc.asyncProperty(deeds, async (done) => {
        await emptyDevice();
        await work(done);
        const before = await kept();
        const file = await backUp();
        await emptyDevice();
        await restore(file);
        expect(await kept()).toEqual(before);
        expect(await restore(file)).toMatchObject({ entries: 0, photos: 0, settings: 0, templates: 0, failure: null });
        expect(await kept()).toEqual(before);
      }),
      { numRuns: 12 },
    );
  });

  it('into a device that went on loses nothing of either', async () => {
    await fc.assert(
      fc.asyncProperty(deeds, deeds, async (earlier, later) => {
        await emptyDevice();
        await work(earlier);
        const file = await backUp();
        const inBackup = await idsOf();
        await work(later);
        const here = await idsOf();
        await restore(file);
        expect(new Set(await idsOf())).toEqual(new Set([...here, ...inBackup]));
        await emptyDevice();
        await work(later);
        const fresh = await idsOf();
        await restore(file);
        expect(new Set(await idsOf())).toEqual(new Set([...fresh, ...inBackup]));
      }),
      { numRuns: 12 },
    );
  });

  it('does not bring back what was withdrawn here since, nor its picture', async () => {
    const shown = picture(3);
    const { id, entries } = await aJob('Wind Rose', [shown]);
    const file = await backUp();
    const gone = entries[1]?.id ?? '';
    await store.append([entry(id, 'erase', { entries: [gone], reason: 'asked' }, [gone])]);
    const before = await kept();
    await restore(file);
    expect(await kept()).toEqual(before);
    expect((await store.photosHere()).size).toBe(0);
  });

  it('leaves what this device says of a job, and its settings, unless all are asked for', async () => {
    const { id } = await aJob('Wind Rose');
    await store.settings.set('theme', 'dark');
    const file = await backUp();
    await store.setArchived(id, true);
    await store.settings.set('theme', 'light');
    await restore(file);
    expect((await store.listJobs())[0]?.archived).toBe(true);
    expect(await store.settings.get('theme')).toBe('light');
    await restore(file, 'all');
    expect(await store.settings.get('theme')).toBe('dark');
  });

  it('leaves a setting and a record alone that are here and cannot be read', async () => {
    const { id } = await aJob('Wind Rose');
    await store.settings.set('theme', 'dark');
    const file = await backUp();
    await onDisk((database) => database.put('settings', 'of a later version', 'theme'));
    const [first] = (await store.readJob(id)).entries;
    await damage({ ...first, at: 'noon' });
    const before = await onDisk((database) => Promise.all([database.getAll('entries'), database.getAll('settings')]));
    expect(await restore(file)).toMatchObject({ setAside: 1, settings: 0 });
    const after = await onDisk((database) => Promise.all([database.getAll('entries'), database.getAll('settings')]));
    expect(after).toEqual(before);
  });
});

describe('a file that is not a whole backup is refused, and says why', () => {
  const why = async (text: BlobPart): Promise<string | null> => {
    const reading = await readBackup(new Blob([text]));
    return reading.ok ? null : reading.why;
  };

  it('cut off anywhere, or with any byte changed', async () => {
    await aJob('Wind Rose', [picture(3, 300)]);
    const whole = new Uint8Array(await (await backUp()).arrayBuffer());
    expect(await why(whole)).toBeNull();
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 3), async (at) => {
        expect(await why(whole.slice(0, at + 1))).toMatch(/foreign|cut-off|damaged/);
        const changed = Uint8Array.from(whole);
        changed[at] = (changed[at] ?? 0) ^ 1;
        expect(await why(changed)).not.toBeNull();
      }),
      { numRuns: 150 },
    );
    const lines = new TextDecoder().decode(whole).split('\n');
    expect(await why(lines.slice(0, -2).join('\n'))).toBe('cut-off');
    expect(await why(lines.toSpliced(2, 1).join('\n'))).toBe('damaged');
    expect(await why(`${lines.join('\n')}{}`)).toBe('damaged');
  });

  it('of a later version, or something else', async () => {
    const header = JSON.stringify({ format: 'tapetrue-backup', version: { major: 2, minor: 0 }, made: MADE });
    expect(await why(`${header}\n`)).toBe('newer');
    expect(await why('{"format":"tapetrue-packet"}')).toBe('foreign');
    expect(await why('')).toBe('foreign');
  });
});
