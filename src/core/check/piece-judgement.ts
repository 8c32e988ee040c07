import type { Adjustment, Network, SlipReport, Solution, TapeAdvice, Vector } from '../adjust/index.ts';

/** Where a thing in the way lies in the shape of its piece. sure: mm at 95 %, with what the shape itself may be off by. */
export interface ThingPlace {
  readonly position: Vector;
  readonly sure: number;
}

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
  /** Things in the way by the point of their middle, where the readings place them in a shape that is solved. */
  readonly things: ReadonlyMap<string, ThingPlace>;
}

export const solutionOf = (adjustment: Adjustment): Solution | null =>
  adjustment.state === 'did-not-converge' ? null : adjustment.solution;

/** Places of the adjusted shape and of the things in its way, by point; empty while the engine does not have it. */
export function adjustedPlaces(judgement: PieceJudgement | undefined): ReadonlyMap<string, Vector> {
  if (judgement?.adjustment.state !== 'solved') return new Map();
  return new Map([
    ...judgement.adjustment.solution.points.map(({ id, position }) => [id, position] as const),
    ...[...judgement.things].map(([id, { position }]) => [id, position] as const),
  ]);
}
