import { describe, expect, it } from 'vitest';
import { Job, readingId } from './build.ts';

const key = 'run-backwards';
function run(places: readonly (number | null)[], manner: 'gaps' | 'cumulative' = 'cumulative'): Job {
  const job = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
  return job.runDetails('edge', { manner, line: 'fastener-line' }).fasteners('edge', places);
}

describe(key, () => {
  it('says nothing about places that go on', () => {
    expect(run([0, 150, 300, 450]).of(key)).toEqual([]);
  });
  it('says nothing about places close together', () => {
    expect(run([0, 150, 152, 300]).of(key)).toEqual([]);
  });
  it('says nothing about gaps, which may be any size', () => {
    expect(run([30, 180, 120, 120], 'gaps').of(key)).toEqual([]);
  });
  it('says nothing across a place that is not measured yet', () => {
    expect(run([30, 180, null, 170]).of(key)).toEqual([]);
  });
  it('says nothing about places of two sorts, whose order nobody gave', () => {
    const mark = { name: 'end', kind: 'running' as const, run: 'edge' };
    const job = new Job().piece({
      points: { A: null, B: null },
      readings: [mark],
      runs: [{ name: 'edge', points: ['A', 'B'] }],
    });
    expect(job.takes({ end: 900 }).fasteners('edge', [30, 180]).of(key)).toEqual([]);
  });
  it('doubts a place given twice', () => {
    expect(run([30, 180, 180]).of(key)).toMatchObject([
      { severity: 'doubt', numbers: { from: 180, to: 180, back: 0 } },
    ]);
  });
  it('stops at a place before the one before it', () => {
    const [finding, ...more] = run([30, 180, 130, 480]).of(key);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'stop', slot: 'edge', numbers: { from: 180, to: 130, back: 50 } });
    expect(finding?.subjects.map(({ id }) => id)).toEqual([readingId('edge 2'), readingId('edge 1')]);
  });
});
