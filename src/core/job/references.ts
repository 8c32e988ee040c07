import type { PhotoLine } from './sheet.ts';
import type { ReferenceKind } from './words.ts';

/**
 * Things of known size that many people have at hand, mm. card: a bank card, ISO/IEC 7810:2019, ID-1. a4: ISO 216:2007.
 * letter: ANSI/ASME Y14.1, size A, 8 1/2 by 11 inches.
 */
export const REFERENCE_SIZES: Readonly<
  Record<Exclude<ReferenceKind, 'tape' | 'other'>, { long: number; short: number }>
> = {
  card: { long: 85.6, short: 53.98 },
  a4: { long: 297, short: 210 },
  letter: { long: 11 * 25.4, short: 8.5 * 25.4 },
};

/** How long the thing is from one end of the line to the other, mm; null where nobody said. */
export function referenceLength({ reference, length }: Pick<PhotoLine, 'reference' | 'length'>): number | null {
  if (reference === null) return null;
  return reference === 'tape' || reference === 'other' ? length : REFERENCE_SIZES[reference].long;
}

/**
 * How much the whole width of a picture would show at the reference's distance, square to the camera, mm; null where the line says
 * nothing. A picture to compare with the boat, not a measurement: whatever lies nearer or farther has another scale.
 */
export function widthAtReference(
  line: Pick<PhotoLine, 'path' | 'reference' | 'length'>,
  photo: { width: number; height: number },
): number | null {
  const length = referenceLength(line);
  const [from, to] = [line.path[0], line.path.at(-1)];
  if (length === null || !from || !to) return null;
  const pixels = Math.hypot((to.x - from.x) * photo.width, (to.y - from.y) * photo.height);
  return pixels < 1 ? null : (length * photo.width) / pixels;
}
