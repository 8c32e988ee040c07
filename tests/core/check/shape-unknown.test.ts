import { describe, expect, it } from 'vitest';
import { gates, judge } from '../../../src/core/check/index.ts';
import { distances, Job } from './build.ts';

const key = 'shape-unknown';
type Points = NonNullable<Parameters<Job['piece']>[0]['points']>;

/** A line of three points and two more in space, every pair taped but D-E; the engine finds no shape for it. */
const places: Points = { A: null, B: null, C: null, D: null, E: null };
const taped = distances({
  A: [0, 0, 0],
  B: [2000, 0, 0],
  C: [1000, 0, 0],
  D: [1100, 900, 400],
  E: [600, -700, 500],
});
const rounded = Object.fromEntries(
  Object.entries(taped)
    .filter(([name]) => name !== 'D-E')
    .map(([name, mm]) => [name, Math.round(mm)]),
);
const job = () => new Job().piece({ points: places, readings: Object.keys(rounded), flat: false });

describe(key, () => {
  it('says nothing while a reading is still to be taken', () => {
    const { 'A-B': _, ...rest } = rounded;
    expect(job().takes(rest).of(key)).toEqual([]);
  });
  it('says nothing of a piece that has a shape', () => {
    const flat = distances({ A: [0, 0, 0], B: [2000, 0, 0], C: [2000, 1500, 0] });
    const triangle = new Job().piece({
      points: { A: null, B: null, C: null },
      readings: Object.keys(flat),
      flat: true,
    });
    expect(triangle.takes(flat).of(key)).toEqual([]);
  });
  it('never lets a piece be cleared whose engine came to no shape', () => {
    const sheet = job().takes(rounded).sheet();
    const { findings, pieces } = judge(sheet);
    const states = [...pieces.values()].map(({ adjustment }) => adjustment.state);
    expect(states).toEqual(['did-not-converge']);
    expect(findings.filter(({ rule }) => rule === key)).toMatchObject([{ severity: 'stop' }]);
    expect(gates(sheet, findings).leave.clear).toBe(false);
    expect(gates(sheet, findings).cut.clear).toBe(false);
  });
});
