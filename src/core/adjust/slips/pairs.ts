import { at } from '../array.ts';
import { logShare } from './kinds.ts';
import { type Outlook, withoutTwo } from './outlook.ts';
import { accusable, type Idea, ideasFor, leftOut, preparedOf, type Suspect } from './suspects.ts';

/** A complete explanation with its log belief. */
export interface Guess {
  readonly parts: readonly { readonly suspect: Suspect; readonly idea: Idea }[];
  readonly square: number;
  readonly score: number;
  readonly x: Float64Array;
}

/** Pairs of rows that would fit once both are left out, best first by the linear forecast. */
function pairsThatFit(outlook: Outlook, wanted: number, useful: (i: number, j: number) => boolean): [number, number][] {
  const rows = accusable(outlook.problem, outlook);
  const found: { pair: [number, number]; drop: number }[] = [];
  rows.forEach((i, k) => {
    for (const j of rows.slice(k + 1)) {
      if (!useful(i, j)) continue;
      const out = withoutTwo(outlook, i, j);
      if (out !== undefined) found.push({ pair: [i, j], drop: out.drop });
    }
  });
  found.sort((a, b) => b.drop - a.drop);
  return found.slice(0, wanted).map((f) => f.pair);
}

interface Both {
  readonly first: Suspect;
  readonly second: Suspect;
  readonly square: number;
  /** Quadratic form of standardised misfits (of i, of j): a zi² + 2 b zi zj + d zj², z in units of each sigma. */
  readonly a: number;
  readonly b: number;
  readonly d: number;
}

function leaveOutBoth(
  outlook: Outlook,
  weight: Float64Array,
  [i, j]: readonly [number, number],
  starts: readonly Float64Array[],
): Both | undefined {
  const out = withoutTwo(outlook, i, j);
  if (out === undefined) return undefined;
  const { problem } = outlook;
  let fit: ReturnType<typeof leftOut> | undefined;
  for (const start of starts) {
    const next = leftOut(outlook, weight, [i, j], start);
    if (fit === undefined || next.square < fit.square - 1e-9) fit = next;
  }
  if (fit === undefined) return undefined;
  const { square, x, computed } = fit;
  const one = (row: number, own: number): Suspect | undefined => {
    const reading = problem.prepared[preparedOf(problem, row)]?.reading;
    if (reading === undefined) return undefined;
    const sigma = at(problem.sigma, row);
    // Variance of a reading minus its prediction with both left out: sigma² (S_KK⁻¹)_ii.
    const redundancy = out.determinant / own;
    return { row, reading, sigma, redundancy, square, predicted: at(computed, row), spread: sigma / Math.sqrt(redundancy), x };
  };
  const first = one(i, out.d);
  const second = one(j, out.a);
  return first === undefined || second === undefined ? undefined : { first, second, square, a: out.a, b: out.b, d: out.d };
}

/** Two readings written each on the other's line. */
export function guessSwaps(outlook: Outlook, weight: Float64Array, start: Float64Array, logSlip: number): Guess[] {
  const { problem } = outlook;
  const readingOf = (row: number) => problem.prepared[preparedOf(problem, row)]?.reading;
  const useful = (i: number, j: number): boolean => {
    const [p, q] = [readingOf(i), readingOf(j)];
    if (p === undefined || q === undefined || p.kind !== q.kind || Math.abs(p.value - q.value) < 3) return false;
    // The linear forecast need only make the exchange thinkable; bent shapes forecast poorly.
    const out = withoutTwo(outlook, i, j);
    if (out === undefined) return false;
    const wi = p.value + at(problem.sigma, i) * out.ci - q.value;
    const wj = q.value + at(problem.sigma, j) * out.cj - p.value;
    return Math.max(Math.abs(wi), Math.abs(wj)) < 40 + 0.2 * Math.abs(p.value - q.value);
  };
  const count = problem.prepared.length;
  const guesses: Guess[] = [];
  for (const pair of pairsThatFit(outlook, 8, useful)) {
    const both = leaveOutBoth(outlook, weight, pair, [start]);
    if (both === undefined) continue;
    const { first, second, a, b, d } = both;
    const zi = (second.reading.value - first.predicted) / first.sigma;
    const zj = (first.reading.value - second.predicted) / second.sigma;
    const misfit = a * zi * zi + 2 * b * zi * zj + d * zj * zj;
    const adjacent = Math.abs(first.row - second.row) === 1;
    const ways = adjacent ? 2 * count : count * count;
    const idea = (value: number, belongsTo: readonly string[]): Idea => ({
      kind: 'readings-swapped',
      value,
      valueSigma: 0,
      misfit: Math.sqrt(misfit),
      score: 0,
      belongsTo,
    });
    guesses.push({
      parts: [
        { suspect: first, idea: idea(second.reading.value, second.reading.points) },
        { suspect: second, idea: idea(first.reading.value, first.reading.points) },
      ],
      square: both.square + misfit,
      // The chance of a slip is per reading, so a swap has as many chances as there are readings.
      score: -0.5 * (both.square + misfit) + logShare('readings-swapped') + logSlip + Math.log(count / ways),
      x: both.first.x,
    });
  }
  return guesses;
}

/** Two separate slips, each with its own explanation, for jobs no single one explains. */
export function guessTwo(
  outlook: Outlook,
  weight: Float64Array,
  starts: readonly Float64Array[],
  prior: (suspect: Suspect) => number,
): Guess[] {
  const guesses: Guess[] = [];
  for (const pair of pairsThatFit(outlook, 24, () => true)) {
    const both = leaveOutBoth(outlook, weight, pair, starts);
    if (both === undefined) continue;
    const { first, second, a, b, d } = both;
    const [mine, theirs] = [ideasFor(outlook, first).slice(0, 8), ideasFor(outlook, second).slice(0, 8)];
    for (const p of mine) {
      for (const q of theirs) {
        const own = (idea: Idea): boolean => idea.kind !== 'unexplained' && idea.belongsTo === undefined && idea.valueSigma === 0;
        let joint = -0.5 * (p.misfit * p.misfit + q.misfit * q.misfit);
        if (own(p) && own(q)) {
          const zi = (p.value - first.predicted) / first.sigma;
          const zj = (q.value - second.predicted) / second.sigma;
          joint = -0.5 * (a * zi * zi + 2 * b * zi * zj + d * zj * zj);
        }
        const alone = -0.5 * (p.misfit * p.misfit + q.misfit * q.misfit);
        guesses.push({
          parts: [
            { suspect: first, idea: p },
            { suspect: second, idea: q },
          ],
          square: both.square - (own(p) && own(q) ? 2 * joint : 0),
          score: -0.5 * both.square + p.score + q.score - alone + joint + prior(first) + prior(second),
          x: first.x,
        });
      }
    }
  }
  return guesses;
}
