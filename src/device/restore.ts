import { uuid } from './clock.ts';
import { type BackupFound, jobOutOf, photoOutOf } from './packet-file/index.ts';
import { type Store, StoreFailure, type StoreFailureCode } from './store/index.ts';

/** settings: those the device has none of, or all of them. */
export interface RestoreOptions {
  settings: 'missing' | 'all';
  onProgress?: (fraction: number) => void;
}

/**
 * What came of it. jobs: put back or joined. entries, photos, settings, templates: new to this device. setAside: a known
 * id with other content; what was here stays. refused: jobs that could not be put back. failure: why it stopped half way.
 */
export interface RestoreOutcome {
  jobs: number;
  entries: number;
  photos: number;
  settings: number;
  templates: number;
  setAside: number;
  refused: number;
  failure: StoreFailureCode | 'file' | null;
}

class FileChanged extends Error {}

/**
 * Takes a backup that was read whole into this device. Everything is a union: nothing here is overwritten or removed, and
 * doing it twice is doing it once. Job by job, its pictures first; where the disk fails, what went before is whole, and it
 * can be done again.
 */
export async function restoreBackup(
  store: Store,
  file: Blob,
  found: BackupFound,
  { settings, onProgress = () => undefined }: RestoreOptions,
): Promise<RestoreOutcome> {
  const done: RestoreOutcome = {
    jobs: 0,
    entries: 0,
    photos: 0,
    settings: 0,
    templates: 0,
    setAside: 0,
    refused: 0,
    failure: null,
  };
  try {
    const photos = new Photos(store, file, found, await store.photosHere());
    for (const [index, job] of found.jobs.entries()) {
      onProgress(index / found.jobs.length);
      done.photos += await photos.bring(job.photos);
      await restoreJob(store, file, job, done);
    }
    done.photos += await photos.bring(found.photos.map(({ sha256 }) => sha256));
    done.entries += await store.restoreStrays(found.strays);
    for (const { key, value } of found.settings) {
      if (key === 'shop.templates') done.templates += await uniteTemplates(store, value);
      else if (await store.settings.bring(key, value, settings === 'all')) done.settings += 1;
    }
  } catch (error) {
    if (!(error instanceof StoreFailure) && !(error instanceof FileChanged)) throw error;
    done.failure = error instanceof StoreFailure ? error.code : 'file';
  }
  onProgress(1);
  return done;
}

async function restoreJob(
  store: Store,
  file: Blob,
  place: BackupFound['jobs'][number],
  done: RestoreOutcome,
): Promise<void> {
  const job = await jobOutOf(file, place);
  if (!job) throw new FileChanged();
  try {
    const { added, damaged, setAside } = await store.restore(job);
    done.jobs += 1;
    done.entries += added + damaged;
    done.setAside += setAside.length;
  } catch (error) {
    // An id of it sits in another job here: that job stays as it is, and the others go on.
    if (!(error instanceof StoreFailure) || error.code !== 'conflict') throw error;
    done.refused += 1;
  }
}

/** The pictures of a backup, each brought once and only where it is missing. */
class Photos {
  readonly #store: Store;
  readonly #file: Blob;
  readonly #places: ReadonlyMap<string, BackupFound['photos'][number]>;
  readonly #here: Set<string>;

  constructor(store: Store, file: Blob, { photos }: BackupFound, here: ReadonlySet<string>) {
    this.#store = store;
    this.#file = file;
    this.#places = new Map(photos.map((place) => [place.sha256, place]));
    this.#here = new Set(here);
  }

  async bring(hashes: readonly string[]): Promise<number> {
    let brought = 0;
    for (const sha256 of hashes) {
      const place = this.#places.get(sha256);
      if (!place || this.#here.has(sha256)) continue;
      const photo = await photoOutOf(this.#file, place);
      if (photo?.sha256 !== sha256) throw new FileChanged();
      await this.#store.putPhoto(photo);
      this.#here.add(sha256);
      brought += 1;
    }
    return brought;
  }
}

/** Templates are kept beside each other, never replaced: one of the same id with other content gets an id of its own. */
async function uniteTemplates({ settings }: Store, raw: unknown): Promise<number> {
  const come: unknown[] = Array.isArray(raw) ? raw : [];
  const kept = await settings.get('shop.templates');
  // A list that is here and cannot be read is left as it is.
  if (kept === null && (await settings.has('shop.templates'))) return 0;
  const here = kept ?? [];
  const ids = new Set(here.map(idOf));
  const known = new Set(here.map(contentOf));
  const fresh = come
    .filter((template) => !known.has(contentOf(template)))
    .map((template) => (ids.has(idOf(template)) ? { ...Object(template), id: uuid() } : template));
  if (fresh.length > 0) await settings.set('shop.templates', [...here, ...fresh]);
  return fresh.length;
}

const idOf = (template: unknown): unknown => Reflect.get(Object(template), 'id');
const contentOf = (template: unknown): string => JSON.stringify({ ...Object(template), id: null });
