import { describe, expect, it } from 'vitest';
import { distances, Job, readingId } from './build.ts';

const key = 'box-diagonals';
const LABELS = { A: null, B: null, C: null, D: null };
type Place = [number, number, number];
const FLAT: Record<string, Place> = { A: [0, 0, 0], B: [2400, 0, 0], C: [2300, 1800, 0], D: [100, 1700, 0] };

function box(corners: Record<string, Place>, flat: boolean, changed: Record<string, number> = {}): Job {
  const lengths = distances(corners);
  const job = new Job().piece({ points: LABELS, readings: Object.keys(lengths), flat, boxes: [['A', 'B', 'C', 'D']] });
  const moved = Object.entries(lengths).map(([name, mm]) => [name, mm + (changed[name] ?? 0)] as const);
  return job.takes(Object.fromEntries(moved));
}

describe(key, () => {
  it.each([true, false])('says nothing about a true flat box (piece flat: %s)', (flat) => {
    expect(box(FLAT, flat).findings()).toEqual([]);
  });
  it('says nothing about a twisted box', () => {
    expect(box({ ...FLAT, C: [2300, 1800, 400] }, false).findings()).toEqual([]);
  });
  it('says nothing about a box folded almost shut', () => {
    expect(box({ A: [0, 0, 0], B: [1000, 900, 0], C: [2000, 0, 0], D: [1000, 800, 300] }, false).of(key)).toEqual([]);
  });
  it('says nothing about a flat box whose corner bends inwards', () => {
    expect(box({ A: [0, 0, 0], B: [2000, 0, 0], C: [700, 700, 0], D: [0, 2000, 0] }, true).findings()).toEqual([]);
    expect(box({ A: [0, 0, 0], B: [700, 500, 0], C: [2000, 0, 0], D: [900, 1500, 0] }, true).findings()).toEqual([]);
  });
  it('says nothing about a diagonal 5 mm off', () => {
    expect(box(FLAT, true, { 'B-D': 5 }).of(key)).toEqual([]);
  });
  it('says nothing about a box of three corners in a line', () => {
    expect(box({ A: [0, 0, 0], B: [1000, 0, 0], C: [2000, 0, 0], D: [1000, 900, 0] }, true).findings()).toEqual([]);
  });
  it('says nothing while a diagonal is open', () => {
    const job = new Job().piece({
      points: LABELS,
      readings: ['A-B', 'B-C', 'C-D', 'A-D', 'A-C', 'B-D'],
      boxes: [['A', 'B', 'C', 'D']],
    });
    expect(job.takes({ 'A-B': 1000, 'B-C': 1000, 'C-D': 1000, 'A-D': 1000, 'A-C': 1414 }).of(key)).toEqual([]);
  });
  it('is silent where a triangle of the box fails', () => {
    expect(
      box(FLAT, true, { 'B-D': 3000 })
        .findings()
        .map(({ rule }) => rule),
    ).toEqual(['impossible-triangle']);
  });

  it('stops at a flat box with a diagonal too short: twisted is not flat', () => {
    const [finding, ...more] = box(FLAT, true, { 'B-D': -60 }).findings();
    expect(more).toEqual([]);
    const expected = Math.hypot(2300, 1700);
    expect(finding).toMatchObject({
      rule: key,
      severity: 'stop',
      slot: 'B-D',
      numbers: { shape: 'flat' },
      subjects: [{ id: readingId('B-D') }, {}, {}, {}, {}, {}],
    });
    expect(Math.abs(Number(finding?.numbers.min) - expected)).toBeLessThan(2);
    expect(finding?.numbers.max).toBe(finding?.numbers.min);
    expect(finding?.numbers.beyond).toBeCloseTo(
      Number(finding?.numbers.min) - Number(finding?.numbers.diagonal) - Number(finding?.numbers.tolerance),
      9,
    );
  });
  it('says nothing about the same diagonal where the piece may be twisted', () => {
    expect(box(FLAT, false, { 'B-D': -60 }).findings()).toEqual([]);
  });
  it('stops at a diagonal longer than the box laid flat', () => {
    const [finding] = box(FLAT, false, { 'B-D': 60 }).findings();
    expect(finding).toMatchObject({ rule: key, severity: 'stop', numbers: { shape: 'twisted' } });
    expect(Number(finding?.numbers.diagonal)).toBeGreaterThan(
      Number(finding?.numbers.max) + Number(finding?.numbers.tolerance),
    );
  });
  it('stops at a diagonal shorter than the box folded shut', () => {
    const thin: Record<string, Place> = { A: [0, 0, 0], B: [600, 1500, 0], C: [3000, 0, 0], D: [2300, 1400, 0] };
    expect(box(thin, false, { 'B-D': -250 }).findings()).toMatchObject([{ rule: key, severity: 'stop' }]);
  });
});
