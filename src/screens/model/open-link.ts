import { firstAsked, type Step, stepsOf } from '../../core/guide/index.ts';
import { fold } from '../../core/job/index.ts';
import { type JobRequest, type Link, requestEntries } from '../../core/packet/link/index.ts';
import { now } from '../../device/clock.ts';
import { loadJob, openJob } from './open-job.ts';
import type { Route } from './route.ts';
import { store } from './services.ts';

/** Whether a job has any entry on this device. */
export const isHere = async (job: string): Promise<boolean> => (await store().readJob(job)).entries.length > 0;

/** Begins the job a shop asked for, or goes on with it where it is here already. Throws StoreFailure. */
export async function takeRequest(request: JobRequest): Promise<Route> {
  const { job } = request;
  await store().importEntries(job, requestEntries(request), [], now());
  if (openJob.value?.id === job) await loadJob(job);
  const { pieces, sheet } = await piecesOf(job);
  const [only] = pieces;
  const first = only && pieces.length === 1 ? stepsOf(sheet, only.id) : [];
  const untouched = first.every(({ state }) => state === 'open');
  return only && untouched && first[0] ? { at: 'step', job, piece: only.id, step: first[0].key } : { at: 'job', job };
}

export type AskTaken =
  | { what: 'not-here' }
  /** first: where to begin; null where nothing of it is open any more. */
  | { what: 'taken'; first: { piece: string; step: Step } | null; setAside: number };

/** Takes what a shop asks again into the job it speaks of. Throws StoreFailure. */
export async function takeAsk({ job, entries }: Extract<Link, { t: 'ask' }>['ask']): Promise<AskTaken> {
  if (!(await isHere(job))) return { what: 'not-here' };
  const imported = await store().importEntries(job, entries, []);
  if (openJob.value?.id === job) await loadJob(job);
  const { sheet } = await piecesOf(job);
  return { what: 'taken', first: firstAsked(sheet), setAside: imported.setAside.length };
}

async function piecesOf(job: string) {
  const sheet = fold((await store().readJob(job)).entries);
  return { sheet, pieces: sheet.pieces };
}
