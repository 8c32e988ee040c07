import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brightnessAt, fitWithin, type Grey, greyOf, halved, sharpness } from '../../../src/device/photos/measures.ts';
import { blurred, changed, dock, gelcoat, grainy, grey, smeared } from './pictures.ts';

/** Small pictures of any content, with every contrast from none to all. */
const anyPicture: fc.Arbitrary<Grey> = fc
  .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 7 }), fc.constantFrom(1, 8, 255))
  .chain(([width, height, most]) =>
    fc
      .array(fc.double({ min: 0, max: most, noNaN: true }), { minLength: width * height, maxLength: width * height })
      .map((values) => ({ values: Float64Array.from(values), width, height })),
  );

/** One step of diffusion, the blur that treats all directions alike; amount up to an eighth keeps every share positive. */
function diffused({ values, width, height }: Grey, amount: number): Grey {
  const at = (x: number, y: number): number =>
    values[Math.min(height - 1, Math.max(0, y)) * width + Math.min(width - 1, Math.max(0, x))] ?? 0;
  return grey(width, height, (x, y) => {
    const around = at(x - 1, y) + at(x + 1, y) + at(x, y - 1) + at(x, y + 1);
    return at(x, y) + amount * (around - 4 * at(x, y));
  });
}

describe('brightness', () => {
  it('weighs colours as the eye does: green brightest, blue darkest', () => {
    const colour = (...rgb: number[]): number | undefined =>
      greyOf({ data: Uint8ClampedArray.of(...rgb, 255), width: 1, height: 1 }).values[0];
    expect([colour(255, 0, 0), colour(0, 255, 0), colour(0, 0, 255)].map((v) => Math.round(v ?? 0))).toEqual([
      76, 150, 29,
    ]);
  });

  it('at a share is what that many pixels do not exceed', () => {
    const steps = grey(10, 10, (x) => x * 20);
    expect([0.01, 0.1, 0.11, 0.5, 0.75, 1].map((share) => brightnessAt(steps, share))).toEqual([
      0, 0, 20, 80, 140, 180,
    ]);
    expect(
      brightnessAt(
        grey(0, 0, () => 9),
        0.5,
      ),
    ).toBe(0);
  });

  it('of half a picture is the mean of four', () => {
    expect([...halved(grey(5, 3, (x, y) => x + 10 * y)).values]).toEqual([5.5, 7.5]);
  });
});

describe('sharpness', () => {
  it('is 2 for a step, and 1 / (2 s²) for one smeared by s pixels, less what noise is taken for', () => {
    const step = grey(128, 128, (x) => (x < 64 ? 20 : 235));
    expect(sharpness(step).across).toBeCloseTo(2, 2);
    for (const sigma of [1, 1.5, 2]) {
      const { across, whole } = sharpness(blurred(step, sigma));
      expect((across ?? 0) * 2 * sigma ** 2).toBeGreaterThan(0.8);
      expect((across ?? 0) * 2 * sigma ** 2).toBeLessThan(1.02);
      expect(whole).toBeCloseTo(across ?? 0, 1);
    }
  });

  it('cannot be told of an even picture, a gentle slope, noise, or no picture', () => {
    for (const picture of [
      grey(64, 64, () => 77),
      grey(64, 64, (x) => x),
      grainy(
        grey(64, 64, () => 99),
        0.8,
      ),
      grey(0, 0, () => 0),
    ])
      expect(sharpness(picture)).toEqual({ whole: null, across: null, down: null });
  });

  it('does not depend on contrast where there is enough of it', () => {
    const full = sharpness(dock(1)).whole ?? 0;
    for (const share of [0.7, 0.5, 0.35])
      expect(
        Math.abs((sharpness(changed(dock(1), (value) => 128 + share * (value - 128))).whole ?? 0) - full),
      ).toBeLessThan(0.2);
  });

  it('cannot be told of white laminate with studs eight steps darker', () => {
    expect(sharpness(gelcoat(1, 8)).whole).toBeNull();
  });

  it('never rises with blur, whatever the picture', () => {
    fc.assert(
      fc.property(
        anyPicture,
        fc.double({ min: 0, max: 0.125, noNaN: true }),
        fc.integer({ min: 1, max: 6 }),
        (picture, amount, times) => {
          let now = picture;
          for (let i = 0; i < times; i += 1) {
            const before = sharpness(now).whole;
            now = diffused(now, amount);
            const after = sharpness(now).whole;
            if (after === null) continue;
            expect(before).not.toBeNull();
            expect(after).toBeLessThanOrEqual((before ?? 0) + 1e-9);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('along rows and columns never rises with shake along them', () => {
    // 1 2 1: a smear whose every share is positive, as the law asks.
    fc.assert(
      fc.property(anyPicture, fc.constantFrom('across', 'down'), (picture, way) => {
        const [before, after] = [sharpness(picture)[way], sharpness(smeared(picture, [1, 2, 1], way))[way]];
        if (after === null) return;
        expect(before).not.toBeNull();
        expect(after).toBeLessThanOrEqual((before ?? 0) + 1e-9);
      }),
      { numRuns: 400 },
    );
  });
});

describe('fitting', () => {
  it('leaves a small picture alone', () => {
    expect(fitWithin(640, 480, 2048)).toEqual({ width: 640, height: 480 });
  });

  it('takes the longest side, upright or across, to whole pixels and never to none', () => {
    expect(fitWithin(4032, 3024, 2048)).toEqual({ width: 2048, height: 1536 });
    expect(fitWithin(3024, 4032, 2048)).toEqual({ width: 1536, height: 2048 });
    expect(fitWithin(9000, 2, 2048)).toEqual({ width: 2048, height: 1 });
  });
});
