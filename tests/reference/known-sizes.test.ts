import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { REFERENCE_SIZES, referenceLength, widthAtReference } from '../../src/core/job/index.ts';

describe('things of known size in a picture', () => {
  it('a card is ID-1 of ISO/IEC 7810: 85.60 by 53.98 mm', () => {
    expect(REFERENCE_SIZES.card).toEqual({ long: 85.6, short: 53.98 });
  });

  it('A4 is ISO 216: 210 by 297 mm, as A0 of one square metre halves four times', () => {
    expect(REFERENCE_SIZES.a4).toEqual({ long: 297, short: 210 });
    // ISO 216 rounds to the millimetre: A0 has sides in the ratio of the square root of two and an area of 1 m².
    const a0 = 1000 * 2 ** 0.25;
    expect(Math.abs(a0 / 4 - REFERENCE_SIZES.a4.long)).toBeLessThan(1);
    expect(Math.abs(a0 / 4 / Math.SQRT2 - REFERENCE_SIZES.a4.short)).toBeLessThan(1);
  });

  it('Letter is size A of ANSI/ASME Y14.1: 8 1/2 by 11 inches', () => {
    expect(REFERENCE_SIZES.letter.long).toBeCloseTo(279.4, 9);
    expect(REFERENCE_SIZES.letter.short).toBeCloseTo(215.9, 9);
  });

  it('a tape or another thing is as long as somebody said; a line that is no reference has no length', () => {
    expect(referenceLength({ reference: 'tape', length: 609.6 })).toBe(609.6);
    expect(referenceLength({ reference: 'other', length: null })).toBeNull();
    expect(referenceLength({ reference: null, length: 5 })).toBeNull();
    expect(referenceLength({ reference: 'card', length: null })).toBe(85.6);
  });
});

describe('what the width of a picture shows at a reference', () => {
  const photo = { width: 2000, height: 1500 };
  const line = (x: number, y: number) => ({
    path: [
      { x: 0, y: 0 },
      { x, y },
    ],
    reference: 'tape' as const,
    length: 300,
  });

  it('is the reference as often as it fits: a quarter of the width is a quarter of it', () => {
    expect(widthAtReference(line(0.25, 0), photo)).toBeCloseTo(1200, 9);
    // Upright the same 500 pixels are a third of the height.
    expect(widthAtReference(line(0, 1 / 3), photo)).toBeCloseTo(1200, 9);
  });

  it('does not depend on which way the thing lies, nor on how large the picture is stored', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: Math.PI, noNaN: true }), fc.integer({ min: 1, max: 20 }), (angle, times) => {
        const [x, y] = [Math.cos(angle) * 400, Math.sin(angle) * 400];
        const path = [
          { x: 0.5, y: 0.1 },
          { x: 0.5 + x / 2000, y: 0.1 + y / 1500 },
        ];
        const large = { width: 2000 * times, height: 1500 * times };
        expect(widthAtReference({ path, reference: 'tape', length: 100 }, large)).toBeCloseTo(500, 6);
      }),
    );
  });

  it('is not known of a point', () => {
    expect(widthAtReference(line(0, 0), photo)).toBeNull();
  });
});
