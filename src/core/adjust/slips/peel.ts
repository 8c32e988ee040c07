import { at } from '../array.ts';
import { cofactors } from '../covariance.ts';
import { redundancies, UNCHECKED } from '../reliability.ts';
import { minimise, type SolveResult } from '../solve.ts';
import { chiSquareUpperQuantile } from '../statistics.ts';
import { logShare } from './kinds.ts';
import type { Outlook } from './outlook.ts';
import type { Guess } from './pairs.ts';
import { accusable, type Idea, ideasFor, preparedOf, type Suspect } from './suspects.ts';

const MOST = 4;

/**
 * For jobs no one or two slips explain: takes the worst reading out, refits, and again, until the rest agrees; then puts
 * back whatever fits after all. Two lines swapped and a third slip are found this way.
 */
export function guessPeeled(
  outlook: Outlook,
  weight: Float64Array,
  starts: readonly Float64Array[],
  freedom: number,
  prior: (suspect: Suspect) => number,
): Guess[] {
  const guesses: Guess[] = [];
  const outliers = robustOutliers(outlook);
  for (const [k, start] of starts.entries()) {
    // The robust shape comes first, and says itself which readings it let go of.
    const peeled = peel(outlook, weight, start, freedom, k === 0 ? outliers : []);
    if (peeled === undefined) continue;
    const guess = explain(outlook, weight, peeled.rows, peeled.fit, prior);
    if (guess !== undefined) guesses.push(guess);
  }
  return guesses;
}

/** Accusable rows far off at the robust shape. */
function robustOutliers(outlook: Outlook): number[] {
  const { problem, cf } = outlook;
  return accusable(problem, outlook).filter((r) => Math.abs(at(cf.evaluation.residual, r)) > 6 * at(problem.sigma, r));
}

function peel(
  outlook: Outlook,
  weight: Float64Array,
  start: Float64Array,
  freedom: number,
  first: readonly number[],
): { rows: number[]; fit: SolveResult } | undefined {
  const { problem, cf } = outlook;
  const left = Float64Array.from(weight);
  const rows: number[] = first.length <= MOST ? [...first] : [];
  for (const r of rows) left[r] = 0;
  const enough = (): number => chiSquareUpperQuantile(1e-3, Math.max(1, freedom - rows.length));
  const candidates = accusable(problem, outlook);
  let fit = minimise(cf.ne, start, left, 40);
  while (fit.square > enough()) {
    if (rows.length >= MOST || rows.length + 1 >= freedom) return undefined;
    const { redundancy } = redundancies(cofactors(problem, fit.x, left));
    const w = (r: number): number =>
      at(left, r) > 0 && at(redundancy, r) > UNCHECKED
        ? Math.abs(at(fit.evaluation.residual, r)) / (at(problem.sigma, r) * Math.sqrt(at(redundancy, r)))
        : 0;
    const worst = candidates.reduce((best, r) => (w(r) > w(best) ? r : best), candidates[0] ?? 0);
    if (w(worst) === 0) return undefined;
    rows.push(worst);
    left[worst] = 0;
    fit = minimise(cf.ne, fit.x, left, 40);
  }
  for (const r of [...rows]) {
    left[r] = at(weight, r);
    const back = minimise(cf.ne, fit.x, left, 40);
    if (back.square <= enough()) {
      rows.splice(rows.indexOf(r), 1);
      fit = back;
    } else left[r] = 0;
  }
  return rows.length === 0 ? undefined : { rows, fit };
}

function explain(
  outlook: Outlook,
  weight: Float64Array,
  rows: readonly number[],
  fit: SolveResult,
  prior: (suspect: Suspect) => number,
): Guess | undefined {
  const { problem } = outlook;
  const left = Float64Array.from(weight);
  for (const r of rows) left[r] = 0;
  const cf = cofactors(problem, fit.x, left);
  const { redundancy: leverage } = redundancies({ ...cf, weight });
  const suspects = rows.flatMap((row): Suspect[] => {
    const reading = problem.prepared[preparedOf(problem, row)]?.reading;
    if (reading === undefined) return [];
    const sigma = at(problem.sigma, row);
    // 1 - w J Q Jᵀ with Q of the rest: below 0 where the rest knows the value worse than the reading would.
    const known = Math.max(0, 1 - at(leverage, row));
    const redundancy = 1 / (1 + known);
    const predicted = at(fit.evaluation.computed, row);
    return [
      {
        row,
        reading,
        sigma,
        redundancy,
        square: fit.square,
        predicted,
        spread: sigma / Math.sqrt(redundancy),
        x: fit.x,
      },
    ];
  });
  const swap = swappedPair(suspects);
  const parts = suspects.map((suspect): { suspect: Suspect; idea: Idea } | undefined => {
    const other = swap?.find((s) => s !== suspect);
    if (other === undefined || swap?.includes(suspect) !== true) {
      const [idea] = ideasFor(outlook, suspect);
      return idea === undefined ? undefined : { suspect, idea };
    }
    const misfit = (other.reading.value - suspect.predicted) / suspect.spread;
    const score = -0.5 * misfit * misfit + 0.5 * logShare('readings-swapped');
    const idea = { kind: 'readings-swapped' as const, value: other.reading.value, valueSigma: 0, misfit, score };
    return { suspect, idea: { ...idea, belongsTo: other.reading.points } };
  });
  const whole = parts.filter((p) => p !== undefined);
  if (whole.length !== suspects.length) return undefined;
  const score = whole.reduce((sum, p) => sum + p.idea.score + prior(p.suspect), -0.5 * fit.square);
  const misfits = whole.reduce((sum, p) => sum + p.idea.misfit ** 2, 0);
  return { parts: whole, square: fit.square + misfits, score, x: fit.x };
}

/** Two of the suspects whose values would fit each other's place. */
function swappedPair(suspects: readonly Suspect[]): readonly [Suspect, Suspect] | undefined {
  for (const [i, a] of suspects.entries()) {
    for (const b of suspects.slice(i + 1)) {
      if (a.reading.kind !== b.reading.kind) continue;
      const fits =
        Math.abs(b.reading.value - a.predicted) < 4 * a.spread &&
        Math.abs(a.reading.value - b.predicted) < 4 * b.spread;
      if (fits) return [a, b];
    }
  }
  return undefined;
}
