import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Entry } from '../../core/job/index.ts';
import { uuid } from '../clock.ts';
import { Connection, type ConnectionOptions } from './connection.ts';
import { asFailure, isLasting, StoreFailure, type StoreFailureCode } from './failure.ts';
import { type Held, HeldBatches } from './held.ts';
import { listSummaries } from './jobs.ts';
import {
  appendTo,
  type Imported,
  type JobRead,
  mergeInto,
  picturesOf,
  readLogbook,
  readRecord,
  rebuildRecord,
  removeJob,
} from './logbook.ts';
import { type Database, type JobRecord, type JobSummary, type LastCopy, StoredPhoto } from './schema.ts';
import { type Settings, settingsOver } from './settings.ts';
import { read, type WriteTransaction, write } from './transact.ts';

/** What is only in memory because it could not be written. code: why. */
export interface Unsaved {
  entries: readonly Entry[];
  photos: readonly StoredPhoto[];
  code: StoreFailureCode;
}

export type AppendOutcome = 'saved' | Exclude<StoreFailureCode, 'conflict'>;

/** Which of a job's pictures are on this device, and which its logbook names but are not here. */
export interface PhotoIds {
  here: string[];
  missing: string[];
}

/** The jobs on this device. What a method throws is a StoreFailure. */
export interface Store {
  /** What could not be written; null when everything is on disk. Offer a backup file of it and block leaving. */
  readonly unsaved: ReadonlySignal<Unsaved | null>;
  /** Something given to the store is not known to be on disk: under way, or unsaved. */
  readonly atRisk: ReadonlySignal<boolean>;
  /** The latest trouble with the disk; null after the next write that went through. */
  readonly trouble: ReadonlySignal<StoreFailureCode | null>;
  readonly settings: Settings;
  /** This device's own id: made once, the same ever after. Never throws; where it cannot be kept it lasts the visit. */
  deviceId(): Promise<string>;
  /**
   * Writes entries of one job, and the pictures they name, in one strict transaction. 'saved': all of it is on disk,
   * and only then. Any other code: it is kept in `unsaved` and tried again with every later append, with `retry` and
   * when the page comes back to the front. An entry that is here already is passed over. Throws on 'conflict' only
   * (an id that is here with other content, or entries of several jobs): then nothing of the call is stored or kept.
   */
  append(entries: readonly Entry[], photos?: readonly StoredPhoto[]): Promise<AppendOutcome>;
  /** Tries to write what is unsaved; `unsaved` tells the outcome. */
  retry(): Promise<void>;
  /** A job's logbook, what is unsaved included; and what is on disk but cannot be read. Empty for an unknown job. */
  readJob(job: string): Promise<JobRead>;
  /** Latest first. */
  listJobs(): Promise<JobSummary[]>;
  /**
   * Merges a packet's logbook and pictures, all or nothing. The caller has checked that the bytes have their hashes.
   * Entries of another job are a 'conflict'.
   */
  importEntries(job: string, entries: readonly Entry[], photos: readonly StoredPhoto[]): Promise<Imported>;
  putPhoto(photo: StoredPhoto): Promise<void>;
  /** Null when it is not here, or cannot be read. */
  getPhoto(sha256: string): Promise<StoredPhoto | null>;
  photoIds(job: string): Promise<PhotoIds>;
  setLastCopy(job: string, copy: LastCopy): Promise<void>;
  setArchived(job: string, archived: boolean): Promise<void>;
  /** Removes the job, its unsaved entries and its pictures from this device for good. */
  deleteJob(job: string): Promise<void>;
  /** Lets go of the database; the next use opens it again. */
  close(): void;
}

export interface StoreOptions extends Omit<ConnectionOptions, 'onTrouble'> {
  /** Where 'visibilitychange' is heard; the document when there is one. */
  page?: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'> | null;
}

/** Opens the store. Throws StoreFailure: 'newer', 'blocked', 'private', 'closed' (no answer) or 'unknown'. */
export async function openStore(options: StoreOptions = {}): Promise<Store> {
  const trouble = signal<StoreFailureCode | null>(null);
  const connection = new Connection({ ...options, onTrouble: (code) => (trouble.value = code) });
  await connection.ready();
  trouble.value = null;
  const page = options.page ?? (typeof document === 'undefined' ? null : document);
  return new DiskStore(connection, trouble, page);
}

class DiskStore implements Store {
  readonly settings: Settings;
  readonly trouble: ReadonlySignal<StoreFailureCode | null>;
  readonly unsaved: ReadonlySignal<Unsaved | null>;
  readonly atRisk: ReadonlySignal<boolean>;
  readonly #held = new HeldBatches();
  readonly #trouble;
  readonly #connection: Connection;
  readonly #stopListening: () => void;
  #turn: Promise<unknown> = Promise.resolve();
  #deviceId: Promise<string> | null = null;

  constructor(
    connection: Connection,
    trouble: { value: StoreFailureCode | null } & ReadonlySignal<StoreFailureCode | null>,
    page: NonNullable<StoreOptions['page']> | null,
  ) {
    this.#connection = connection;
    this.#trouble = trouble;
    this.trouble = trouble;
    this.settings = settingsOver(connection);
    this.atRisk = this.#held.any;
    this.unsaved = computed(() => describe(this.#held.failed.value));
    const onVisible = (): void => {
      if (page?.visibilityState === 'visible' && this.unsaved.peek()) void this.retry();
    };
    page?.addEventListener('visibilitychange', onVisible);
    this.#stopListening = () => page?.removeEventListener('visibilitychange', onVisible);
  }

  deviceId(): Promise<string> {
    this.#deviceId ??= ownId(this.settings);
    return this.#deviceId;
  }

  append(entries: readonly Entry[], photos: readonly StoredPhoto[] = []): Promise<AppendOutcome> {
    const job = entries[0]?.job;
    if (job === undefined) return Promise.resolve('saved');
    if (entries.some((entry) => entry.job !== job)) return Promise.reject(new StoreFailure('conflict'));
    const held = this.#held.add({ job, entries, photos });
    return this.#inTurn(async () => {
      const failure = await this.#writeHeld(held);
      if (failure?.code === 'conflict') throw failure;
      return failure?.code ?? 'saved';
    });
  }

