import { describe, expect, it } from 'vitest';
import { distances, Job, readingId } from './build.ts';

const key = 'unmeasured-reading';
function answered(answer: 'none-here' | 'could-not', needed = true): Job {
  const job = new Job().piece({ points: { A: null, B: null }, readings: [{ name: 'A-B', needed }] });
  job.add('reading.answer', { reading: readingId('A-B'), answer, reason: 'locker in the way' });
  return job;
}

describe(key, () => {
  it('says nothing about a reading nobody has come to yet', () => {
    expect(new Job().piece({ points: { A: null, B: null }, readings: ['A-B'] }).of(key)).toEqual([]);
  });
  it('says nothing about a reading that was only wished for', () => {
    expect(answered('could-not', false).of(key)).toEqual([]);
  });
  it('says nothing once a value was taken after all', () => {
    expect(answered('could-not').takes({ 'A-B': 900 }).of(key)).toEqual([]);
  });
  it('doubts that a needed thing is not on the boat', () => {
    expect(answered('none-here').of(key)).toMatchObject([{ severity: 'doubt', numbers: { answer: 'none-here' } }]);
  });
  it('stops where a needed thing could not be measured, and says why', () => {
    const findings = answered('could-not').of(key);
    expect(findings).toMatchObject([{ severity: 'stop', slot: 'A-B', numbers: { reason: 'locker in the way' } }]);
  });
  it('never speaks beside missing-reading', () => {
    expect(
      answered('could-not')
        .findings()
        .map((finding) => finding.rule),
    ).toEqual([key]);
  });
  it('only notes it where the other readings fix every point all the same', () => {
    type Points = NonNullable<Parameters<Job['piece']>[0]['points']>;
    const points: Points = { A: [0, 0, 0], B: [2000, 0, 0], C: [2000, 1500, 0], D: [0, 1500, 0], E: [800, 700, 0] };
    const taped = distances({ A: [0, 0, 0], B: [2000, 0, 0], C: [2000, 1500, 0], D: [0, 1500, 0], E: [800, 700, 0] });
    const measuredBut = (...left: string[]): Job => {
      const job = new Job().piece({ points, readings: Object.keys(taped), flat: true });
      job.takes(Object.fromEntries(Object.entries(taped).filter(([name]) => !left.includes(name))));
      job.add('reading.answer', { reading: readingId('B-D'), answer: 'could-not', reason: 'mast' });
      return job;
    };
    expect(measuredBut('B-D').of(key)).toMatchObject([{ severity: 'note' }]);
    expect(measuredBut('B-D', 'A-D', 'C-D').of(key)).toMatchObject([{ severity: 'stop' }]);
  });
});
