import { at, ix } from './array.ts';
import { KINDS } from './kinds/index.ts';
import type { Kind, Prepared } from './kinds/kind.ts';
import type { Network, NetworkReading } from './model.ts';

/** A network made ready for arithmetic. Coordinates live in one array, three per point in the network's order. */
export interface Problem {
  readonly network: Network;
  readonly dimension: 2 | 3;
  readonly pointIndex: ReadonlyMap<string, number>;
  /** Node (unknown point) of each point, or -1 where its coordinates are known. */
  readonly nodeOf: Int32Array;
  /** Point of each node. */
  readonly pointOf: Int32Array;
  /** Readings that give rows, and the index of each in network.readings. */
  readonly prepared: readonly Prepared[];
  readonly kinds: readonly Kind[];
  readonly readingIndex: readonly number[];
  /** First row of each prepared reading; one more entry at the end. */
  readonly rowStart: Int32Array;
  readonly slotStart: Int32Array;
  readonly rows: number;
  readonly observed: Float64Array;
  readonly sigma: Float64Array;
  /** Readings that can only be checked one way: a girth is never shorter than its chords. */
  readonly oneSided: readonly Prepared[];
  readonly rejected: readonly { readonly reading: string; readonly why: string }[];
}

/** Checks every reading against its kind and lays out rows and Jacobian slots. */
export function prepare(network: Network): Problem {
  const { dimension } = network;
  const pointIndex = new Map(network.points.map((p, i) => [p.id, i]));
  const nodeOf = new Int32Array(network.points.length).fill(-1);
  const pointOf: number[] = [];
  network.points.forEach((p, i) => {
    if (p.known === undefined) nodeOf[i] = pointOf.push(i) - 1;
  });
  const prepared: Prepared[] = [];
  const kinds: Kind[] = [];
  const readingIndex: number[] = [];
  const oneSided: Prepared[] = [];
  const rejected: { reading: string; why: string }[] = [];
  const rowStart = [0];
  const slotStart = [0];
  const observed: number[] = [];
  const sigma: number[] = [];
  network.readings.forEach((reading, index) => {
    const kind = KINDS[reading.kind];
    const why = unusable(reading, kind, dimension, pointIndex);
    if (why !== undefined) {
      rejected.push({ reading: reading.id, why });
      return;
    }
    const one = ready(reading, dimension, pointIndex, network);
    const rows = kind.rows(reading, dimension);
    if (rows <= 0) {
      if (reading.kind === 'girth' || reading.kind === 'running') oneSided.push(one);
      return;
    }
    prepared.push(one);
    kinds.push(kind);
    readingIndex.push(index);
    for (let r = 0; r < rows; r++) {
      observed.push(r > 0 ? 0 : observedValue(reading));
      sigma.push(kind.rowSigma?.(reading, r) ?? reading.sigma);
    }
    rowStart.push(observed.length);
    slotStart.push((slotStart.at(-1) ?? 0) + rows * one.refs.length * 3);
  });
  return {
    network,
    dimension,
    pointIndex,
    nodeOf,
    pointOf: Int32Array.from(pointOf),
    prepared,
    kinds,
    readingIndex,
    rowStart: Int32Array.from(rowStart),
    slotStart: Int32Array.from(slotStart),
    rows: observed.length,
    observed: Float64Array.from(observed),
    sigma: Float64Array.from(sigma),
    oneSided,
    rejected,
  };
}

function unusable(
  reading: NetworkReading,
  kind: Kind,
  dimension: 2 | 3,
  pointIndex: ReadonlyMap<string, number>,
): string | undefined {
  const stranger = [...reading.points, ...(reading.baseline ?? [])].find((id) => !pointIndex.has(id));
  if (stranger !== undefined) return `no point ${stranger}`;
  if (!Number.isFinite(reading.value)) return 'value is not a number';
  if (!(reading.sigma > 0)) return 'sigma must be above 0';
  return kind.unusable(reading, dimension);
}

/** A height over a string is a length: which side it lies on is not in the number. */
const observedValue = (reading: NetworkReading): number =>
  reading.kind === 'height' && reading.baseline?.length === 2 ? Math.abs(reading.value) : reading.value;

function ready(
  reading: NetworkReading,
  dimension: 2 | 3,
  pointIndex: ReadonlyMap<string, number>,
  network: Network,
): Prepared {
  const ids = [...reading.points, ...(reading.baseline ?? [])];
  const refs = Int32Array.from(ids, (id) => 3 * (pointIndex.get(id) ?? 0));
  return { reading, refs, points: reading.points.length, dimension, sign: baselineSign(reading, network) };
}

/** +1 where the reading's declared direction is the left of its baseline. */
function baselineSign(reading: NetworkReading, network: Network): number {
  const { direction, baseline } = reading;
  if (reading.kind !== 'out' || direction === undefined || baseline === undefined) return 1;
  if (direction === 'left') return 1;
  if (direction === 'right') return -1;
  const [from, to] = baseline.map((id) => {
    const p = network.points.find((q) => q.id === id);
    return p?.known ?? p?.nominal;
  });
  const dx = from !== undefined && to !== undefined ? to[0] - from[0] : 0;
  const dy = from !== undefined && to !== undefined ? to[1] - from[1] : 0;
  const forward = dx === 0 ? 1 : Math.sign(dx);
  const portward = dy === 0 ? 1 : Math.sign(dy);
  if (direction === 'port') return forward;
  if (direction === 'starboard') return -forward;
  return direction === 'aft' ? portward : -portward;
}

/** Values and derivatives of every row at given coordinates. */
export interface Evaluation {
  readonly computed: Float64Array;
  readonly jacobian: Float64Array;
  /** computed - observed. */
  readonly residual: Float64Array;
}

export const newEvaluation = (problem: Problem): Evaluation => ({
  computed: new Float64Array(problem.rows),
  jacobian: new Float64Array(ix(problem.slotStart, problem.prepared.length)),
  residual: new Float64Array(problem.rows),
});

export function evaluate(problem: Problem, x: Float64Array, into: Evaluation): void {
  const { prepared, kinds, rowStart, slotStart, observed, rows } = problem;
  const { computed, jacobian, residual } = into;
  for (let i = 0; i < prepared.length; i++) {
    const kind = kinds[i] as Kind;
    kind.evaluate(prepared[i] as Prepared, x, computed, ix(rowStart, i), jacobian, ix(slotStart, i));
  }
  for (let r = 0; r < rows; r++) residual[r] = at(computed, r) - at(observed, r);
}

/** Sum of weight * residual squared. */
export function weightedSquare(residual: Float64Array, weight: Float64Array): number {
  let sum = 0;
  for (let r = 0; r < residual.length; r++) sum += at(weight, r) * at(residual, r) * at(residual, r);
  return sum;
}

/** 1 / sigma squared for every row. */
export const weights = (problem: Problem): Float64Array => problem.sigma.map((s) => 1 / (s * s));

/** Lets kinds look at coordinates: which way is up, which points carry a plane. */
export function settleKinds(problem: Problem, x: Float64Array): void {
  problem.prepared.forEach((p, i) => {
    problem.kinds[i]?.settle?.(p, x);
  });
}
