import { describe, expect, it } from 'vitest';
import {
  chiSquareTail,
  chiSquareUpperQuantile,
  normalUpperQuantile,
  sidak,
  tauCritical,
} from '../../../src/core/adjust/statistics.ts';

// Standard tables, recomputed with scipy.
describe('distributions', () => {
  it('normal quantiles', () => {
    for (const [alpha, z] of [
      [0.1, 1.644854],
      [0.05, 1.959964],
      [0.01, 2.575829],
      [0.001, 3.290527],
    ] as const) {
      expect(normalUpperQuantile(alpha / 2)).toBeCloseTo(z, 6);
    }
    const delta = normalUpperQuantile(0.0005) - normalUpperQuantile(0.8);
    expect(delta).toBeCloseTo(4.132148, 6);
    expect(delta ** 2).toBeCloseTo(17.074647, 5);
  });
  it('chi-square 95 % points', () => {
    const table = [3.8415, 5.9915, 7.8147, 9.4877, 11.0705, 12.5916, 14.0671, 15.5073, 16.919, 18.307];
    for (const [i, x] of table.entries()) expect(chiSquareUpperQuantile(0.05, i + 1)).toBeCloseTo(x, 4);
    expect(chiSquareUpperQuantile(0.05, 30)).toBeCloseTo(43.773, 3);
    expect(chiSquareUpperQuantile(0.001, 1)).toBeCloseTo(10.8276, 4);
    expect(chiSquareTail(17.074647, 1)).toBeGreaterThan(0);
  });
  it('Pope tau, and never above the root of the freedom', () => {
    const freedom = [2, 3, 4, 5, 6, 8, 10, 14, 20, 30];
    const rows: [number, number[]][] = [
      [0.05, [1.4099, 1.6454, 1.7567, 1.8143, 1.8481, 1.8848, 1.9039, 1.9231, 1.9358, 1.9447]],
      [0.01, [14140 / 1e4, 1.7147, 1.9175, 2.0509, 2.1421, 2.2562, 2.3236, 2.3989, 2.4539, 2.4956]],
      [0.001, [Math.SQRT2, 1.7303, 1.9823, 2.1781, 2.3292, 2.5407, 2.6786, 2.845, 2.9749, 3.0785]],
    ];
    for (const [alpha, row] of rows) {
      row.forEach((tau, i) => {
        expect(tauCritical(alpha, freedom[i] ?? 0)).toBeCloseTo(tau, 4);
        expect(tauCritical(alpha, freedom[i] ?? 0)).toBeLessThanOrEqual(Math.sqrt(freedom[i] ?? 0));
      });
    }
    expect(tauCritical(0.05, 1)).toBe(1);
  });
  it('Šidák: rates of single tests make up the rate of the job', () => {
    const one = sidak(0.005, 100);
    expect(1 - (1 - one) ** 100).toBeCloseTo(0.005, 12);
    expect(sidak(0.01, 1)).toBeCloseTo(0.01, 14);
  });
});
