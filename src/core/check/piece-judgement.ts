import type { Adjustment, Network, SlipReport, Solution, TapeAdvice } from '../adjust/index.ts';

/** What the engine makes of one piece. slips: null while nothing is doubted. advice: null while readings are still open. */
export interface PieceJudgement {
  readonly network: Network;
  readonly adjustment: Adjustment;
  readonly slips: SlipReport | null;
  readonly advice: TapeAdvice | null;
  /** Tolerances double where an owner measured: the shop cuts such pieces with an allowance. */
  readonly byOwner: boolean;
  /** Every needed reading has a value or an answer: only then it means something that a point is unchecked or loose. */
  readonly complete: boolean;
}

export const solutionOf = (adjustment: Adjustment): Solution | null =>
  adjustment.state === 'did-not-converge' ? null : adjustment.solution;
