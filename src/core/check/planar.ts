import { cayleyMenger, cayleyMengerGradient, type SixLengths } from '../geometry/index.ts';

const NAMES = ['ab', 'ac', 'ad', 'bc', 'bd', 'cd'] as const;
const ENDS = { ab: [0, 1], ac: [0, 2], ad: [0, 3], bc: [1, 2], bd: [1, 3], cd: [2, 3] } as const;
const UNKNOWNS = 8;
const MAX_STEPS = 60;

/**
 * How far six lengths are from any four points of one plane, in standard deviations: the root of the smallest sum of
 * (change / sigma)² that lets them lie flat. Searched from the box laid out about the diagonal AC, opened and folded; a start
 * that ends in a worse valley can only make the answer too large, so the better of the two is given.
 */
export function planarMisfit(lengths: SixLengths, sigmas: SixLengths): number {
  return Math.sqrt(Math.min(...[-1, 1].map((side) => leastCost(start(lengths, side), lengths, sigmas))));
}

/** First-order distance from lengths that can exist, in standard deviations; 0 where they can. Never used to accuse. */
export function roughMisfit(lengths: SixLengths, sigmas: SixLengths): number {
  const determinant = cayleyMenger(lengths);
  if (determinant >= 0) return 0;
  const gradient = cayleyMengerGradient(lengths);
  return -determinant / Math.hypot(...NAMES.map((name) => gradient[name] * sigmas[name]));
}

function start({ ab, ac, ad, bc, cd }: SixLengths, side: number): number[] {
  const along = (near: number, far: number): number => (ac * ac + near * near - far * far) / (2 * ac);
  const [b, d] = [along(ab, bc), along(ad, cd)];
  // Never exactly on the line, where nothing would pull a corner off it.
  const out = (near: number, x: number): number => Math.sqrt(Math.max(near * near - x * x, (ac / 1000) ** 2));
  return [0, 0, b, out(ab, b), ac, 0, d, side * out(ad, d)];
}

function rowsOf(at: readonly number[], lengths: SixLengths, sigmas: SixLengths) {
  return NAMES.map((name) => {
    const [from, to] = ENDS[name];
    const [dx, dy] = [0, 1].map((axis) => (at[2 * from + axis] ?? 0) - (at[2 * to + axis] ?? 0)) as [number, number];
    const size = Math.max(Math.hypot(dx, dy), 1e-9);
    const slope = [dx, dy].map((part) => part / size / sigmas[name]) as [number, number];
    return { from, to, slope, off: (size - lengths[name]) / sigmas[name] };
  });
}

const costOf = (at: readonly number[], lengths: SixLengths, sigmas: SixLengths): number =>
  rowsOf(at, lengths, sigmas).reduce((sum, { off }) => sum + off * off, 0);

/** Levenberg's damped steps, each of which lowers the cost; the damping also holds the free shifts and turns. */
function leastCost(begin: number[], lengths: SixLengths, sigmas: SixLengths): number {
  let [at, cost, damping] = [begin, costOf(begin, lengths, sigmas), 1e-3];
  for (let step = 0; step < MAX_STEPS && damping < 1e9; step++) {
    const move = stepFrom(at, lengths, sigmas, damping);
    const next = at.map((value, index) => value - (move[index] ?? 0));
    const nextCost = costOf(next, lengths, sigmas);
    if (!(nextCost < cost)) {
      damping *= 10;
      continue;
    }
    const gain = cost - nextCost;
    [at, cost, damping] = [next, nextCost, damping / 10];
    if (gain < 1e-8) break;
  }
  return cost;
}

function stepFrom(at: readonly number[], lengths: SixLengths, sigmas: SixLengths, damping: number): number[] {
  const matrix = Array.from({ length: UNKNOWNS }, (_, row) =>
    Array.from({ length: UNKNOWNS + 1 }, (__, column) => (row === column ? damping : 0)),
  );
  const add = (row: number, column: number, value: number): void => {
    const line = matrix[row];
    if (line) line[column] = (line[column] ?? 0) + value;
  };
  for (const { from, to, slope, off } of rowsOf(at, lengths, sigmas)) {
    const row = [...slope.map((value, axis) => [2 * from + axis, value] as const)];
    const full = [...row, ...slope.map((value, axis) => [2 * to + axis, -value] as const)];
    for (const [i, p] of full) {
      for (const [j, q] of full) add(i, j, p * q);
      add(i, UNKNOWNS, p * off);
    }
  }
  return solved(matrix);
}

/** Gauss and Jordan without exchange of rows, which a damped normal matrix does not need. */
function solved(matrix: number[][]): number[] {
  for (const [pivot, line] of matrix.entries()) {
    const lead = line[pivot] ?? 1;
    for (const [row, other] of matrix.entries()) {
      if (row === pivot) continue;
      const share = (other[pivot] ?? 0) / lead;
      for (let column = pivot; column <= UNKNOWNS; column++)
        other[column] = (other[column] ?? 0) - share * (line[column] ?? 0);
    }
  }
  return matrix.map((line, row) => (line[UNKNOWNS] ?? 0) / (line[row] ?? 1));
}
