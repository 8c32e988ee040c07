/**
 * What can go wrong with the disk, as a small closed set; the words for people live elsewhere.
 * full: no room left. blocked: another tab holds the old version and does not let go. newer: the data on disk was
 * written by a newer version of the app, nothing was touched. closed: the connection is dead and reopening it did
 * not help. private: this window gives no storage at all. conflict: an id that is known here came with other
 * content and was refused. unknown: anything else, with the cause.
 */
export type StoreFailureCode = 'full' | 'blocked' | 'newer' | 'closed' | 'private' | 'conflict' | 'unknown';

export class StoreFailure extends Error {
  override readonly name = 'StoreFailure';
  readonly code: StoreFailureCode;

  constructor(code: StoreFailureCode, cause?: unknown) {
    super(`store: ${code}`, { cause });
    this.code = code;
  }
}

/** Failures after which a fresh attempt on the same database is pointless until something outside changes. */
export function isLasting(failure: StoreFailure): boolean {
  return failure.code !== 'full' && failure.code !== 'conflict' && failure.code !== 'unknown';
}

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

/** The failure a thrown value stands for, while reading or writing. */
export function asFailure(error: unknown): StoreFailure {
  if (error instanceof StoreFailure) return error;
  switch (nameOf(error)) {
    case 'QuotaExceededError':
      return new StoreFailure('full', error);
    case 'VersionError':
      return new StoreFailure('newer', error);
    // `add` over an id that is there.
    case 'ConstraintError':
      return new StoreFailure('conflict', error);
    case 'SecurityError':
      return new StoreFailure('private', error);
    // WebKit after sleep: InvalidStateError on a dead connection, or AbortError with no reason given, or
    // UnknownError "Connection to Indexed Database server lost".
    case 'InvalidStateError':
    case 'AbortError':
    case 'UnknownError':
      return new StoreFailure('closed', error);
    default:
      return new StoreFailure('unknown', error);
  }
}

/** The failure a thrown value stands for, while opening: there a refusal means the window has no storage to give. */
export function asOpeningFailure(error: unknown): StoreFailure {
  // Private windows: older Gecko refuses with InvalidStateError; where indexedDB is missing, idb runs into a
  // TypeError or ReferenceError.
  const refused = ['InvalidStateError', 'TypeError', 'ReferenceError'].includes(nameOf(error));
  return refused ? new StoreFailure('private', error) : asFailure(error);
}
