import { computed } from '@preact/signals';
import {
  type Deed,
  deed,
  type Entry,
  type EntryKind,
  fold,
  heads,
  merge,
  nextToTakeBack,
  type Payload,
  takenBackWith,
} from '../../core/job/index.ts';
import { now, uuid } from '../../device/clock.ts';
import { judgeJob } from '../../device/judge/index.ts';
import { type StoredPhoto, summaryOf } from '../../device/store/index.ts';
import { loadPieceWords } from '../../text/guides.ts';
import { letGo, noteBack, noteGone } from './gone.ts';
import { jobTitle } from './job-words.ts';
import { type OpenJob, openJob } from './opened.ts';
import { actor, device, store } from './services.ts';
import { listenToTabs, tellDeleted, tellGrown } from './tabs.ts';

export { type OpenJob, openJob };

/** A job that grew in another tab is read again, so that no tab judges a stale state. One deleted there is still held here. */
listenToTabs({
  grown: (id) => void noteBack(id).then(() => (openJob.value?.id === id ? loadJob(id) : null)),
  deleted: (id) => {
    const job = openJob.value;
    if (job?.id === id) noteGone({ id, entries: job.entries, title: jobTitle(job.sheet.details) });
  },
});

/** Longer than this no screen waits for a judgement before it shows what was typed; ms. */
const PATIENCE = 60;
let pending: Promise<unknown> = Promise.resolve();

/** Resolves when what is shown has been judged. */
export const judged = (): Promise<unknown> => pending;

/** Shows a state of the job: at once with its judgement where that is quick, otherwise the judgement follows. */
async function show(id: string, entries: readonly Entry[], damaged: number): Promise<void> {
  const sheet = fold(entries);
  const summary = () => summaryOf(sheet, entries);
  await loadPieceWords(sheet.pieces.map((piece) => piece.kind));
  const before = openJob.value?.id === id ? openJob.value : null;
  const judging = judgeJob(id, entries);
  pending = judging.catch(() => undefined);
  const soon = before ? await Promise.race([judging, later(PATIENCE)]) : await judging;
  if (soon) {
    openJob.value = { ...soon, id, entries, sheet, summary, damaged, judged: true };
    return;
  }
  if (before) openJob.value = { ...before, id, entries, sheet, summary, damaged, judged: false };
  pending = judging.then((judgement) => {
    const now = openJob.value;
    if (now?.entries === entries) openJob.value = { ...now, ...judgement, judged: true };
  });
}

const later = (ms: number): Promise<null> => new Promise((resolve) => setTimeout(() => resolve(null), ms));

/** Reads a job from the device and shows it; null when there is none. What is not written yet is among it. */
export function loadJob(id: string): Promise<OpenJob | null> {
  return inTurn(async () => {
    const { entries, damaged } = await store().readJob(id);
    if (entries.length === 0 && damaged.length === 0) openJob.value = null;
    else await show(id, entries, damaged.length);
    return openJob.value;
  });
}

/** Puts the open job back on a disk that was cleared under the page. */
export async function writeBack(): Promise<void> {
  const job = openJob.value;
  if (job) await store().importEntries(job.id, job.entries, []);
}

let queue: Promise<unknown> = Promise.resolve();

/** What was read while something was being done would show the job as it was before. */
function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const run = queue.then(work);
  queue = run.catch(() => undefined);
  return run;
}

/**
 * Does one thing in the open job: writes the entry to disk, then shows what follows from it. One after the other, so
 * that each entry has seen the one before. When the disk refuses, the store keeps the entry in memory, every screen
 * says so, and the job goes on.
 */
export function act<K extends EntryKind>(kind: K, payload: Payload<K>): Promise<Entry> {
  return actAll([deed(kind, payload)]).then(([entry]) => entry as Entry);
}

export { type Deed, deed };

/**
 * Several things at once: all are written in one transaction, or none is. What depends on how the job stands is made when its
 * turn has come: what was done just before may still be on its way to the disk.
 */
export function actAll(
  deeds: readonly Deed[] | ((job: OpenJob) => readonly Deed[]),
  photos: readonly StoredPhoto[] = [],
): Promise<Entry[]> {
  return inTurn(async () => {
    const job = openJob.value;
    if (!job) throw new Error('no job is open');
    const made = makeEntries(job.id, job.entries, typeof deeds === 'function' ? deeds(job) : deeds);
    const outcome = await store().append(made, photos);
    const entries = grown((openJob.value?.id === job.id ? openJob.value : job).entries, made);
    if (openJob.value?.id === job.id) await show(job.id, entries, job.damaged);
    if (outcome === 'gone') noteGone({ id: job.id, entries, title: jobTitle(job.sheet.details) });
    else tellGrown(job.id);
    return made;
  });
}

/** An erasure takes the content of what it names out of memory too. */
function grown(before: readonly Entry[], made: readonly Entry[]): readonly Entry[] {
  return made.some(({ kind }) => kind === 'erase') ? merge(before, made).entries : [...before, ...made];
}

function makeEntries(job: string, before: readonly Entry[], deeds: readonly Deed[]): Entry[] {
  let seen = heads(before);
  const at = now();
  let batch: string | null = null;
  return deeds.map(({ kind, payload }) => {
    const id = uuid();
    // What one act does is taken back at once; a clock that counts seconds cannot tell it from the next act.
    if (deeds.length > 1) batch ??= id;
    const entry: Entry = {
      id,
      job,
      at,
      who: actor.value,
      device: device.value,
      seen,
      ...(batch === null ? {} : { batch }),
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
  await store().append(made);
  await show(id, made, 0);
  return id;
}

/** Removes a job from this device for good, whether or not it is open, and tells the other tabs. */
export async function deleteJob(id: string): Promise<void> {
  await letGo({ id });
  if (openJob.value?.id === id) openJob.value = null;
  tellDeleted(id);
}

/** What undo would take back next; null where it stops. */
export const lastUndoable = computed<Entry | null>(() =>
  openJob.value ? nextToTakeBack(openJob.value.entries, actor.value.role) : null,
);

/** Takes an entry back, with all that was done at once with it: a point and what is asked about it, say. */
export async function undo(entry: Entry): Promise<void> {
  const job = openJob.value;
  if (job) await actAll(takenBackWith(job.entries, entry).map((id) => deed('undo', { entry: id })));
}
