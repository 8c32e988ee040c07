import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/core/job/index.ts';
import { Job, owner, pieceId, readingId, runId } from './build.ts';

const key = 'disputed';
function job(): Job {
  const runs = [{ name: 'edge', points: ['A', 'B'] }];
  return new Job().piece({ points: { A: null, B: null }, readings: ['A-B'], questions: [{ slot: 'rain' }], runs });
}
/** Two entries that did not know of each other. */
function atOnce(made: Job, kind: string, first: object, second: object): Job {
  const seen = [made.entries.at(-1)?.id ?? ''];
  const apart: Partial<Entry> = { seen };
  made.add(kind, first, apart);
  made.add(kind, second, { ...apart, who: owner });
  return made;
}
const rain = (choice: string) => ({ piece: pieceId(), slot: 'rain', choice, text: '' });

describe(key, () => {
  it('says nothing about one answer', () => {
    const made = job();
    made.add('question.answer', rain('yes'));
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about an answer that replaced the one before it', () => {
    const made = job();
    made.add('question.answer', rain('yes'));
    made.add('question.answer', rain('no'));
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing when both gave the same answer', () => {
    expect(atOnce(job(), 'question.answer', rain('yes'), rain('yes')).of(key)).toEqual([]);
  });
  it('says nothing about two takes: takes add up', () => {
    const value = { reading: readingId('A-B'), text: '1000', unit: 'mm', value: 1000 };
    expect(atOnce(job(), 'take.add', value, value).of(key)).toEqual([]);
  });
  it('says nothing once somebody has answered again', () => {
    const made = atOnce(job(), 'question.answer', rain('yes'), rain('no'));
    made.add('question.answer', rain('no'), { seen: made.entries.slice(-2).map(({ id }) => id) });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about an answer that a value replaced', () => {
    const made = job();
    made.add('reading.answer', { reading: readingId('A-B'), answer: 'could-not', reason: '' });
    expect(made.takes({ 'A-B': 900 }).of(key)).toEqual([]);
  });

  it('doubts two answers to one question, and rests on both', () => {
    const made = atOnce(job(), 'question.answer', rain('yes'), rain('no'));
    const ids = made.entries.slice(-2).map(({ id }) => id);
    expect(made.of(key)).toMatchObject([
      {
        severity: 'doubt',
        piece: pieceId(),
        slot: 'rain',
        basis: ids.sort().join('+'),
        numbers: { about: 'question', answers: 2 },
      },
    ]);
  });
  it('doubts two details of a run and of the job', () => {
    const line = (value: string) => ({ run: runId('edge'), field: 'line', value });
    expect(atOnce(job(), 'run.detail', line('boat-edge'), line('finished-edge')).of(key)).toMatchObject([
      {
        slot: 'edge',
        subjects: [
          { on: 'run', id: runId('edge') },
          { on: 'detail', id: 'line' },
        ],
      },
    ]);
    const boat = (value: string) => ({ field: 'boat', value });
    expect(atOnce(job(), 'job.detail', boat('Tern'), boat('Heron')).of(key)).toMatchObject([
      { id: `${key}:boat`, piece: null, slot: null, subjects: [{ on: 'detail', id: 'boat' }] },
    ]);
  });
  it('doubts a value beside the answer that there is none', () => {
    const made = job();
    const seen = [made.entries.at(-1)?.id ?? ''];
    made.add('take.add', { reading: readingId('A-B'), text: '900', unit: 'mm', value: 900 }, { seen });
    made.add('reading.answer', { reading: readingId('A-B'), answer: 'none-here', reason: '' }, { seen, who: owner });
    expect(made.of(key)).toMatchObject([{ numbers: { about: 'reading', first: 900, second: 'none-here' } }]);
  });
});
