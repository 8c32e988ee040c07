/**
 * What can go wrong with the disk, as a small closed set; the words for people live elsewhere.
 * full: no room left. blocked: another tab holds the old version and does not let go. newer: the data on disk was
 * written by a newer version of the app, nothing was touched. closed: the connection is dead and reopening it did
 * not help. private: this window gives no storage at all. conflict: an id that is known here came with other
 * content and was refused. gone: the job the entries go on with is not on the disk any more; another tab deleted it.
 * unknown: anything else, with the cause.
 */
export type StoreFailureCode = 'full' | 'blocked' | 'newer' | 'closed' | 'private' | 'conflict' | 'gone' | 'unknown';

/** Codes that speak of what was to be written, not of the disk. */
const OF_CONTENT: ReadonlySet<StoreFailureCode> = new Set(['conflict', 'gone']);
export const isOfContent = ({ code }: StoreFailure): boolean => OF_CONTENT.has(code);

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
  return failure.code !== 'full' && failure.code !== 'unknown' && !isOfContent(failure);
}

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

const messageOf = (error: unknown): string =>
  error instanceof Error || error instanceof DOMException ? error.message : '';

/**
 * Whether a write failed in the browser's own files because the disk is full to the last byte. Chromium then closes
 * the connection with UnknownError "… IO error: … FILE_ERROR_NO_SPACE" and leaves its log torn.
 */
export function isTorn(error: unknown): boolean {
  const cause = error instanceof StoreFailure ? error.cause : error;
  return nameOf(cause) === 'UnknownError' && /NO_SPACE|IO error/.test(messageOf(cause));
}

/** The failure a thrown value stands for, while reading or writing. */
export function asFailure(error: unknown): StoreFailure {
  if (error instanceof StoreFailure) return error;
  if (isTorn(error)) return new StoreFailure('full', error);
  // Chromium, a large value on a full disk: DataError "Failed to write blobs (IOError)".
  if (nameOf(error) === 'DataError' && messageOf(error).includes('write blobs')) return new StoreFailure('full', error);
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
