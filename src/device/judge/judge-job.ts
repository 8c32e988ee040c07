import { type Finding, type Gate, gates, judge, type PieceJudgement } from '../../core/check/index.ts';
import { type Entry, fold } from '../../core/job/index.ts';

/** All that can be said of a job: what the rules find, what stands before the gates, what the engine makes of each piece. */
export interface JobJudgement {
  readonly findings: readonly Finding[];
  readonly gates: { readonly leave: Gate; readonly cut: Gate };
  readonly pieces: ReadonlyMap<string, PieceJudgement>;
}

export function judgeEntries(entries: readonly Entry[]): JobJudgement {
  const sheet = fold(entries);
  const { findings, pieces } = judge(sheet);
  return { findings, gates: gates(sheet, findings), pieces };
}
