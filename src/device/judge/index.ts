import type { Entry } from '../../core/job/index.ts';
import type { JobJudgement } from './judge-job.ts';
import type { JudgeAnswer, JudgeRequest } from './protocol.ts';

export type { JobJudgement } from './judge-job.ts';

interface Waiting {
  resolve: (judgement: JobJudgement) => void;
  reject: (error: Error) => void;
}

let worker: Worker | null | undefined;
let sent: { job: string; ids: Set<string> } | null = null;
let count = 0;
const waiting = new Map<number, Waiting>();

/**
 * Judges a job beside the page, so that the search for a slip never holds up a thumb. Where no worker can start, the same
 * is done on the page.
 */
export async function judgeJob(job: string, entries: readonly Entry[]): Promise<JobJudgement> {
  const helper = theWorker();
  if (helper) {
    try {
      return await ask(helper, job, entries);
    } catch {
      stop(helper);
    }
  }
  const { judgeEntries } = await import('./judge-job.ts');
  return judgeEntries(entries);
}

function theWorker(): Worker | null {
  if (worker !== undefined) return worker;
  try {
    const made = new Worker(new URL('./judge-worker.ts', import.meta.url), { type: 'module' });
    made.addEventListener('message', ({ data }: MessageEvent<JudgeAnswer>) => {
      const asked = waiting.get(data.id);
      waiting.delete(data.id);
      if (data.ok) asked?.resolve(data.judgement);
      else asked?.reject(new Error(data.why));
    });
    made.addEventListener('error', () => stop(made));
    worker = made;
  } catch {
    worker = null;
  }
  return worker ?? null;
}

/** A worker that fails once is not asked again; everything that waits for it is done on the page. */
function stop(broken: Worker): void {
  broken.terminate();
  worker = null;
  sent = null;
  for (const { reject } of waiting.values()) reject(new Error('the worker stopped'));
  waiting.clear();
}

function ask(helper: Worker, job: string, entries: readonly Entry[]): Promise<JobJudgement> {
  const ids = new Set(entries.map((entry) => entry.id));
  const before = sent?.job === job && [...sent.ids].every((id) => ids.has(id)) ? sent.ids : null;
  // An erasure takes content away from what was sent before.
  const erases = entries.some(({ id, kind }) => kind === 'erase' && !before?.has(id));
  const known = erases ? null : before;
  const request: JudgeRequest = {
    id: ++count,
    job,
    fresh: known === null,
    entries: known ? entries.filter((entry) => !known.has(entry.id)) : entries,
  };
  sent = { job, ids };
  return new Promise((resolve, reject) => {
    waiting.set(request.id, { resolve, reject });
    helper.postMessage(request);
  });
}
