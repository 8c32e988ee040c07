import { encode } from 'uqr';

/** Modules of white round a code (ISO/IEC 18004). */
const QUIET = 4;
/** A larger code has modules too small to be read off a screen at arm's length; 97 modules a side. Common practice, no source. */
const MOST_VERSION = 20;

/** A code takes no more of a screen than this, CSS px, its white included. */
export const MOST_PX = 280;
/** Finer modules than this are not read by every camera off every screen, CSS px. Common practice, no source. */
const FINE_PX = 3;

/**
 * A code to be drawn: side in modules, the white round it included, and its black as a path of squares. fine: too dense for
 * some phones at the size it is shown.
 */
export interface QrDrawing {
  side: number;
  path: string;
  fine: boolean;
}

/** Null where the text is too long for a code that a phone can read. */
export function drawQr(text: string): QrDrawing | null {
  try {
    const { data, size } = encode(text, { border: 0, ecc: 'L', boostEcc: true, maxVersion: MOST_VERSION });
    const side = size + 2 * QUIET;
    return { side, path: data.map((row, y) => rowPath(row, y + QUIET)).join(''), fine: MOST_PX / side < FINE_PX };
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Black squares side by side are one bar, so that no seam shows between them. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x += 1) {
    const from = x;
    while (row[x]) x += 1;
    if (x > from) path += `M${from + QUIET} ${y}h${x - from}v1h-${x - from}z`;
  }
  return path;
}
