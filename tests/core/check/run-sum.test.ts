import { describe, expect, it } from 'vitest';
import { Job, type ReadingSpec, readingId, runId } from './build.ts';

const key = 'run-sum';
interface Shape {
  whole: number;
  places: readonly (number | null)[];
  manner?: 'gaps' | 'cumulative';
  kind?: 'girth' | 'straight' | 'running';
  /** The last gap, from the last fastener to the end, where it was measured. */
  closing?: number;
}
function run({ whole, places, manner = 'gaps', kind = 'girth', closing }: Shape): Job {
  const readings: ReadingSpec[] = [{ name: 'whole', kind, points: ['A', 'B'], run: 'edge' }];
  if (closing !== undefined) readings.push({ name: 'closing', kind: 'running', run: 'edge' });
  const runs = [{ name: 'edge', points: ['A', 'B'], whole: 'whole' }];
  const job = new Job().piece({ points: { A: null, B: null }, readings, runs });
  job
    .runDetails('edge', { manner, line: 'fastener-line' })
    .takes({ whole, ...(closing === undefined ? {} : { closing }) });
  return job.fasteners('edge', places);
}
const GAPS = [30, 150, 150, 150, 150];

describe(key, () => {
  it('says nothing when gaps and last gap make the whole', () => {
    expect(run({ whole: 660, places: GAPS, closing: 30 }).findings()).toEqual([]);
  });
  it('says nothing when they miss it by what the tapes explain', () => {
    expect(run({ whole: 670, places: GAPS, closing: 30 }).of(key)).toEqual([]);
  });
  it('says nothing when the last gap was not measured and is short', () => {
    expect(run({ whole: 660, places: GAPS }).findings()).toEqual([]);
  });
  it('says nothing of a bare end that is to be fitted later', () => {
    const job = run({ whole: 810, places: GAPS });
    expect(job.of(key)).toHaveLength(1);
    job.runDetails('edge', { presence: 'planned' });
    expect(job.of(key)).toEqual([]);
  });
  it('says nothing while a gap is unmeasured', () => {
    expect(run({ whole: 660, places: [30, null, 150], closing: 30 }).of(key)).toEqual([]);
  });
  it('says nothing while the whole is unmeasured', () => {
    const job = new Job().piece({ points: { A: null, B: null }, runs: [{ name: 'edge', points: ['A', 'B'] }] });
    expect(job.runDetails('edge', { manner: 'gaps' }).fasteners('edge', GAPS).of(key)).toEqual([]);
  });
  it('says nothing about a cumulative run that ends within the whole', () => {
    expect(run({ whole: 660, places: [30, 180, 330, 480, 630], manner: 'cumulative' }).findings()).toEqual([]);
  });
  it('says nothing about a last place at the very end, read a little far', () => {
    expect(run({ whole: 660, places: [30, 180, 330, 480, 666], manner: 'cumulative' }).of(key)).toEqual([]);
  });

  it('stops when the gaps are more than the whole: one was counted twice', () => {
    const [finding] = run({ whole: 660, places: [...GAPS, 150] }).of(key);
    expect(finding).toMatchObject({
      severity: 'stop',
      slot: 'edge',
      numbers: { sum: 780, whole: 660, difference: 120, manner: 'gaps', stations: 6 },
      subjects: [
        { on: 'run', id: runId('edge') },
        { on: 'reading', id: readingId('whole') },
      ],
    });
    expect(finding?.numbers.tolerance).toBeCloseTo(4 * Math.hypot(1.009, 1.045, 1.045, 1.045, 1.045, 1.045, 3.66), 9);
  });
  it('stops when they are less although the last gap was measured: one was skipped', () => {
    expect(run({ whole: 810, places: GAPS, closing: 30 }).of(key)).toMatchObject([
      { severity: 'stop', numbers: { difference: -150 } },
    ]);
  });
  it('only doubts it when the last gap was not measured', () => {
    expect(run({ whole: 810, places: GAPS }).of(key)).toMatchObject([
      { severity: 'doubt', numbers: { difference: -180 } },
    ]);
  });
  it('leaves a run that is far from its end to missing-run', () => {
    expect(
      run({ whole: 3000, places: GAPS })
        .findings()
        .map(({ rule }) => rule),
    ).toEqual(['missing-run']);
  });
  it('stops when a cumulative run goes beyond the whole', () => {
    expect(run({ whole: 660, places: [30, 180, 330, 480, 730], manner: 'cumulative' }).of(key)).toMatchObject([
      { severity: 'stop', numbers: { sum: 730, difference: 70, manner: 'cumulative' } },
    ]);
  });
  it('only doubts that beside a whole taped straight: the edge may be bent', () => {
    expect(run({ whole: 660, places: [...GAPS, 150], kind: 'straight' }).of(key)).toMatchObject([
      { severity: 'doubt' },
    ]);
  });
});
