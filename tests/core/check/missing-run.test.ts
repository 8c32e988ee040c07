import { describe, expect, it } from 'vitest';
import { Job, runId } from './build.ts';

const key = 'missing-run';
const ALL = { line: 'fastener-line', type: 'snap', presence: 'there' };
function job(needed = true): Job {
  const whole = { name: 'whole', kind: 'girth' as const, points: ['A', 'B'], run: 'edge' };
  const runs = [{ name: 'edge', points: ['A', 'B'], whole: 'whole', needed }];
  return new Job().piece({ points: { A: null, B: null }, readings: [whole], runs });
}
const lacks = (made: Job) => made.of(key).map(({ numbers }) => numbers.lack);

describe(key, () => {
  it('says nothing about a run with its line and its fasteners', () => {
    expect(job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).of(key)).toEqual([]);
  });
  it('lets the fasteners speak for their type and presence', () => {
    expect(job().runDetails('edge', { line: 'fastener-line' }).fasteners('edge', [30, 180]).of(key)).toEqual([]);
  });
  it('wants no stations of fasteners that are still to be fitted', () => {
    expect(
      job()
        .runDetails('edge', { ...ALL, presence: 'planned' })
        .of(key),
    ).toEqual([]);
  });
  it('says nothing when the last fastener is near the end', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).takes({ whole: 500 });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about a bare end while a station is unmeasured', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, null]).takes({ whole: 2000 });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about a bare end beyond the end of a track', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 900], { type: 'track-end' });
    expect(made.takes({ whole: 2000 }).of(key)).toEqual([]);
  });

  it('stops once at a run nobody has touched', () => {
    expect(job().of(key)).toMatchObject([
      {
        severity: 'stop',
        slot: 'edge',
        subjects: [
          { on: 'run', id: runId('edge') },
          { on: 'detail', id: 'stations' },
        ],
      },
    ]);
  });
  it('only notes it where the run was only wished for', () => {
    expect(job(false).of(key)).toMatchObject([{ severity: 'note' }]);
  });
  it('stops at each detail that is missing', () => {
    expect(lacks(job().runDetails('edge', { line: 'boat-edge' }))).toEqual(['presence', 'stations', 'type']);
    expect(lacks(job().fasteners('edge', [30]))).toEqual(['line']);
  });
  it('doubts a run whose fasteners stop well before its end', () => {
    const made = job().runDetails('edge', ALL).fasteners('edge', [30, 180, 330]).takes({ whole: 2000 });
    expect(made.of(key)).toMatchObject([{ severity: 'doubt', numbers: { lack: 'rest', rest: 1670, whole: 2000 } }]);
  });
});
