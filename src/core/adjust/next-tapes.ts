import { at, ix } from './array.ts';
import { type Cofactors, cofactors, relativeCovariance } from './covariance.ts';
import { baseGramInverse } from './datum.ts';
import { nullVectors } from './linear/sparse-ldl.ts';
import { symmetricEigen } from './linear/symmetric-eigen.ts';
import type { Network, NetworkReading, Vector } from './model.ts';
import { prepare, settleKinds, weights } from './problem.ts';
import { redundancies, UNCHECKED } from './reliability.ts';
import type { Adjustment } from './result.ts';
import { defaultSigma } from './sigma.ts';
import { chiSquareUpperQuantile } from './statistics.ts';

export interface TapeWishes {
  /** Largest relative uncertainty allowed at a needed point, mm at 95 %. Default 6 for all. */
  readonly tolerance?: (point: string) => number;
  /** Redundancy number from which a reading counts as checked well enough. Default 0.05. */
  readonly checkedFrom?: number;
  /** Who holds the tape; sets the standard deviation of what is proposed. */
  readonly who?: 'installer' | 'owner';
  /** Tapes that can be taken, or leave out for all pairs up to `longest`. */
  readonly candidates?: readonly (readonly [string, string])[];
  /** Pairs nobody can reach. */
  readonly unreachable?: readonly (readonly [string, string])[];
  /** Longest tape proposed, mm. Default 8000. */
  readonly longest?: number;
  readonly most?: number;
}

/** What still stands between the job and being fixed, tight and checked. */
export interface Shortfall {
  /** Independent ways points still float. */
  readonly loose: number;
  /** Needed points over their tolerance, in sum of (excess / tolerance). */
  readonly slack: number;
  /** Readings at needed points that nothing checks well enough. */
  readonly unchecked: number;
}

export interface NextTape {
  readonly from: string;
  readonly to: string;
  /** Expected length, mm (rough where an end floats). */
  readonly length: number;
  readonly fixes: number;
  readonly tightens: number;
  readonly checks: number;
  readonly score: number;
}

export interface TapeAdvice {
  readonly now: Shortfall;
  /** Ranked single tapes, best first. */
  readonly ranked: readonly NextTape[];
  /** A small set, in the order to take them, that makes everything fixed, tight and checked; greedy, so not proved smallest. */
  readonly set: readonly NextTape[];
  /** Whether the set reaches that. */
  readonly clears: boolean;
}

/** Of all straight readings still to be had, those that most reduce what is loose, unchecked or too wide. */
export function nextTapes(network: Network, adjustment: Adjustment, wishes: TapeWishes = {}): TapeAdvice {
  const none: Shortfall = { loose: 0, slack: 0, unchecked: 0 };
  if (adjustment.state === 'did-not-converge') return { now: none, ranked: [], set: [], clears: false };
  const positions = new Map(adjustment.solution.points.map((p): [string, Vector] => [p.id, p.position]));
  const planned: NetworkReading[] = [];
  let view = look(network, planned, positions, wishes);
  const now = view.shortfall;
  const ranked = rank(view, wishes);
  const set: NextTape[] = [];
  while (!isClear(view.shortfall) && set.length < (wishes.most ?? 12)) {
    const [best] = rank(view, wishes);
    if (best === undefined) break;
    set.push(best);
    planned.push(asReading(best, wishes));
    view = look(network, planned, positions, wishes);
  }
  return { now, ranked: ranked.slice(0, 8), set, clears: isClear(view.shortfall) };
}

const isClear = (s: Shortfall): boolean => s.loose === 0 && s.slack <= 0 && s.unchecked === 0;

function asReading(tape: NextTape, wishes: TapeWishes): NetworkReading {
  const sigma = defaultSigma('straight', tape.length, wishes.who);
  return { id: `${tape.from}~${tape.to}`, kind: 'straight', points: [tape.from, tape.to], value: tape.length, sigma };
}

