import type { Entry } from '../../core/job/index.ts';
import { judgeEntries } from './judge-job.ts';
import type { JudgeAnswer, JudgeRequest } from './protocol.ts';

/** Logbooks as far as they were sent; entries never change, so only new ones travel. */
const logbooks = new Map<string, Entry[]>();

addEventListener('message', ({ data }: MessageEvent<JudgeRequest>) => {
  const logbook = data.fresh ? [] : (logbooks.get(data.job) ?? []);
  logbook.push(...data.entries);
  logbooks.set(data.job, logbook);
  let answer: JudgeAnswer;
  try {
    answer = { id: data.id, ok: true, judgement: judgeEntries(logbook) };
  } catch (error) {
    answer = { id: data.id, ok: false, why: String(error) };
  }
  postMessage(answer);
});
