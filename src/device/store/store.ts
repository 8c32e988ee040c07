import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type Entry, picturesOf } from '../../core/job/index.ts';
import { uuid } from '../clock.ts';
import { Connection, type ConnectionOptions } from './connection.ts';
import type { AppendOutcome, PhotoIds, Store } from './contract.ts';
import { asFailure, isLasting, isOfContent, StoreFailure, type StoreFailureCode } from './failure.ts';
import { describe, type Held, HeldBatches, type Unsaved } from './held.ts';
import { listSummaries, type SoFar } from './jobs.ts';
import { everythingKept, type Kept, putBack, putBackDamaged, type Restored } from './kept.ts';
import {
  appendTo,
  bringFolding,
  type Imported,
  isHere,
  type JobRead,
  mergeInto,
  readLogbook,
  readRecord,
  rebuildRecord,
  removeJob,
} from './logbook.ts';
import { type Database, type JobRecord, type JobSummary, type LastCopy, StoredPhoto } from './schema.ts';
import { type Settings, settingsOver } from './settings.ts';
import { BALLAST_BYTES, beginNewLog } from './settle.ts';
import { read, type WriteTransaction, write } from './transact.ts';

export interface StoreOptions extends Omit<ConnectionOptions, 'onTrouble' | 'onEmptied' | 'onTorn'> {
  /** Where 'visibilitychange' is heard; the document when there is one. */
  page?: Pick<Document, 'addEventListener' | 'removeEventListener' | 'visibilityState'> | null;
}

/** Opens the store. Throws StoreFailure: 'newer', 'blocked', 'private', 'closed' (no answer) or 'unknown'. */
export async function openStore(options: StoreOptions = {}): Promise<Store> {
  const trouble = signal<StoreFailureCode | null>(null);
  const onTrouble = (code: StoreFailureCode): void => {
    trouble.value = code;
  };
  const emptied = signal(false);
  const onEmptied = (): void => {
    emptied.value = true;
  };
  const torn = signal(false);
  const onTorn = (): void => {
    torn.value = true;
  };
  const connection = new Connection({ ...options, onTrouble, onEmptied, onTorn });
  await connection.ready();
  trouble.value = null;
  const page = options.page ?? (typeof document === 'undefined' ? null : document);
  return new DiskStore(connection, { trouble, emptied, torn }, page);
}

/** How the disk is. */
interface Condition {
  trouble: Signal<StoreFailureCode | null>;
  emptied: ReadonlySignal<boolean>;
  torn: Signal<boolean>;
}

const MINUTE = 60_000;

class DiskStore implements Store {
  readonly settings: Settings;
  readonly trouble: ReadonlySignal<StoreFailureCode | null>;
  readonly emptied: ReadonlySignal<boolean>;
  readonly torn: ReadonlySignal<boolean>;
  readonly unsaved: ReadonlySignal<Unsaved | null>;
  readonly atRisk: ReadonlySignal<boolean>;
  readonly #held = new HeldBatches();
  readonly #trouble: Signal<StoreFailureCode | null>;
  readonly #torn: Signal<boolean>;
  readonly #connection: Connection;
  readonly #stopListening: () => void;
  #turn: Promise<unknown> = Promise.resolve();
  #deviceId: Promise<string> | null = null;
  #settleNotBefore = 0;

  constructor(
    connection: Connection,
    { trouble, emptied, torn }: Condition,
    page: NonNullable<StoreOptions['page']> | null,
  ) {
    this.#connection = connection;
    this.#trouble = trouble;
    this.trouble = trouble;
    this.emptied = emptied;
    this.#torn = torn;
    this.torn = torn;
    this.settings = settingsOver(connection);
    this.atRisk = this.#held.any;
    this.unsaved = computed(() => describe(this.#held.failed.value));
    const onVisible = (): void => {
      if (page?.visibilityState === 'visible' && (this.unsaved.peek() || torn.peek())) void this.retry();
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
      this.#settleNotBefore = 0;
      await this.#writeHeld();
      await this.#settle();
    });
  }

  async readJob(job: string): Promise<JobRead> {
    const onDisk = await this.#read((tx) => readLogbook(tx, job));
    return { entries: this.#held.complete(job, onDisk.entries), damaged: onDisk.damaged };
  }

  listJobs(soFar?: SoFar): Promise<JobSummary[]> {
    return listSummaries(this.#connection, this.#held, soFar);
  }

  importEntries(
    job: string,
    entries: readonly Entry[],
    photos: readonly StoredPhoto[],
    received: string | null = null,
  ): Promise<Imported> {
    if (entries.some((entry) => entry.job !== job)) return Promise.reject(new StoreFailure('conflict'));
    return this.#inTurn(async () => {
      await this.#writeHeld();
      const imported = await this.#write((tx) => mergeInto(tx, job, entries, photos, received), bytesOf(photos));
      // What was refused because its job was gone has its job again.
      if (this.#held.entriesOf(job).length > 0) await this.#writeHeld();
      return imported;
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

  everything(): AsyncIterable<Kept> {
    return everythingKept(this.#connection, this.#held);
  }

  restore(job: Parameters<Store['restore']>[0]): Promise<Restored> {
    return this.#inTurn(() => this.#write((tx) => putBack(tx, job)));
  }

  restoreStrays(raws: readonly unknown[]): Promise<number> {
    return this.#inTurn(() => this.#write((tx) => putBackDamaged(tx, raws)));
  }

  async photosHere(): Promise<ReadonlySet<string>> {
    return new Set(await this.#connection.run((database) => database.getAllKeys('photos')));
  }

  close(): void {
    this.#stopListening();
    this.#connection.close();
  }

  #setFacts(job: string, facts: Partial<JobRecord>): Promise<void> {
    return this.#inTurn(() =>
      this.#write(async (tx) => {
        // A job deleted in another tab must not leave a record without entries behind.
        if (!(await isHere(tx, job)) && this.#held.entriesOf(job).length === 0) return;
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

  async #writeBatch(held: Held): Promise<StoreFailure | null> {
    const { job, entries, photos } = held;
    // Where the beginning waits in memory, or was cleared away with everything else, half a job is better than none.
    const alone = (): boolean => this.emptied.peek() || this.#held.isAfterOthers(held);
    try {
      await this.#write((tx) => appendTo(tx, job, entries, photos, alone()), bytesOf(photos));
      return null;
    } catch (error) {
      return asFailure(error);
    }
  }

  async #write<T>(body: (transaction: WriteTransaction) => Promise<T>, bytes = 0): Promise<T> {
    try {
      await bringFolding();
      const result = await this.#connection.run((database) => write(database, body), bytes);
      this.#trouble.value = null;
      await this.#settle();
      return result;
    } catch (error) {
      let failure = asFailure(error);
      // While the disk is full, Chromium cannot even open its database again.
      if (failure.code === 'closed' && this.#torn.peek()) failure = new StoreFailure('full', error);
      if (!isOfContent(failure)) this.#trouble.value = failure.code;
      throw failure;
    }
  }

  /** Makes a torn database safe as soon as there is room; while there is not, tries no more than once a minute. */
  async #settle(): Promise<void> {
    if (!this.#torn.peek() || Date.now() < this.#settleNotBefore) return;
    this.#settleNotBefore = Date.now() + MINUTE;
    try {
      await this.#connection.run(beginNewLog, BALLAST_BYTES);
      this.#torn.value = false;
      this.#settleNotBefore = 0;
    } catch {
      // Still no room. `torn` goes on saying so.
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