interface View {
  readonly cf: Cofactors;
  readonly shortfall: Shortfall;
  readonly loose: readonly Float64Array[];
  readonly redundancy: Float64Array;
  /** Needed points over their tolerance: index, excess ratio, worst direction in their local frame's covariance. */
  readonly wide: readonly { readonly point: number; readonly excess: number; readonly direction: readonly number[] }[];
  readonly uncheckedRows: readonly number[];
}

/** The network with planned tapes in it, at the positions known now. */
function look(
  network: Network,
  planned: readonly NetworkReading[],
  positions: ReadonlyMap<string, Vector>,
  wishes: TapeWishes,
): View {
  const whole = { ...network, readings: [...network.readings, ...planned] };
  const problem = prepare(whole);
  const x = Float64Array.from(network.points.flatMap((p) => [...(positions.get(p.id) ?? [0, 0, 0])]));
  settleKinds(problem, x);
  const cf = cofactors(problem, x, weights(problem));
  const loose = nullVectors(cf.ne.factor);
  const { redundancy } = redundancies(cf);
  const factor = Math.sqrt(chiSquareUpperQuantile(0.05, network.dimension));
  const marks = network.points.flatMap((p, i) => (p.role === 'mark' && !cf.floating.has(i) ? [i] : []));
  const wide: { point: number; excess: number; direction: number[] }[] = [];
  network.points.forEach((p, i) => {
    if (p.needed === false || p.known !== undefined || cf.floating.has(i)) return;
    const near = (p.neighbours ?? [])
      .map((id) => problem.pointIndex.get(id) ?? -1)
      .filter((n) => n >= 0 && !cf.floating.has(n));
    let base = [...new Set([...marks, ...near])].filter((b) => b !== i);
    if (cf.defect.motions.length > 0 && baseGramInverse(cf.defect, base) === undefined) {
      base = network.points.map((_, k) => k).filter((k) => k !== i && !cf.floating.has(k));
    }
    const block = relativeCovariance(cf, i, base);
    if (block === undefined) return;
    const n = network.dimension;
    const { values, vectors } = symmetricEigen(block, n);
    const tolerance = wishes.tolerance?.(p.id) ?? 6;
    const excess = (factor * Math.sqrt(Math.max(0, at(values, n - 1)))) / tolerance - 1;
    if (excess > 0)
      wide.push({ point: i, excess, direction: Array.from({ length: n }, (_, c) => at(vectors, c * n + n - 1)) });
  });
  const uncheckedRows: number[] = [];
  problem.prepared.forEach((p, i) => {
    const needed = p.reading.points.some((id) => whole.points[problem.pointIndex.get(id) ?? -1]?.needed !== false);
    for (let r = ix(problem.rowStart, i); needed && r < ix(problem.rowStart, i + 1); r++) {
      if (at(redundancy, r) < (wishes.checkedFrom ?? 0.05)) uncheckedRows.push(r);
    }
  });
  const slack = wide.reduce((sum, w) => sum + w.excess, 0);
  return {
    cf,
    loose,
    redundancy,
    wide,
    uncheckedRows,
    shortfall: { loose: cf.ways, slack, unchecked: uncheckedRows.length },
  };
}

function rank(view: View, wishes: TapeWishes): NextTape[] {
  const { cf } = view;
  const { problem } = cf;
  const { points } = problem.network;
  const key = (a: number, b: number): number => Math.min(a, b) * points.length + Math.max(a, b);
  const indexed = (pairs: readonly (readonly [string, string])[]): [number, number][] =>
    pairs.map(([a, b]) => [problem.pointIndex.get(a) ?? -1, problem.pointIndex.get(b) ?? -1]);
  const skip = new Set(indexed(wishes.unreachable ?? []).map(([a, b]) => key(a, b)));
  for (const p of problem.prepared)
    if (p.reading.kind === 'straight') skip.add(key(ix(p.refs, 0) / 3, ix(p.refs, 1) / 3));
  const pairs: [number, number][] =
    wishes.candidates === undefined
      ? points.flatMap((_, a) => points.flatMap((__, b): [number, number][] => (a < b ? [[a, b]] : [])))
      : indexed(wishes.candidates);
  const helpful = pairs.flatMap(([a, b]) => {
    if (a < 0 || b < 0 || a === b || skip.has(key(a, b)) || points[a]?.gone || points[b]?.gone) return [];
    const tape = weigh(view, a, b, wishes);
    return tape === undefined ? [] : [tape];
  });
  return helpful.sort((m, n) => n.score - m.score);
}

