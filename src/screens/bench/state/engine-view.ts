import type { SlipReport } from '../../../core/adjust/index.ts';
import { type PieceJudgement, type ShownShape, shownShape, type solutionOf } from '../../../core/check/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

export type Solution = NonNullable<ReturnType<typeof solutionOf>>;
export type PointResult = Solution['points'][number];
export type ReadingResult = Solution['readings'][number];

/** What the bench shows of the engine's work on a piece. */
export type EngineView = ShownShape;

/** Null while the engine has nothing to say about the piece. */
export function engineView(job: OpenJob, piece: string): EngineView | null {
  const judgement = job.pieces.get(piece);
  return judgement ? shownShape(judgement, job.findings) : null;
}

/** What may be wrong with a piece; null while everything fits. */
export function suspicion(job: OpenJob, piece: string): SlipReport | null {
  const slips = job.pieces.get(piece)?.slips;
  return slips && slips.verdict !== 'nothing-doubted' ? slips : null;
}

/** Read a second time, and the takes agree. */
export const isConfirmed = (judgement: PieceJudgement, reading: string): boolean =>
  judgement.network.readings.find(({ id }) => id === reading)?.confirmed ?? false;

/** Points the readings do not fix, and in how many ways each can still move. */
export function floatingOf({ adjustment }: PieceJudgement): readonly { point: string; ways: number }[] {
  return adjustment.state === 'not-enough-readings' || adjustment.state === 'singular' ? adjustment.floating : [];
}
