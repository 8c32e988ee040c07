import { openDB } from 'idb';
import { asFailure, asOpeningFailure, StoreFailure, type StoreFailureCode } from './failure.ts';
import { DATABASE, type Database, type Schema, upgrade, VERSION } from './schema.ts';

export type OpenFunction = typeof openDB<Schema>;

export interface ConnectionOptions {
  /** Opens the database; replaced in tests to play a failing disk. */
  open?: OpenFunction;
  name?: string;
  /**
   * Milliseconds to wait for an answer before the connection counts as dead. WebKit can leave an open or a
   * transaction hanging for ever after the page was in the background. Default 4000.
   */
  patience?: number;
  onTrouble?(code: StoreFailureCode): void;
}

/**
 * One connection that is opened again when it died. Work given to `run` may be done twice, so it must not matter
 * whether the first time went through after all.
 */
export class Connection {
  readonly #open: OpenFunction;
  readonly #name: string;
  readonly #patience: number;
  readonly #onTrouble: (code: StoreFailureCode) => void;
  #current: Promise<Database> | null = null;

  constructor(options: ConnectionOptions) {
    this.#open = options.open ?? openDB;
    this.#name = options.name ?? DATABASE;
    this.#patience = options.patience ?? 4000;
    this.#onTrouble = options.onTrouble ?? (() => undefined);
  }

  /** Opens the database unless it is open. Throws StoreFailure. */
  async ready(): Promise<void> {
    await this.#database();
  }

  /**
   * Does the work; when the connection turns out to be dead, opens a new one and does it once more.
   * bytes: how much is written; every 100 kB add a second to the patience. Throws StoreFailure.
   */
  async run<T>(work: (database: Database) => Promise<T>, bytes = 0): Promise<T> {
    const patience = this.#patience + bytes / 100;
    try {
      return await this.#attempt(work, patience);
    } catch (error) {
      if (asFailure(error).code !== 'closed') throw asFailure(error);
    }
    try {
      return await this.#attempt(work, patience);
    } catch (error) {
      throw asFailure(error);
    }
  }

  /** Lets go of the database; the next `run` opens it again. */
  close(): void {
    if (this.#current) this.#drop(this.#current);
  }

  async #attempt<T>(work: (database: Database) => Promise<T>, patience: number): Promise<T> {
    const opening = this.#database();
    const database = await opening;
    try {
      return await within(patience, work(database));
    } catch (error) {
      if (asFailure(error).code === 'closed') this.#drop(opening);
      throw error;
    }
  }

  #database(): Promise<Database> {
    if (this.#current) return this.#current;
    const opening: Promise<Database> = this.#openOnce(() => this.#forget(opening));
    this.#current = opening;
    opening.catch(() => this.#forget(opening));
    return opening;
  }

  #forget(opening: Promise<Database>): void {
    // By identity: of two writes that fail on one dead connection, the second must not drop the first one's new one.
    if (this.#current === opening) this.#current = null;
  }

  #drop(opening: Promise<Database>): void {
    this.#forget(opening);
    opening.then(
      (database) => database.close(),
      () => undefined,
    );
  }

  #openOnce(lost: () => void): Promise<Database> {
    return new Promise((resolve, reject) => {
      let given = false;
      const giveUp = (code: StoreFailureCode): void => {
        given = true;
        reject(new StoreFailure(code));
      };
      let timer = setTimeout(giveUp, this.#patience, 'closed');
      const ready = (database: Database): void => {
        clearTimeout(timer);
        // Too late: an open connection nobody uses would block other tabs.
        if (given) database.close();
        else resolve(database);
      };
      const refuse = (error: unknown): void => {
        clearTimeout(timer);
        reject(asOpeningFailure(error));
      };
      const callbacks = {
        upgrade,
        // Another tab still holds the old version. It was asked to let go and may yet finish a write: wait a little.
        blocked: (): void => {
          clearTimeout(timer);
          this.#onTrouble('blocked');
          timer = setTimeout(giveUp, this.#patience, 'blocked');
        },
        // Another tab waits to upgrade or delete: step aside at once. Running transactions still complete.
        blocking: (_current: number, _wanted: number | null, event: IDBVersionChangeEvent): void => {
          if (event.target && 'close' in event.target) (event.target as IDBDatabase).close();
          lost();
          this.#onTrouble('newer');
        },
        // The browser cut the connection (storage process gone, data cleared): the next use opens a new one.
        terminated: lost,
      };
      try {
        this.#open(this.#name, VERSION, callbacks).then(ready, refuse);
      } catch (error) {
        // A window without indexedDB throws before there is a promise.
        refuse(error);
      }
    });
  }
}

function within<T>(milliseconds: number, promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new StoreFailure('closed')), milliseconds);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
