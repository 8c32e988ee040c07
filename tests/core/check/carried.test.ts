import { describe, expect, it } from 'vitest';
import { Job, readingId, uuid } from './build.ts';

const key = 'carried';

describe(key, () => {
  it('says nothing about a job that is understood', () => {
    expect(
      new Job()
        .piece({ points: { A: null, B: null }, readings: ['A-B'] })
        .takes({ 'A-B': 900 })
        .of(key),
    ).toEqual([]);
  });
  it('says nothing about what was erased on purpose', () => {
    const job = new Job();
    job.add('note.add', { erased: true });
    expect(job.sheet().carried).toHaveLength(1);
    expect(job.of(key)).toEqual([]);
  });
  it('only notes what waits for the rest of its logbook', () => {
    const job = new Job();
    job.take('A-B', 900);
    expect(job.of(key)).toMatchObject([{ severity: 'note', numbers: { why: 'loose', kind: 'take.add', entries: 1 } }]);
  });
  it('doubts kinds a newer app may have written, once a kind', () => {
    const job = new Job();
    const ids = [job.add('tide.add', {}), job.add('tide.add', {}), job.add('moon.add', {})];
    expect(job.of(key)).toMatchObject([
      { id: `${key}:unknown-kind:moon.add`, severity: 'doubt', basis: ids[2] },
      { id: `${key}:unknown-kind:tide.add`, severity: 'doubt', numbers: { entries: 2 } },
    ]);
  });
  it('doubts what cannot be read', () => {
    const job = new Job();
    job.add('take.add', { reading: readingId('A-B'), value: 'long' });
    expect(job.of(key)).toMatchObject([{ severity: 'doubt', piece: null, numbers: { why: 'unreadable' } }]);
  });
  it('keeps a basis that still fits into an acceptance, however many entries there are', () => {
    const job = new Job();
    for (let count = 0; count < 40; count++) job.add('tide.add', {});
    const [finding] = job.of(key);
    expect(finding?.basis.split('+')).toHaveLength(40);
    job.add('finding.accept', { finding: finding?.id, basis: finding?.basis, reason: 'asked the shop' });
    expect(job.of(key)[0]?.accepted?.reason).toBe('asked the shop');
    job.add('tide.add', {}, { id: uuid('one more') });
    expect(job.of(key)[0]?.accepted).toBeNull();
  });
});
