import { firstAsked, type Step } from '../../core/guide/index.ts';
import { fold } from '../../core/job/index.ts';
import { type JobRequest, type Link, requestEntries } from '../../core/packet/link/index.ts';
import { now } from '../../device/clock.ts';
import { speakIn } from '../../text/index.ts';
import { type Language, language, languageAmong } from '../../text/language.ts';
import { roomsReady } from '../../text/rooms.ts';
import { loadJob, openJob } from './open-job.ts';
import type { Route } from './route.ts';
import { chooseLanguage, person, store } from './services.ts';

/** Whether a job has any entry on this device. */
export const isHere = async (job: string): Promise<boolean> => (await store().readJob(job)).entries.length > 0;

/** Begins the job a shop asked for, or goes on with it where it is here already. Throws StoreFailure. */
export async function takeRequest(request: JobRequest): Promise<Route> {
  const { job } = request;
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

/** The language a shop asks for, where nobody has chosen one on this device: the shop knows whom it asks. */
async function wished(wish: string): Promise<Language | null> {
  const known = languageAmong([wish]);
  if (wish.toLowerCase().split('-')[0] !== known) return null;
  return (await store().settings.get('language')) === null ? known : null;
}

/**
 * Speaks as a link asks from the moment it is opened; what was spoken before, null where nothing changed. It is kept with
 * the job that is begun, and can be changed under This device.
 */
export async function speakAsAsked(wish: string): Promise<Language | null> {
  const before = language.value;
  const asked = await wished(wish);
  if (asked === null || asked === before) return null;
  await speakIn(asked);
  await roomsReady();
  return before;
}

async function keepAsAsked(wish: string): Promise<void> {
  const asked = await wished(wish);
  if (asked !== null) await chooseLanguage(asked);
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
