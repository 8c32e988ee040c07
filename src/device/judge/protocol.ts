import type { Entry } from '../../core/job/index.ts';
import type { JobJudgement } from './judge-job.ts';

/** fresh: these are all entries of the job, forget what came before. */
export interface JudgeRequest {
  readonly id: number;
  readonly job: string;
  readonly fresh: boolean;
  readonly entries: readonly Entry[];
}

export type JudgeAnswer =
  | { readonly id: number; readonly ok: true; readonly judgement: JobJudgement }
  | { readonly id: number; readonly ok: false; readonly why: string };