/** What one tape between two points would do, by rank-one update of the covariance. */
function weigh(view: View, a: number, b: number, wishes: TapeWishes): NextTape | undefined {
  const { cf } = view;
  const { problem, x, ne, q, size, evaluation } = cf;
  const n = problem.dimension;
  const d = [0, 1, 2].map((c) => at(x, 3 * b + c) - at(x, 3 * a + c));
  const length = Math.hypot(...d);
  if (length < 20 || length > (wishes.longest ?? 8000)) return undefined;
  const unit = d.map((v) => v / length);
  const [ua, ub] = [ix(ne.unknownOf, a), ix(ne.unknownOf, b)];
  if (ua < 0 && ub < 0) return undefined;
  const along = (z: Float64Array, offset: number): number => {
    let sum = 0;
    for (let c = 0; c < n; c++) {
      const u = unit[c] ?? 0;
      if (ub >= 0) sum += u * at(z, offset + ub + c);
      if (ua >= 0) sum -= u * at(z, offset + ua + c);
    }
    return sum;
  };
  // Loose ways it stops: any loose way that changes its length, one per tape.
  const fixes = view.loose.some((z) => Math.abs(along(z, 0)) > 1e-3 * Math.sqrt(z.reduce((s, v) => s + v * v, 0)))
    ? 1
    : 0;
  const answer = new Float64Array(size);
  for (let i = 0; i < size; i++) answer[i] = along(q, i * size);
  const variance = along(answer, 0);
  const sigma = defaultSigma('straight', length, wishes.who);
  const gain = 1 / (variance + sigma * sigma);
  let tightens = 0;
  for (const w of view.wide) {
    const u = ix(ne.unknownOf, w.point);
    let share = 0;
    let own = 0;
    for (let c = 0; c < n; c++) {
      share += (w.direction[c] ?? 0) * at(answer, u + c);
      for (let e = 0; e < n; e++) own += (w.direction[c] ?? 0) * (w.direction[e] ?? 0) * at(q, (u + c) * size + u + e);
    }
    if (own > 0) tightens += w.excess * Math.min(1, (gain * share * share) / own);
  }
  let checks = 0;
  for (const row of view.uncheckedRows) {
    const more = rowAnswer(cf, evaluation.jacobian, row, answer) ** 2 * gain * at(cf.weight, row);
    const wanted = wishes.checkedFrom ?? 0.05;
    checks += Math.min(1, more / Math.max(UNCHECKED, wanted - at(view.redundancy, row)));
  }
  // A floating end: the tape itself is then what fixes it, so nothing is tightened or checked yet.
  const worth = 10 * fixes + 2 * tightens + checks;
  if (worth < 1e-3) return undefined;
  // Short tapes are easier and better; half as good at five metres.
  const score = worth / (1 + length / 5000);
  return {
    from: problem.network.points[a]?.id ?? '',
    to: problem.network.points[b]?.id ?? '',
    length,
    fixes,
    tightens,
    checks,
    score,
  };
}

function rowAnswer(cf: Cofactors, jacobian: Float64Array, row: number, answer: Float64Array): number {
  const { problem, ne } = cf;
  const i = problem.rowStart.findLastIndex((first) => first <= row);
  const refs = problem.prepared[i]?.refs ?? new Int32Array(0);
  const slot = ix(problem.slotStart, i) + (row - ix(problem.rowStart, i)) * 3 * refs.length;
  let sum = 0;
  for (let k = 0; k < refs.length; k++) {
    const u = ix(ne.unknownOf, ix(refs, k) / 3);
    if (u < 0) continue;
    for (let c = 0; c < problem.dimension; c++) sum += at(jacobian, slot + 3 * k + c) * at(answer, u + c);
  }
  return sum;
}
