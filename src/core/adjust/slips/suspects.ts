import { at, ix } from '../array.ts';
import { covarianceOf } from '../covariance.ts';
import type { NetworkReading, Side } from '../model.ts';
import type { Problem } from '../problem.ts';
import { UNCHECKED } from '../reliability.ts';
import { minimise } from '../solve.ts';
import { logShare, type SlipKind } from './kinds.ts';
import { misreadings } from './misreadings.ts';
import type { Outlook } from './outlook.ts';

/** A reading left out, and what the rest then says about it. */
export interface Suspect {
  readonly row: number;
  readonly reading: NetworkReading;
  readonly sigma: number;
  readonly redundancy: number;
  /** Squares of the rest without it. */
  readonly square: number;
  /** Value the rest predicts, and the standard deviation of (a sound reading - prediction). */
  readonly predicted: number;
  readonly spread: number;
  readonly x: Float64Array;
}

/** A way one suspect may have gone wrong; the score is a log of belief, up to one constant for all. */
export interface Idea {
  readonly kind: SlipKind;
  readonly value: number;
  readonly valueSigma: number;
  /** Standardised misfit of the value with the prediction. */
  readonly misfit: number;
  /** Log belief beyond the squares of the rest. */
  readonly score: number;
  readonly belongsTo?: readonly string[];
}

const LOG_ROOT_2PI = 0.5 * Math.log(2 * Math.PI);

/** Rows that can be accused: one-row readings of a value, checked by others. */
export function accusable(problem: Problem, outlook: Outlook): number[] {
  const rows: number[] = [];
  problem.prepared.forEach((p, i) => {
    const row = ix(problem.rowStart, i);
    if (ix(problem.rowStart, i + 1) - row !== 1) return;
    if (p.reading.kind === 'known') return;
    if (at(outlook.s, row * problem.rows + row) > UNCHECKED) rows.push(row);
  });
  return rows;
}

