/**
 * A sheet of paper upright, mm. A4: ISO 216:2007, 210 by 297. Letter: 8.5 by 11 in, ANSI/ASME Y14.1 size A.
 */
export const PAPERS = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof PAPERS;

/** Left white all round on every sheet, mm: more than printers for offices leave out. Common practice, no source. */
export const EDGE = 10;
/** Taken off a sheet's height, mm, so that rounding in a print never begins another sheet. */
export const SLACK = 0.5;
