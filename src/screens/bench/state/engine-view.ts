import { adjust, type SlipReport } from '../../../core/adjust/index.ts';
import { type PieceJudgement, solutionOf } from '../../../core/check/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

export type Solution = NonNullable<ReturnType<typeof solutionOf>>;
export type PointResult = Solution['points'][number];
export type ReadingResult = Solution['readings'][number];

/** What the bench shows of the engine's work on a piece. */
export interface EngineView {
  judgement: PieceJudgement;
  /** With everything that was read. */
  whole: Solution | null;
  /** What is shown: without the readings that the first explanation names, where the others fix the shape without them. */
  shown: Solution | null;
  /** Readings left out of what is shown. Nothing else leaves them out: the logbook and the gates do not. */
  without: readonly string[];
  /** The shape shown fixes every point. */
  solved: boolean;
  /** A reading that does not fit, and could not be left out, bends what is shown. */
  bent: boolean;
}

const views = new WeakMap<PieceJudgement, EngineView>();

/** Worked out once for each judgement; null while the engine has nothing to say about the piece. */
export function engineView(job: OpenJob, piece: string): EngineView | null {
  const judgement = job.pieces.get(piece);
  if (!judgement) return null;
  const known = views.get(judgement);
  if (known) return known;
  const made = makeView(judgement);
  views.set(judgement, made);
  return made;
}

function makeView(judgement: PieceJudgement): EngineView {
  const { adjustment, slips, network } = judgement;
  const whole = solutionOf(adjustment);
  const as = { judgement, whole, shown: whole, without: [], solved: adjustment.state === 'solved' };
  const named = slips?.verdict === 'named' ? (slips.explanations[0]?.slips.map(({ reading }) => reading) ?? []) : [];
  if (named.length > 0) {
    const rest = network.readings.filter(({ id }) => !named.includes(id));
    const left = adjust({ ...network, readings: rest }, { seekShapes: false });
    if (left.state === 'solved' && !left.solution.doubted)
      return { ...as, shown: left.solution, without: named, solved: true, bent: false };
  }
  return { ...as, bent: whole?.doubted ?? false };
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
