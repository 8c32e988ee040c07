import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { type Entry, merge, picturesOf } from '../../core/job/index.ts';
import type { StoreFailure, StoreFailureCode } from './failure.ts';
import type { StoredPhoto } from './schema.ts';

/** What is only in memory because it could not be written. code: why. */
export interface Unsaved {
  entries: readonly Entry[];
  photos: readonly StoredPhoto[];
  code: StoreFailureCode;
}

/** What belongs together on disk: entries of one job and the pictures they name. */
export interface Batch {
  job: string;
  entries: readonly Entry[];
  photos: readonly StoredPhoto[];
}
/** A batch that is not known to be on disk. failure: why not; null while the first attempt is under way. */
export interface Held extends Batch {
  failure: StoreFailure | null;
}

/**
 * Everything given to the store that is not on disk yet, oldest first. Nothing leaves this list unless it was
 * written, refused to the caller's face, or its whole job was deleted.
 */
export class HeldBatches {
  readonly #held = signal<readonly Held[]>([]);
  readonly failed: ReadonlySignal<readonly Held[]> = computed(() => this.#held.value.filter((held) => held.failure));
  readonly any: ReadonlySignal<boolean> = computed(() => this.#held.value.length > 0);

  add(batch: Batch): Held {
    const held = { ...batch, failure: null };
    this.#held.value = [...this.#held.value, held];
    if (batch.entries.some(({ kind }) => kind === 'erase')) this.#withdraw(batch.job);
    return held;
  }

  /** What an erasure names leaves memory too, though it never was on disk. */
  #withdraw(job: string): void {
    const after = new Map(merge([], this.entriesOf(job)).entries.map((entry) => [entry.id, entry]));
    for (const held of this.#held.peek()) {
      if (held.job !== job) continue;
      held.entries = held.entries.map((entry) => after.get(entry.id) ?? entry);
      const named = picturesOf(held.entries);
      held.photos = held.photos.filter(({ sha256 }) => named.has(sha256));
    }
    this.#held.value = [...this.#held.peek()];
  }

  /** What to write next: everything up to and including the given batch, or everything that failed before. */
  due(last?: Held): Held[] {
    const all = this.#held.peek();
    return last ? all.slice(0, all.indexOf(last) + 1) : all.filter((held) => held.failure);
  }

  remove(held: Held): void {
    this.#held.value = this.#held.peek().filter((other) => other !== held);
  }

  fail(held: Held, failure: StoreFailure): void {
    held.failure = failure;
    this.#held.value = [...this.#held.peek()];
  }

  forgetJob(job: string): void {
    this.#held.value = this.#held.peek().filter((held) => held.job !== job);
  }

  jobs(): string[] {
    return this.#held.peek().map((held) => held.job);
  }

  entriesOf(job: string): Entry[] {
    return this.#held.peek().flatMap((held) => (held.job === job ? held.entries : []));
  }

  /** Whether earlier entries of the same job wait too, for another reason than that their job is gone. */
  isAfterOthers(held: Held): boolean {
    const all = this.#held.peek();
    return all
      .slice(0, all.indexOf(held))
      .some(({ job, failure }) => job === held.job && failure !== null && failure.code !== 'gone');
  }

  photos(): StoredPhoto[] {
    return this.#held.peek().flatMap((held) => held.photos);
  }

  photo(sha256: string): StoredPhoto | null {
    for (const held of this.#held.peek()) {
      const found = held.photos.find((photo) => photo.sha256 === sha256);
      if (found) return found;
    }
    return null;
  }

  /** The job's logbook as a person made it: what is on disk and what is only in memory. */
  complete(job: string, onDisk: Entry[]): Entry[] {
    const inMemory = this.entriesOf(job);
    return inMemory.length === 0 ? onDisk : merge(onDisk, inMemory).entries;
  }
}

/** What is only in memory, as everybody may see it. */
export function describe(failed: readonly Held[]): Unsaved | null {
  // Where the disk fails too, that is what matters first.
  const latest = (failed.findLast(({ failure }) => failure?.code !== 'gone') ?? failed.at(-1))?.failure;
  if (!latest) return null;
  return {
    entries: failed.flatMap((held) => held.entries),
    photos: failed.flatMap((held) => held.photos),
    code: latest.code,
  };
}
