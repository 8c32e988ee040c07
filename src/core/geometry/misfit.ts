import { factorise, SymmetricMatrix } from './symmetric.ts';
import { type SixLengths, tetrahedronExists } from './tetrahedron.ts';

interface Edge {
  readonly from: number;
  readonly to: number;
  /** As a share of the mean length, so that tolerances below have no unit. */
  readonly length: number;
  /** 1 for the most certain length. */
  readonly weight: number;
}

const ENDS = { ab: [0, 1], ac: [0, 2], ad: [0, 3], bc: [1, 2], bd: [1, 3], cd: [2, 3] } as const;
const NAMES = ['ab', 'ac', 'ad', 'bc', 'bd', 'cd'] as const;
const AXES = [0, 1, 2] as const;
const UNKNOWNS = 12;

/** A regular tetrahedron of edge 1: as far from flat as four points can be. */
const START: readonly number[] = [1, 1, 1, 1, -1, -1, -1, 1, -1, -1, -1, 1].map((share) => share / Math.sqrt(8));

const MAX_STEPS = 200;
/** Far below a micrometre on a boat. */
const STILL = 1e-11;
/** Keeps the direction of a vanished edge defined. */
const SHORTEST = 1e-9;

function edgesOf(lengths: SixLengths, sigmas: SixLengths, mean: number, smallest: number): Edge[] {
  return NAMES.map((name) => ({
    from: ENDS[name][0],
    to: ENDS[name][1],
    length: lengths[name] / mean,
    weight: (smallest / sigmas[name]) ** 2,
  }));
}

function span(at: readonly number[], { from, to }: Edge) {
  const [x, y, z] = AXES.map((axis) => (at[3 * from + axis] ?? 0) - (at[3 * to + axis] ?? 0));
  const size = Math.max(Math.hypot(x ?? 0, y ?? 0, z ?? 0), SHORTEST);
  return { size, direction: [(x ?? 0) / size, (y ?? 0) / size, (z ?? 0) / size] };
}

/** Weighted squared change of all lengths when the four points stand as given. */
function cost(at: readonly number[], edges: readonly Edge[]): number {
  return edges.reduce((total, edge) => total + edge.weight * (span(at, edge).size - edge.length) ** 2, 0);
}

/** Half the gradient and half the full second derivative of the cost; twelve coordinates, point after point. */
function derivatives(at: readonly number[], edges: readonly Edge[]) {
  const slope = Array.from({ length: UNKNOWNS }, () => 0);
  const bend = new SymmetricMatrix(UNKNOWNS);
  const push = (index: number, value: number) => {
    slope[index] = (slope[index] ?? 0) + value;
  };
  for (const edge of edges) {
    const { size, direction } = span(at, edge);
    const [from, to] = [3 * edge.from, 3 * edge.to];
    const stretch = edge.length / size;
    for (const row of AXES) {
      const alongRow = direction[row] ?? 0;
      const pull = edge.weight * (size - edge.length) * alongRow;
      push(from + row, pull);
      push(to + row, -pull);
      for (const column of AXES) {
        const value =
          edge.weight * ((row === column ? 1 - stretch : 0) + stretch * alongRow * (direction[column] ?? 0));
        bend.add(from + row, to + column, -value);
        if (column < row) continue;
        bend.add(from + row, from + column, value);
        bend.add(to + row, to + column, value);
      }
    }
  }
  return { slope, bend };
}

/** Damped Newton steps, each of which lowers the cost; the damping also holds the free turns and shifts. */
function leastCost(edges: readonly Edge[]): number {
  let at = START;
  let value = cost(at, edges);
  let damping = 1e-3;
  let { slope, bend } = derivatives(at, edges);
  for (let step = 0; step < MAX_STEPS && damping < 1e12; step++) {
    const move = factorise(bend, damping)?.(slope);
    const next = move ? at.map((coordinate, index) => coordinate - (move[index] ?? 0)) : at;
    const nextValue = move ? cost(next, edges) : Number.POSITIVE_INFINITY;
    if (!move || !(nextValue <= value)) {
      damping = Math.max(damping * 8, 1e-15);
      continue;
    }
    at = next;
    value = nextValue;
    damping /= 8;
    if (Math.max(...move.map(Math.abs)) < STILL) break;
    ({ slope, bend } = derivatives(at, edges));
  }
  return value;
}

/**
 * How far six lengths are from any four points, in standard deviations: the root of the smallest sum of
 * (change / sigma)² that turns them into distances that can exist. 0 when they can exist as they are. A flat box read with an
 * ordinary tape gives about 1, never much more than the error of the readings themselves.
 *
 * The change is found by moving four points in space, not by stepping along the Cayley-Menger determinant, whose
 * gradient vanishes where points fall in a line. The search cannot end in a wrong valley: in the squared distances,
 * which are linear in the Gram matrix, the cost q - 2·l·√q + l² is convex, and so is the set of Gram matrices of up
 * to three dimensions (J. de Leeuw's full-dimensional scaling; cited from memory, the argument is complete here).
 * @throws RangeError when a length is negative, a sigma not above zero, or either not finite
 */
export function lengthsMisfit(lengths: SixLengths, sigmas: SixLengths): number {
  const sides = NAMES.map((name) => lengths[name]);
  const spreads = NAMES.map((name) => sigmas[name]);
  if (!sides.every((side) => side >= 0 && Number.isFinite(side))) throw new RangeError('A length must be 0 or more');
  if (!spreads.every((sigma) => sigma > 0 && Number.isFinite(sigma))) throw new RangeError('A sigma must be above 0');
  if (tetrahedronExists(lengths)) return 0;
  const mean = sides.reduce((total, side) => total + side, 0) / sides.length;
  const smallest = Math.min(...spreads);
  return (Math.sqrt(leastCost(edgesOf(lengths, sigmas, mean, smallest))) * mean) / smallest;
}
