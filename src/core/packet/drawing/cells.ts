import type { Sheet } from '../../job/index.ts';

/** A number as the tables have it: to a thousandth, and never a negative nought. */
export const digits = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** What a point is called; nothing where there is none. */
export const labelOf = (sheet: Sheet, id: string | undefined): string =>
  sheet.points.find((point) => point.id === id)?.label ?? '';

/** An edge by the points it begins and ends at. */
export const edgeOf = (sheet: Sheet, points: readonly string[]): string =>
  `${labelOf(sheet, points[0])}-${labelOf(sheet, points.at(-1))}`;
