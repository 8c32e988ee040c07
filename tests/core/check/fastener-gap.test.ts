import { describe, expect, it } from 'vitest';
import { defaultLimits } from '../../../src/core/check/index.ts';
import { Job, pointId, readingId, runId } from './build.ts';

const key = 'fastener-gap';
function run(places: readonly (number | null)[], manner: 'gaps' | 'cumulative' = 'cumulative', whole?: number): Job {
  const readings = [{ name: 'whole', kind: 'girth' as const, points: ['A', 'B'], run: 'edge' }];
  const runs = [{ name: 'edge', points: ['A', 'B'], whole: 'whole' }];
  const job = new Job().piece({ points: { A: null, B: null }, readings, runs });
  job.runDetails('edge', { manner, line: 'fastener-line' }).fasteners('edge', places);
  return whole === undefined ? job : job.takes({ whole });
}

// Spacing 100 to 200 mm, ends within 50 mm: common practice, no source.
describe(key, () => {
  it('says nothing about usual spacing, in either manner', () => {
    expect(run([30, 130, 330, 480], 'cumulative', 520).findings()).toEqual([]);
    expect(run([30, 100, 200, 150], 'gaps', 520).findings()).toEqual([]);
  });
  it('says nothing just outside the limits', () => {
    expect(run([50, 145, 360]).of(key)).toEqual([]);
  });
  it('says nothing about the ends of tracks, zips and straps', () => {
    const job = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    expect(job.fasteners('edge', [100, 1500], { type: 'track-end' }).of(key)).toEqual([]);
  });
  it('says nothing across a place that is not measured', () => {
    expect(run([30, null, 480]).of(key)).toEqual([]);
  });
  it('leaves places that go back to run-backwards', () => {
    expect(run([30, 180, 130]).of(key)).toEqual([]);
  });
  it('goes by the limits of the shop', () => {
    const limits = { ...defaultLimits, fastenerGap: { min: 200, max: 400 } };
    expect(run([30, 330, 630]).of(key, { limits })).toEqual([]);
    expect(run([30, 180, 480]).of(key, { limits })).toHaveLength(1);
  });
  it('says nothing across a zip between two rows of snaps, nor of ends where no row begins', () => {
    const points = { A: [0, 0, 0], B: [500, 0, 0], C: [1500, 0, 0], D: [2000, 0, 0] } as const;
    const job = new Job().piece({
      points: Object.fromEntries(Object.entries(points).map(([label, [x, y, z]]) => [label, [x, y, z]])),
      readings: [{ name: 'whole', kind: 'girth', points: ['A', 'D'], run: 'edge' }],
      runs: [{ name: 'edge', points: ['A', 'B', 'C', 'D'], whole: 'whole' }],
    });
    job.takes({ whole: 2000 }).runDetails('edge', { line: 'fastener-line' });
    job.stretch('edge', 'A', { closes: 'nothing' });
    job.stretch('edge', 'B', { begins: 'yes', closes: 'snap', presence: 'there' });
    job.stretch('edge', 'C', { begins: 'yes', closes: 'zip', presence: 'planned', pulls: 'aft', setter: 'shop' });
    expect(job.fasteners('edge', [540, 700, 860, 1020, 1180, 1340, 1460]).findings()).toEqual([]);
    job.stretch('edge', 'B', { closes: 'zip', pulls: 'aft' });
    expect(job.of(key)).toEqual([]);
  });
  it('leaves a last gap that is much too wide to missing-run', () => {
    expect(run([30, 180], 'cumulative', 900).of(key)).toEqual([]);
  });

  it('doubts a gap too wide, and too narrow', () => {
    const [wide, narrow, ...more] = run([30, 180, 480, 630, 780, 810, 960])
      .of(key)
      .sort((a, b) => Number(b.numbers.gap) - Number(a.numbers.gap));
    expect(more).toEqual([]);
    expect(wide).toMatchObject({ severity: 'doubt', numbers: { about: 'gap', gap: 300, min: 100, max: 200, gaps: 1 } });
    expect(narrow).toMatchObject({ severity: 'doubt', numbers: { about: 'gap', gap: 30 } });
    expect(wide?.subjects.map(({ id }) => id)).toEqual([readingId('edge 2'), readingId('edge 1'), runId('edge')]);
  });
  it('doubts a gap of a gap-to-gap run', () => {
    expect(run([30, 150, 300, 150], 'gaps').of(key)).toMatchObject([{ numbers: { about: 'gap', gap: 300 } }]);
  });
  it('doubts a run that is all spaced otherwise only once', () => {
    expect(run([30, 280, 530, 790, 1040]).of(key)).toMatchObject([
      { severity: 'doubt', subjects: [{ on: 'run', id: runId('edge') }], numbers: { about: 'run', gap: 260, gaps: 4 } },
    ]);
  });
  it('only notes ends that are far from their corner', () => {
    const findings = run([90, 240, 390], 'cumulative', 500).of(key);
    expect(findings.map(({ severity }) => severity)).toEqual(['note', 'note']);
    expect(findings.map(({ numbers }) => [numbers.about, numbers.gap]).sort()).toEqual([
      ['first', 90],
      ['last', 110],
    ]);
    expect(findings.flatMap(({ subjects }) => subjects.map(({ id }) => id))).toContain(pointId('B'));
  });
});
