import { at } from '../array.ts';
import type { NetworkReading } from '../model.ts';
import type { Problem } from '../problem.ts';
import { minimise } from '../solve.ts';
import { logShare } from './kinds.ts';
import { type Outlook, withoutTwo } from './outlook.ts';
import { accusable, bestLeftOut, type Idea, ideasFor, preparedOf, type Suspect } from './suspects.ts';

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
  good: number,
): Both | undefined {
  const out = withoutTwo(outlook, i, j);
  if (out === undefined) return undefined;
  const { problem } = outlook;
  const fit = bestLeftOut(outlook, weight, [i, j], starts, good);
  if (fit === undefined) return undefined;
  const { square, x, computed } = fit;
  const one = (row: number, own: number): Suspect | undefined => {
    const reading = problem.prepared[preparedOf(problem, row)]?.reading;
    if (reading === undefined) return undefined;
    const sigma = at(problem.sigma, row);
    // Variance of a reading minus its prediction with both left out: sigma² (S_KK⁻¹)_ii.
    const redundancy = out.determinant / own;
    return {
      row,
      reading,
      sigma,
      redundancy,
      square,
      predicted: at(computed, row),
      spread: sigma / Math.sqrt(redundancy),
      x,
    };
  };
  const first = one(i, out.d);
  const second = one(j, out.a);
  return first === undefined || second === undefined
    ? undefined
    : { first, second, square, a: out.a, b: out.b, d: out.d };
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
  const guesses: Guess[] = [];
  for (const pair of pairsThatFit(outlook, 8, useful)) {
    const both = leaveOutBoth(outlook, weight, pair, [start], 0);
    if (both === undefined) continue;
    const { first, second, a, b, d } = both;
    const zi = (second.reading.value - first.predicted) / first.sigma;
    const zj = (first.reading.value - second.predicted) / second.sigma;
    const misfit = a * zi * zi + 2 * b * zi * zj + d * zj * zj;
    guesses.push(swapped(problem, first, second, both.square, misfit, first.x, logSlip));
  }
  return guesses;
}

function swapped(
  problem: Problem,
  first: Suspect,
  second: Suspect,
  rest: number,
  misfit: number,
  x: Float64Array,
  logSlip: number,
): Guess {
  const count = problem.prepared.length;
  const ways = Math.abs(first.row - second.row) === 1 ? 2 * count : count * count;
  const part = (suspect: Suspect, other: Suspect) => ({
    suspect,
    idea: {
      kind: 'readings-swapped' as const,
      value: other.reading.value,
      valueSigma: 0,
      misfit: Math.sqrt(misfit),
      score: 0,
      belongsTo: other.reading.points,
    },
  });
  return {
    parts: [part(first, second), part(second, first)],
    square: rest + misfit,
    // The chance of a slip is per reading, so a swap has as many chances as there are readings.
    score: -0.5 * (rest + misfit) + logShare('readings-swapped') + logSlip + Math.log(count / ways),
    x,
  };
}

/**
 * Swaps tried out in full among the worst-fitting rows: two gross slips at one point can bend even the robust shape so
 * far that no linear forecast sees them.
 */
export function trySwaps(
  outlook: Outlook,
  weight: Float64Array,
  rows: readonly number[],
  starts: readonly Float64Array[],
  good: number,
  logSlip: number,
): Guess[] {
  const { problem } = outlook;
  const guesses: Guess[] = [];
  rows.forEach((i, k) => {
    for (const j of rows.slice(k + 1)) {
      const [p, q] = [i, j].map((row) => problem.prepared[preparedOf(problem, row)]?.reading);
      if (p === undefined || q === undefined || p.kind !== q.kind || Math.abs(p.value - q.value) < 3) continue;
      const { observed } = problem;
      [observed[i], observed[j]] = [q.value, p.value];
      let best: ReturnType<typeof minimise> | undefined;
      for (const start of starts) {
        const fit = minimise(outlook.cf.ne, start, weight, 12);
        if (best === undefined || fit.square < best.square) best = fit;
        if (best.square <= good) break;
      }
      [observed[i], observed[j]] = [p.value, q.value];
      if (best === undefined || best.square > 2 * good) continue;
      const suspect = (row: number, reading: NetworkReading): Suspect => {
        const sigma = at(problem.sigma, row);
        const value = at(best.evaluation.computed, row);
        return { row, reading, sigma, redundancy: 1, square: best.square, predicted: value, spread: sigma, x: best.x };
      };
      guesses.push(swapped(problem, suspect(i, p), suspect(j, q), best.square, 0, best.x, logSlip));
    }
  });
  return guesses;
}

/** Two separate slips, each with its own explanation, for jobs no single one explains. */
export function guessTwo(
  outlook: Outlook,
  weight: Float64Array,
  starts: readonly Float64Array[],
  prior: (suspect: Suspect) => number,
  good: number,
): Guess[] {
  const guesses: Guess[] = [];
  for (const pair of pairsThatFit(outlook, 24, () => true)) {
    const both = leaveOutBoth(outlook, weight, pair, starts, good);
    if (both === undefined) continue;
    const { first, second, a, b, d } = both;
    const [mine, theirs] = [ideasFor(outlook, first).slice(0, 8), ideasFor(outlook, second).slice(0, 8)];
    for (const p of mine) {
      for (const q of theirs) {
        const own = (idea: Idea): boolean =>
          idea.kind !== 'unexplained' && idea.belongsTo === undefined && idea.valueSigma === 0;
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
