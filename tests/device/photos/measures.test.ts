import { describe, expect, it } from 'vitest';
import { fitWithin, laplacianVariance, meanLuma, type Pixels } from '../../../src/device/photos/measures.ts';

/** A picture whose grey value is a function of the place. */
function grey(width: number, height: number, value: (x: number, y: number) => number): Pixels {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let i = 0; i < width * height; i += 1) {
    const level = value(i % width, Math.floor(i / width));
    data.set([level, level, level, 255], i * 4);
  }
  return { data, width, height };
}

describe('brightness', () => {
  it('is the grey value of an even picture', () => {
    for (const level of [0, 100, 255]) expect(meanLuma(grey(4, 3, () => level))).toBeCloseTo(level, 9);
  });

  it('weighs colours as the eye does: green brightest, blue darkest', () => {
    const colour = (...rgb: number[]): number =>
      meanLuma({ data: Uint8ClampedArray.of(...rgb, 255), width: 1, height: 1 });
    expect([colour(255, 0, 0), colour(0, 255, 0), colour(0, 0, 255)].map(Math.round)).toEqual([76, 150, 29]);
  });

  it('is 0 without pixels', () => {
    expect(meanLuma(grey(0, 0, () => 9))).toBe(0);
  });
});

describe('sharpness', () => {
  it('is 0 for an even picture, a steady slope, and one too small to have an inside', () => {
    expect(laplacianVariance(grey(8, 8, () => 77))).toBeCloseTo(0, 9);
    expect(laplacianVariance(grey(8, 8, (x, y) => 3 * x + 2 * y))).toBeCloseTo(0, 9);
    expect(laplacianVariance(grey(2, 9, (x) => x * 200))).toBe(0);
  });

  it('is what it is by hand: one white pixel in the middle of 5 by 5', () => {
    // Inside 3 by 3: centre -4 * 255, its four neighbours +255, corners 0; the mean is 0.
    expect(laplacianVariance(grey(5, 5, (x, y) => (x === 2 && y === 2 ? 255 : 0)))).toBeCloseTo(
      ((16 + 4) * 255 ** 2) / 9,
      6,
    );
  });

  it('falls when the same edge is smeared', () => {
    const sharp = laplacianVariance(grey(32, 32, (x) => (x < 16 ? 40 : 200)));
    const smeared = laplacianVariance(grey(32, 32, (x) => 40 + 160 / (1 + Math.exp(-(x - 16) / 3))));
    expect(sharp).toBeGreaterThan(20 * smeared);
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
