import { firstAsked, type Step } from '../../core/guide/index.ts';
import { fold } from '../../core/job/index.ts';
import { type JobRequest, type Link, requestEntries, requestFault } from '../../core/packet/link/index.ts';
import { now } from '../../device/clock.ts';
import { isHere, keepAsAsked } from './link-opened.ts';
import { loadJob, openJob } from './open-job.ts';
import type { Route } from './route.ts';
import { person, store } from './services.ts';

export { requestFault };

/** Begins the job a shop asked for, or goes on with it where it is here already. Throws StoreFailure. */
export async function takeRequest(request: JobRequest): Promise<Route> {
  const { job } = request;
  if (requestFault(request)) throw new Error('a request that cannot be taken was not refused');
  const isNew = !(await isHere(job));
  await store().importEntries(job, requestEntries(request), [], now());
  if (openJob.value?.id === job) await loadJob(job);
  if (isNew) await keepAsAsked(request.language).catch(() => undefined);
  // An owner begins with what to know first; whoever has measured before begins at the tape.
  if (person.value.role === 'owner') return { at: 'job', job };
  const { pieces } = await sheetOf(job);
  const [only] = pieces;
  const first = pieces.length === 1 ? only?.walk[0] : undefined;
  return only && first && isNew ? { at: 'step', job, piece: only.id, step: first } : { at: 'job', job };
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
  return { what: 'taken', first: firstAsked(await sheetOf(job)), setAside: imported.setAside.length };
}

const sheetOf = async (job: string) => fold((await store().readJob(job)).entries);
