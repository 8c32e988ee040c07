import type { IDBPTransaction } from 'idb';
import { type Database, type Schema, STORE_NAMES, type StoreName } from './schema.ts';

export type WriteTransaction = IDBPTransaction<Schema, StoreName[], 'readwrite'>;
export type ReadTransaction = IDBPTransaction<Schema, StoreName[], 'readonly'>;

/**
 * One transaction over all stores: resolves only when it is on disk, and leaves nothing behind when anything
 * throws. The body must await nothing but its own requests.
 * durability strict: the default may lose the last transactions when the power goes.
 */
export async function write<T>(database: Database, body: (transaction: WriteTransaction) => Promise<T>): Promise<T> {
  const transaction = database.transaction([...STORE_NAMES], 'readwrite', { durability: 'strict' });
  // Listened to from the start: it may reject while the body still waits for a request.
  const done = transaction.done.then(
    () => null,
    (error: unknown) => ({ error }),
  );
  let result: T;
  try {
    result = await body(transaction);
  } catch (error) {
    try {
      transaction.abort();
    } catch {
      // It aborted by itself already.
    }
    await done;
    // A request of an aborted transaction only says AbortError; why (no room, say) is on the transaction.
    throw transaction.error ?? error;
  }
  const failed = await done;
  if (failed) throw transaction.error ?? failed.error;
  return result;
}

export async function read<T>(database: Database, body: (transaction: ReadTransaction) => Promise<T>): Promise<T> {
  const transaction = database.transaction([...STORE_NAMES], 'readonly');
  // A read that fails says so through its own request.
  transaction.done.catch(() => undefined);
  return await body(transaction);
}

/**
 * Writes that are asked for in one breath. Between two awaits a transaction commits by itself as soon as it has
 * nothing to do; should the page be frozen just there, half of what belongs together would be on disk.
 */
export class OneBreath {
  readonly #requests: Promise<unknown>[] = [];

  ask(request: Promise<unknown>): void {
    // When a later request throws at once, the transaction aborts and nobody waits for this one any more.
    request.catch(() => undefined);
    this.#requests.push(request);
  }

  async done(): Promise<void> {
    await Promise.all(this.#requests);
  }
}

/** Longer than this, work inside a transaction does not hold up the page in one stretch; ms. */
const STRETCH = 8;

/**
 * Long work inside a transaction, done in stretches so that the page goes on in between. Whenever it does, a request of
 * ours is under way, so the transaction cannot commit before the work is over: it stays all or nothing.
 */
export class Stretches {
  readonly #transaction: ReadTransaction | WriteTransaction;
  #began = performance.now();

  constructor(transaction: ReadTransaction | WriteTransaction) {
    this.#transaction = transaction;
  }

  /** Between two parts of the work: lets the page go on when the stretch has lasted long enough. */
  async pause(): Promise<void> {
    if (performance.now() - this.#began >= STRETCH) await this.rest();
  }

  /** Before a part that is long by itself: lets the page go on first. */
  async rest(): Promise<void> {
    await this.#transaction.objectStore('settings').getKey('none');
    this.#began = performance.now();
  }
}