/** Which prepared reading a row belongs to. */
export function preparedOf(problem: Problem, row: number): number {
  let low = 0;
  let high = problem.prepared.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (ix(problem.rowStart, middle) <= row) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Leaves rows out for real (the shape may be bent too far for the linear forecast) and looks at what they should be. */
export function leftOut(
  outlook: Outlook,
  weight: Float64Array,
  rows: readonly number[],
  start: Float64Array,
): { square: number; x: Float64Array; computed: Float64Array } {
  const without = Float64Array.from(weight);
  for (const r of rows) without[r] = 0;
  const result = minimise(outlook.cf.ne, start, without, 40);
  return { square: result.square, x: result.x, computed: result.evaluation.computed };
}

/** Only when the first start leads to no fit is the next one tried. */
export function bestLeftOut(
  outlook: Outlook,
  weight: Float64Array,
  rows: readonly number[],
  starts: readonly Float64Array[],
  good: number,
): ReturnType<typeof leftOut> | undefined {
  let best: ReturnType<typeof leftOut> | undefined;
  for (const start of starts) {
    const fit = leftOut(outlook, weight, rows, start);
    if (best === undefined || fit.square < best.square - 1e-9) best = fit;
    if (best.square <= good) break;
  }
  return best;
}

export function suspectFor(
  outlook: Outlook,
  weight: Float64Array,
  row: number,
  starts: readonly Float64Array[],
  good: number,
): Suspect {
  const { problem } = outlook;
  const best = bestLeftOut(outlook, weight, [row], starts, good);
  const redundancy = at(outlook.s, row * problem.rows + row);
  const sigma = at(problem.sigma, row);
  const reading = problem.prepared[preparedOf(problem, row)]?.reading;
  if (best === undefined || reading === undefined) throw new RangeError(`no reading for row ${row}`);
  return {
    row,
    reading,
    sigma,
    redundancy,
    square: best.square,
    predicted: at(best.computed, row),
    spread: sigma / Math.sqrt(redundancy),
    x: best.x,
  };
}

/** Everything that may have happened to one suspect, best first; ideas far from the prediction are dropped. */
export function ideasFor(outlook: Outlook, suspect: Suspect): Idea[] {
  const { reading, sigma, spread, predicted, redundancy } = suspect;
  const ideas: Idea[] = [];
  const lost = LOG_ROOT_2PI + Math.log(sigma) - 0.5 * Math.log(redundancy);
  for (const m of reading.text === undefined || reading.kind === 'lean'
    ? []
    : misreadings(reading.text, reading.unit ?? 'mm')) {
    const wide = Math.hypot(spread, m.spread);
    const misfit = (m.mm - predicted) / wide;
    if (Math.abs(misfit) > 6) continue;
    // What the text leaves open the network fills in.
    const share = m.spread ** 2 / wide ** 2;
    const value = m.mm + share * (predicted - m.mm);
    const score = -0.5 * misfit * misfit + m.logChance + Math.log(spread / wide);
    ideas.push({ kind: m.kind, value, valueSigma: Math.sqrt(share) * spread, misfit, score });
  }
  ideas.push(...elsewhere(outlook, suspect, lost));
  const error = Math.abs(predicted - reading.value);
  // Half of what nobody can name is small (slack, edge for centre), half is anything up to a metre either way.
  const density = reading.kind === 'lean' ? 1 : 0.5 * (error < 60 ? 1 / 120 : 0) + 0.5 / 2000;
  ideas.push({
    kind: 'unexplained',
    value: predicted,
    valueSigma: spread,
    misfit: 0,
    score: lost + Math.log(density) + logShare('unexplained'),
  });
  return ideas.sort((a, b) => b.score - a.score);
}

/** The value may belong to another pair of points (or another point's height). */
function elsewhere(outlook: Outlook, suspect: Suspect, lost: number): Idea[] {
  const { reading, predicted, spread, x } = suspect;
  const { problem } = outlook;
  const { points } = problem.network;
  const [from, to] = reading.points.map((id) => problem.pointIndex.get(id) ?? -1);
  if (from === undefined) return [];
  const ideas: Idea[] = [];
  const consider = (kind: SlipKind, pair: readonly number[], share: number): void => {
    const { length, variance } = lengthBetween(outlook, x, pair);
    const wide = Math.sqrt(suspect.sigma ** 2 + Math.max(0, variance));
    const misfit = (reading.value - length) / wide;
    // A reading that fits its own pair as well says nothing about the other.
    if (Math.abs(misfit) > 6) return;
    const score = lost - LOG_ROOT_2PI - Math.log(wide) - 0.5 * misfit * misfit + logShare(kind) + Math.log(share);
    const belongsTo = pair.map((p) => points[p]?.id ?? '');
    ideas.push({ kind, value: predicted, valueSigma: spread, misfit, score, belongsTo });
  };
  const count = points.length;
  const all = points.map((_, i) => i);
  if (reading.kind === 'height' && reading.baseline === undefined) {
    for (const p of all) if (p !== from) consider('other-pair', [p], 1 / Math.max(1, count - 1));
    return ideas;
  }
  if (reading.kind !== 'straight' || to === undefined) return [];
  const mirrored = (p: number): number[] =>
    all.filter((q) => q !== from && q !== to && opposite(points[p]?.sides, points[q]?.sides));
  const across = [
    ...mirrored(from).map((q) => [q, to]),
    ...mirrored(to).map((q) => [from, q]),
    ...mirrored(from)
      .flatMap((p) => mirrored(to).map((q) => [p, q]))
      .filter(([p, q]) => p !== q),
  ];
  for (const pair of across) consider('port-for-starboard', pair, 1 / across.length);
  const near = 2 * Math.max(1, count - 2);
  for (const q of all) {
    if (q === from || q === to) continue;
    consider('other-pair', [from, q], 0.85 / near);
    consider('other-pair', [q, to], 0.85 / near);
  }
  const far = Math.max(1, ((count - 2) * (count - 3)) / 2);
  for (const p of all) {
    for (const q of all) {
      if (p < q && p !== from && p !== to && q !== from && q !== to) consider('other-pair', [p, q], 0.15 / far);
    }
  }
  return ideas;
}

function opposite(a: readonly Side[] | undefined, b: readonly Side[] | undefined): boolean {
  if (a === undefined || b === undefined) return false;
  return (a.includes('port') && b.includes('starboard')) || (a.includes('starboard') && b.includes('port'));
}

/** Distance of two points (or height of one) and the variance of that. */
function lengthBetween(
  outlook: Outlook,
  x: Float64Array,
  pair: readonly number[],
): { length: number; variance: number } {
  const { cf, problem } = outlook;
  const [p = 0, q] = pair;
  if (q === undefined) return { length: at(x, 3 * p + 2), variance: covarianceOf(cf, p, 2, p, 2) };
  const d = [0, 1, 2].map((c) => at(x, 3 * p + c) - at(x, 3 * q + c));
  const length = Math.hypot(...d) || 1e-9;
  let variance = 0;
  for (let a = 0; a < problem.dimension; a++) {
    for (let b = 0; b < problem.dimension; b++) {
      const j = ((d[a] ?? 0) * (d[b] ?? 0)) / (length * length);
      variance +=
        j *
        (covarianceOf(cf, p, a, p, b) +
          covarianceOf(cf, q, a, q, b) -
          covarianceOf(cf, p, a, q, b) -
          covarianceOf(cf, q, a, p, b));
    }
  }
  return { length, variance };
}
