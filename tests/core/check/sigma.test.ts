import { describe, expect, it } from 'vitest';
import { sigmaOf } from '../../../src/core/check/index.ts';
import { defaultInstruments, type ReadingKind, type TakeUnit } from '../../../src/core/job/index.ts';
import { installer, owner } from './build.ts';

const take = (value: number, text: string, unit: TakeUnit, sigma: number | null = null) => ({
  value,
  text,
  unit,
  sigma,
});
const of = (kind: ReadingKind) => ({ kind });
const even = (step: number) => step / Math.sqrt(12);

describe('sigma of a take', () => {
  // Defaults: design of the job; common practice, no source.
  it.each([
    ['straight', 0, 1],
    ['straight', 3000, 1.9],
    ['running', 1000, 1.3],
    ['along', 2000, 1.6],
    ['girth', 2000, 5],
    ['out', 900, 2],
    ['height', 1900, 2],
  ] as const)('%s of %i mm: %d mm', (kind, value, sigma) => {
    expect(sigmaOf(of(kind), take(value, String(value), 'mm'), installer)).toBeCloseTo(sigma, 12);
  });
  it('is twice as wide for an owner', () => {
    expect(sigmaOf(of('straight'), take(3000, '3000', 'mm'), owner)).toBeCloseTo(3.8, 12);
  });
  it('is the same for a length below zero', () => {
    expect(sigmaOf(of('along'), take(-1000, '-1000', 'mm'), installer)).toBeCloseTo(1.3, 12);
  });
  it('is what the take states, whoever took it', () => {
    expect(sigmaOf(of('girth'), take(3000, '3000', 'mm', 0.5), owner)).toBe(0.5);
  });
  it('lets a shop change its instruments', () => {
    const instruments = { ...defaultInstruments, tape: { base: 2, perMetre: 1 } };
    expect(sigmaOf(of('straight'), take(1000, '1000', 'mm'), installer, instruments)).toBeCloseTo(3, 12);
  });
  it.each([
    [`12' 3 1/2"`, 'ft'],
    ['147', 'in'],
    ['147 1/2', 'in'],
    ['3755.2', 'mm'],
    ['375.5', 'cm'],
    ['3.755', 'm'],
    ['12.29', 'ft'],
  ] as const)('has the rounding of %s %s inside', (text, unit) => {
    const sigma = sigmaOf(of('straight'), take(1000, text, unit), installer);
    expect(sigma).toBeLessThanOrEqual(Math.hypot(1.3, even(0.01 * 304.8)) + 1e-12);
  });
  it.each([
    ['375', 'cm', 10],
    ['3.75', 'm', 10],
    ['3.8', 'm', 100],
    ['4', 'm', 100],
    ['12.3', 'ft', 30.48],
    [`12' 3.5"`, 'ft', 2.54],
  ] as const)('adds the rounding of %s %s', (text, unit, step) => {
    expect(sigmaOf(of('straight'), take(1000, text, unit), installer)).toBeCloseTo(Math.hypot(1.3, even(step)), 9);
  });
  it('adds the rounding of a job that writes eighths', () => {
    const eighths = sigmaOf(of('straight'), take(1000, '39 3/8', 'in'), installer, defaultInstruments, 8);
    expect(eighths).toBeCloseTo(Math.hypot(1.3, even(3.175)), 9);
  });
  it('is an angle for a lean', () => {
    expect(sigmaOf(of('lean'), take(0.26, '15', 'deg'), installer)).toBeCloseTo(Math.PI / 180, 12);
  });
});
