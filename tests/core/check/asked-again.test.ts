import { describe, expect, it } from 'vitest';
import { Job, pieceId, readingId } from './build.ts';

const key = 'asked-again';
const job = () =>
  new Job()
    .piece({ points: { A: null, B: null }, readings: ['A-B'], questions: [{ slot: 'rain' }] })
    .takes({ 'A-B': 900 });
const item = (on: string, id: string, note = '') => ({ on, id, note });
const ask = (made: Job, ...items: object[]) => made.add('ask.again', { piece: pieceId(), note: 'please', items });

describe(key, () => {
  it('says nothing when nothing was asked', () => {
    expect(job().of(key)).toEqual([]);
  });
  it('says nothing once the reading was taken again', () => {
    const made = job();
    ask(made, item('reading', readingId('A-B')));
    expect(made.takes({ 'A-B': 901 }).of(key)).toEqual([]);
  });
  it('says nothing once it is answered that it cannot be measured', () => {
    const made = job();
    ask(made, item('reading', readingId('A-B')));
    made.add('reading.answer', { reading: readingId('A-B'), answer: 'could-not', reason: 'boat sold' });
    expect(made.of(key)).toEqual([]);
  });
  it('stops at what is still open, each at its step, in the words of the shop', () => {
    const made = job();
    const id = ask(made, item('reading', readingId('A-B'), 'to the outside of the rail'), item('question', 'rain'));
    expect(made.of(key)).toMatchObject([
      { severity: 'stop', slot: 'A-B', basis: id, numbers: { note: 'to the outside of the rail' } },
      { severity: 'stop', slot: 'rain', numbers: { note: 'please' }, piece: pieceId() },
    ]);
  });
  it('is asked again by a second asking', () => {
    const made = job();
    ask(made, item('reading', readingId('A-B')));
    made.take('A-B', 901);
    ask(made, item('reading', readingId('A-B')));
    expect(made.of(key)).toHaveLength(1);
  });
  it('has no step for something the job does not hold', () => {
    const made = job();
    ask(made, item('shot', 'no such picture'));
    expect(made.of(key)).toMatchObject([{ slot: null }]);
  });
});