  retry(): Promise<void> {
    return this.#inTurn(async () => {
      await this.#writeHeld();
    });
  }

  async readJob(job: string): Promise<JobRead> {
    const onDisk = await this.#read((tx) => readLogbook(tx, job));
    return { entries: this.#held.complete(job, onDisk.entries), damaged: onDisk.damaged };
  }

  listJobs(): Promise<JobSummary[]> {
    return listSummaries(this.#connection, this.#held);
  }

  importEntries(job: string, entries: readonly Entry[], photos: readonly StoredPhoto[]): Promise<Imported> {
    if (entries.some((entry) => entry.job !== job)) return Promise.reject(new StoreFailure('conflict'));
    return this.#inTurn(async () => {
      await this.#writeHeld();
      return await this.#write((tx) => mergeInto(tx, job, entries, photos), bytesOf(photos));
    });
  }

  async putPhoto(photo: StoredPhoto): Promise<void> {
    await this.#inTurn(() => this.#write((tx) => tx.objectStore('photos').put(photo), photo.size));
  }

  async getPhoto(sha256: string): Promise<StoredPhoto | null> {
    const inMemory = this.#held.photo(sha256);
    if (inMemory) return inMemory;
    const parsed = StoredPhoto.safeParse(await this.#read((tx) => tx.objectStore('photos').get(sha256)));
    return parsed.success ? parsed.data : null;
  }

  async photoIds(job: string): Promise<PhotoIds> {
    const { entries, damaged } = await this.readJob(job);
    const named = [...picturesOf([...entries, ...damaged.map(({ raw }) => raw)])].sort();
    const onDisk = new Set(await this.#read((tx) => tx.objectStore('photos').getAllKeys()));
    const isHere = (sha256: string): boolean => onDisk.has(sha256) || this.#held.photo(sha256) !== null;
    return { here: named.filter(isHere), missing: named.filter((sha256) => !isHere(sha256)) };
  }

  setLastCopy(job: string, copy: LastCopy): Promise<void> {
    return this.#setFacts(job, { lastCopy: copy });
  }

  setArchived(job: string, archived: boolean): Promise<void> {
    return this.#setFacts(job, { archived });
  }

  deleteJob(job: string): Promise<void> {
    return this.#inTurn(async () => {
      await this.#write((tx) => removeJob(tx, job));
      this.#held.forgetJob(job);
    });
  }

  close(): void {
    this.#stopListening();
    this.#connection.close();
  }

  #setFacts(job: string, facts: Partial<JobRecord>): Promise<void> {
    return this.#inTurn(() =>
      this.#write(async (tx) => {
        const record = (await readRecord(tx, job)) ?? (await rebuildRecord(tx, job));
        await tx.objectStore('jobs').put({ ...record, ...facts });
      }),
    );
  }

  /** One write after the other: batches reach the disk in the order they were made. */
  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = this.#turn.then(work);
    this.#turn = turn.catch(() => undefined);
    return turn;
  }

  /** Tries what is due, oldest first. Returns what became of `last`. */
  async #writeHeld(last?: Held): Promise<StoreFailure | null> {
    let failure: StoreFailure | null = null;
    for (const held of this.#held.due(last)) {
      // With the disk gone there is no use in waiting for it once a batch; a full disk may still take a small one.
      if (!failure || !isLasting(failure)) failure = await this.#writeBatch(held);
      const refused = failure?.code === 'conflict' && held === last && held.failure === null;
      if (!failure || refused) this.#held.remove(held);
      else this.#held.fail(held, failure);
    }
    return failure;
  }

  async #writeBatch({ job, entries, photos }: Held): Promise<StoreFailure | null> {
    try {
      await this.#write((tx) => appendTo(tx, job, entries, photos), bytesOf(photos));
      return null;
    } catch (error) {
      return asFailure(error);
    }
  }

  async #write<T>(body: (transaction: WriteTransaction) => Promise<T>, bytes = 0): Promise<T> {
    try {
      const result = await this.#connection.run((database) => write(database, body), bytes);
      this.#trouble.value = null;
      return result;
    } catch (error) {
      const failure = asFailure(error);
      if (failure.code !== 'conflict') this.#trouble.value = failure.code;
      throw failure;
    }
  }

  #read<T>(body: Parameters<typeof read<T>>[1]): Promise<T> {
    return this.#connection.run((database: Database) => read(database, body));
  }
}

async function ownId(settings: Settings): Promise<string> {
  const made = uuid();
  try {
    const known = await settings.get('device');
    if (known === null) await settings.set('device', made);
    return known ?? made;
  } catch {
    return made;
  }
}

const bytesOf = (photos: readonly StoredPhoto[]): number => photos.reduce((sum, photo) => sum + photo.size, 0);

function describe(failed: readonly Held[]): Unsaved | null {
  const latest = failed.at(-1)?.failure;
  if (!latest) return null;
  return {
    entries: failed.flatMap((held) => held.entries),
    photos: failed.flatMap((held) => held.photos),
    code: latest.code,
  };
}
