import type { Explanation } from '../adjust/index.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';

/** Two points taken for each other. pairs: the readings that would then have been written each on the other's line, one way or another. */
export interface Exchange {
  readonly points: readonly [string, string];
  readonly pairs: readonly (readonly [string, string])[];
}

/**
 * The one exchange of two points that would explain everything that does not fit: two tapes from the same point, each with the
 * other's value. Null where none of those that were weighed would, where more than one would, and where another slip is named already. It is a thought for
 * the bench and changes nothing.
 */
export function exchangeOf({ adjustment, slips, network }: PieceJudgement): Exchange | null {
  const critical = solutionOf(adjustment)?.globalTest.critical ?? null;
  if (!slips || slips.verdict === 'nothing-doubted' || critical === null) return null;
  const exchanges = slips.explanations.filter((one) => isExchange(one) && one.weightedSquare <= critical);
  const [lead] = slips.explanations;
  if (slips.verdict === 'named' && (!lead || !exchanges.includes(lead))) return null;
  const pointsOf = new Map(network.readings.map(({ id, points }) => [id, points]));
  const found = exchanges.map(({ slips: [first, second] }) => {
    const pair = [first?.reading ?? '', second?.reading ?? ''] as const;
    return { pair, points: exchanged(pointsOf.get(pair[0]) ?? [], pointsOf.get(pair[1]) ?? []) };
  });
  const [one] = found;
  if (!one?.points || found.some(({ points }) => points?.join() !== one.points?.join())) return null;
  return { points: one.points, pairs: found.map(({ pair }) => pair) };
}

const isExchange = ({ slips }: Explanation): boolean =>
  slips.length === 2 &&
  slips.every(({ kind, alsoKinds }) => kind === 'readings-swapped' || alsoKinds.includes('readings-swapped'));

/** The ends of two tapes that begin at the same point; null where they do not, or are more than tapes from point to point. */
function exchanged(a: readonly string[], b: readonly string[]): readonly [string, string] | null {
  const [mine, other] = [a.filter((id) => !b.includes(id)), b.filter((id) => !a.includes(id))];
  const [p, q] = [mine[0], other[0]];
  if (a.length !== 2 || b.length !== 2 || mine.length !== 1 || p === undefined || q === undefined) return null;
  return p < q ? [p, q] : [q, p];
}
