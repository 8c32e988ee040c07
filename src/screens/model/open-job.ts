import { computed, signal } from '@preact/signals';
import { check, type Finding, type Gate, gates } from '../../core/check/index.ts';
import { type Entry, type EntryKind, fold, heads, type Payload, type Sheet } from '../../core/job/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { type StoredPhoto, StoreFailure } from '../../device/store/index.ts';
import { actor, device, store } from './services.ts';

/** The job on the screen: its logbook and what follows from it. */
export interface OpenJob {
  id: string;
  entries: readonly Entry[];
  sheet: Sheet;
  findings: readonly Finding[];
  gates: { leave: Gate; cut: Gate };
  /** Entries on disk that could not be read; left as they are. */
  damaged: number;
}

export const openJob = signal<OpenJob | null>(null);
export const sheet = computed<Sheet | null>(() => openJob.value?.sheet ?? null);

/** Tells the app's other tabs that a job has grown; they read it again, so that no tab judges a stale state. */
const otherTabs = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('tapetrue-job');
otherTabs?.addEventListener('message', (event: MessageEvent<unknown>) => {
  const id = openJob.value?.id;
  if (id !== undefined && event.data === id) void loadJob(id);
});

export function derive(id: string, entries: readonly Entry[], damaged = 0): OpenJob {
  const folded = fold(entries);
  const findings = check(folded);
  return { id, entries, sheet: folded, findings, gates: gates(folded, findings), damaged };
}

/** Reads a job from the device and shows it; null when there is none. What is not written yet is among it. */
export async function loadJob(id: string): Promise<OpenJob | null> {
  const { entries, damaged } = await store().readJob(id);
  openJob.value = entries.length === 0 && damaged.length === 0 ? null : derive(id, entries, damaged.length);
  return openJob.value;
}

export function closeJob(): void {
  openJob.value = null;
}

let queue: Promise<unknown> = Promise.resolve();

/**
 * Does one thing in the open job: writes the entry to disk, then shows what follows from it. One after the other, so
 * that each entry has seen the one before. When the disk refuses, the store keeps the entry in memory and says so.
 */
export function act<K extends EntryKind>(kind: K, payload: Payload<K>): Promise<Entry> {
  return actAll([deed(kind, payload)]).then(([entry]) => entry as Entry);
}

export interface Deed {
  kind: EntryKind;
  payload: Record<string, unknown>;
}

/** Something to do, checked against its kind. */
export const deed = <K extends EntryKind>(kind: K, payload: Payload<K>): Deed => ({ kind, payload: { ...payload } });

/** Several things at once: all are written in one transaction, or none is. */
export function actAll(deeds: readonly Deed[], photos: readonly StoredPhoto[] = []): Promise<Entry[]> {
  const run = queue.then(async () => {
    const job = openJob.value;
    if (!job) throw new Error('no job is open');
    const made = makeEntries(job.id, job.entries, deeds);
    await write(made, photos);
    if (openJob.value?.id === job.id) openJob.value = derive(job.id, [...openJob.value.entries, ...made], job.damaged);
    otherTabs?.postMessage(job.id);
    return made;
  });
  queue = run.catch(() => undefined);
  return run;
}

/** Writes to disk. Where the disk fails the store holds the entries in memory and the screen says so: go on with them. */
async function write(made: readonly Entry[], photos: readonly StoredPhoto[]): Promise<void> {
  try {
    await store().append(made, photos);
  } catch (error) {
    if (!(error instanceof StoreFailure) || error.code === 'conflict') throw error;
  }
}

function makeEntries(job: string, before: readonly Entry[], deeds: readonly Deed[]): Entry[] {
  let seen = heads(before);
  return deeds.map(({ kind, payload }) => {
    const entry: Entry = {
      id: uuid(),
      job,
      at: now(),
      who: actor.value,
      device: device.value,
      seen,
      kind,
      payload,
    };
    seen = [entry.id];
    return entry;
  });
}

/** Begins a job and opens it. */
export async function beginJob(deeds: readonly Deed[]): Promise<string> {
  const id = uuid();
  const made = makeEntries(id, [], deeds);
  await write(made, []);
  openJob.value = derive(id, made);
  return id;
}

/** What undo would take back next: the last entry of this person's own hand that is still in force. */
export const lastUndoable = computed<Entry | null>(() => {
  const job = openJob.value;
  if (!job) return null;
  const undone = new Set(job.entries.filter((e) => e.kind === 'undo').map((e) => String(e.payload.entry)));
  const me = actor.value.role;
  for (let i = job.entries.length - 1; i >= 0; i -= 1) {
    const entry = job.entries[i];
    if (!entry || entry.kind === 'undo' || undone.has(entry.id)) continue;
    if (entry.kind === 'job.open' || entry.kind === 'erase') return null;
    if (entry.who.role === me) return entry;
  }
  return null;
});

export async function undo(entry: Entry): Promise<void> {
  await act('undo', { entry: entry.id });
}
