import type { NetworkReading } from '../model.ts';

/**
 * One reading made ready for arithmetic. `refs` are offsets into the coordinate array (three numbers per point), the
 * reading's points first, its baseline after them.
 */
export interface Prepared {
  readonly reading: NetworkReading;
  readonly refs: Int32Array;
  /** How many of refs are the reading's points. */
  readonly points: number;
  readonly dimension: 2 | 3;
  /** +1 or -1: the side a signed kind counts as positive; settled from the start's coordinates where it must be. */
  sign: number;
}

/**
 * What a kind supplies; the solver sees only rows. A kind computes the value the reading should have had at the given
 * coordinates and its exact derivatives. Row r of a reading with n refs writes `computed[row + r]` and
 * `jacobian[slot + (r * n + k) * 3 + c]`, the derivative by component c of ref k; every entry is written.
 */
export interface Kind {
  /** Why the reading cannot be used as it is, or undefined. */
  unusable(reading: NetworkReading, dimension: 2 | 3): string | undefined;
  /** Rows it contributes; 0 where it is only a one-sided check. */
  rows(reading: NetworkReading, dimension: 2 | 3): number;
  evaluate(
    prepared: Prepared,
    x: Float64Array,
    computed: Float64Array,
    row: number,
    jacobian: Float64Array,
    slot: number,
  ): void;
  /** Chance to look at starting coordinates (which side is up, which three points carry a plane). */
  settle?(prepared: Prepared, x: Float64Array): void;
  /** Standard deviation of row r if not the reading's own. */
  rowSigma?(reading: NetworkReading, row: number): number;
}

export const needs = (reading: NetworkReading, points: number, exact = true): string | undefined => {
  const n = reading.points.length;
  if (exact ? n === points : n >= points) return undefined;
  return `${reading.kind} needs ${exact ? '' : 'at least '}${points} points, has ${n}`;
};

export const baselineOf = (reading: NetworkReading, allowed: readonly number[]): string | undefined => {
  const n = reading.baseline?.length ?? 0;
  return allowed.includes(n) ? undefined : `${reading.kind} cannot use a baseline of ${n} points`;
};

export const inSpace = (reading: NetworkReading, dimension: 2 | 3): string | undefined =>
  dimension === 3 ? undefined : `${reading.kind} says nothing about a flat piece`;

/** Sets n consecutive 3-vectors to zero. */
export function clear(jacobian: Float64Array, slot: number, refs: number): void {
  jacobian.fill(0, slot, slot + 3 * refs);
}

export function put(jacobian: Float64Array, slot: number, x: number, y: number, z: number): void {
  jacobian[slot] = x;
  jacobian[slot + 1] = y;
  jacobian[slot + 2] = z;
}

export function add(jacobian: Float64Array, slot: number, x: number, y: number, z: number): void {
  jacobian[slot] = (jacobian[slot] as number) + x;
  jacobian[slot + 1] = (jacobian[slot + 1] as number) + y;
  jacobian[slot + 2] = (jacobian[slot + 2] as number) + z;
}
