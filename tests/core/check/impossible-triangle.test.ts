import { describe, expect, it } from 'vitest';
import { distances, Job, owner, readingId } from './build.ts';

const key = 'impossible-triangle';
const SIDES = ['A-B', 'B-C', 'A-C'] as const;
function sides(a: number, b: number, c: number, options = {}): Job {
  const job = new Job(options).piece({ points: { A: null, B: null, C: null }, readings: [...SIDES] });
  return job.takes({ 'A-B': a, 'B-C': b, 'A-C': c });
}

/** Heronian triangles, exact by Heron's formula (integer area), in tens of millimetres. */
const HERONIAN: readonly (readonly [number, number, number])[] = [
  [3, 4, 5],
  [5, 5, 6],
  [5, 5, 8],
  [13, 14, 15],
  [51, 52, 53],
  [9, 10, 17],
];

describe(key, () => {
  it.each(HERONIAN)('says nothing about the Heronian triangle %i-%i-%i', (a, b, c) => {
    expect(sides(a * 50, b * 50, c * 50).of(key)).toEqual([]);
  });
  it('says nothing about the flat triangle 1-2-3', () => {
    expect(sides(1000, 2000, 3000).of(key)).toEqual([]);
  });
  it('says nothing about three marks in a line, read a little long', () => {
    // 4 · √(1.3² + 1.6² + 1.9²) = 11.2 mm.
    expect(sides(1000, 2000, 3010).of(key)).toEqual([]);
  });
  it('gives an owner twice the room', () => {
    expect(sides(1000, 2000, 3020, { who: owner }).of(key)).toEqual([]);
  });
  it('says nothing while the third side is open', () => {
    const job = new Job().piece({ points: { A: null, B: null, C: null }, readings: [...SIDES] });
    expect(job.takes({ 'A-B': 1000, 'B-C': 1000 }).of(key)).toEqual([]);
  });
  it('says nothing about girths, which may be any longer', () => {
    const readings = SIDES.map((name) => ({ name, kind: 'girth' as const }));
    const job = new Job().piece({ points: { A: null, B: null, C: null }, readings });
    expect(job.takes({ 'A-B': 1000, 'B-C': 1000, 'A-C': 3000 }).of(key)).toEqual([]);
  });
  it('says nothing about three readings that do not meet in three points', () => {
    const job = new Job().piece({ points: { A: null, B: null, C: null, D: null }, readings: ['A-B', 'B-C', 'C-D'] });
    expect(job.takes({ 'A-B': 100, 'B-C': 100, 'C-D': 3000 }).of(key)).toEqual([]);
  });
  it('leaves a length of zero to implausible-value', () => {
    expect(sides(0, 1000, 2000).of(key)).toEqual([]);
  });

  it('stops at 1-2-4, with how much it fails by', () => {
    const [finding, ...more] = sides(1000, 2000, 4000).of(key);
    expect(more).toEqual([]);
    const tolerance = 4 * Math.hypot(1.3, 1.6, 2.2);
    expect(finding).toMatchObject({ severity: 'stop', slot: 'A-C', subjects: [{ id: readingId('A-C') }, {}, {}] });
    expect(finding?.numbers).toMatchObject({
      excess: 1000,
      longest: 4000,
      others: 3000,
      longestReading: readingId('A-C'),
    });
    expect(finding?.numbers.tolerance).toBeCloseTo(tolerance, 9);
    expect(finding?.numbers.beyond).toBeCloseTo(1000 - tolerance, 9);
    expect(finding?.numbers).toMatchObject({ failing: 1, suspect: null });
  });
  it('names the reading that two failing triangles share, and stops once', () => {
    const points = { A: null, B: null, C: null, D: null };
    const true4 = distances({ A: [0, 0, 0], B: [1500, 0, 0], C: [1500, 1000, 0], D: [0, 1000, 0] });
    const job = new Job().piece({ points, readings: Object.keys(true4), boxes: [['A', 'B', 'C', 'D']] });
    // One foot ten times over: the first digit was typed twice.
    const findings = job.takes({ ...true4, 'A-B': 1500 + 3048 }).findings();
    expect(findings.map((finding) => finding.rule)).toEqual([key]);
    expect(findings[0]?.numbers).toMatchObject({ failing: 2, suspect: readingId('A-B') });
  });
  it('reports two slips that have nothing to do with each other', () => {
    const points = { A: null, B: null, C: null, D: null, E: null, F: null };
    const job = new Job().piece({ points, readings: ['A-B', 'B-C', 'A-C', 'D-E', 'E-F', 'D-F'] });
    job.takes({ 'A-B': 1000, 'B-C': 1000, 'A-C': 2500, 'D-E': 1000, 'E-F': 1000, 'D-F': 2600 });
    expect(job.of(key)).toHaveLength(2);
  });
});
