/** What a shop calls usual between fasteners and at the ends of an edge, mm. */
export interface SpacingLimits {
  readonly min: number;
  readonly max: number;
  /** How far the first and the last may stand from the ends. */
  readonly end: number;
}

/** Fasteners spread evenly over a length. spacing: mm between neighbours, 0 for a single one. end: mm from either end. */
export interface EvenRow {
  readonly count: number;
  readonly spacing: number;
  readonly end: number;
}

/** More than anybody sets along one edge. */
export const MOST_FASTENERS = 999;

/** Half of what the shop allows, so that a hand's error at the fitting still leaves both ends inside it. */
const endOf = (length: number, limits: SpacingLimits): number => Math.min(limits.end / 2, length / 4);

/** So many fasteners spread evenly, the first and the last near the ends; a single one stands in the middle. */
export function evenRow(length: number, count: number, limits: SpacingLimits): EvenRow {
  if (count <= 1) return { count, spacing: 0, end: length / 2 };
  const end = endOf(length, limits);
  return { count, spacing: (length - 2 * end) / (count - 1), end };
}

/** The even row whose spacing comes nearest to the one wished for. */
export function rowSpaced(length: number, spacing: number, limits: SpacingLimits): EvenRow {
  const room = length - 2 * endOf(length, limits);
  const fewer = Math.min(MOST_FASTENERS - 1, Math.max(1, Math.floor(room / spacing)));
  const off = (gaps: number): number => Math.abs(room / gaps - spacing);
  const gaps = fewer + 1 < MOST_FASTENERS && off(fewer + 1) < off(fewer) ? fewer + 1 : fewer;
  return evenRow(length, gaps + 1, limits);
}

/** A row to begin with: spaced about the middle of what the shop calls usual, within it wherever the length allows. */
export function usualRow(length: number, limits: SpacingLimits): EvenRow {
  return rowSpaced(length, (limits.min + limits.max) / 2, limits);
}

/** Whether the shop would call a row usual. */
export const isUsual = ({ count, spacing }: EvenRow, { min, max }: SpacingLimits): boolean =>
  count > 1 && spacing >= min - ROUNDING && spacing <= max + ROUNDING;

const ROUNDING = 0.05;

/** Where the fasteners of a row stand, mm from the start of the length. */
export const placesOfRow = ({ count, spacing, end }: EvenRow): number[] =>
  Array.from({ length: count }, (_, i) => end + i * spacing);
