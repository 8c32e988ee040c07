import { describe, expect, it } from 'vitest';
import { Job, pieceId } from './build.ts';
import { photographed } from './pictures.ts';

const key = 'missing-photo';
const job = (needed = true) => new Job().piece({ points: { A: null }, shots: [{ slot: 'bow', points: [], needed }] });

describe(key, () => {
  it('says nothing when there is a picture', () => {
    const taken = job();
    photographed(taken, 'bow');
    expect(taken.of(key)).toEqual([]);
  });
  it('says nothing about a picture that was only wished for', () => {
    expect(job(false).of(key)).toEqual([]);
  });
  it('says nothing when a picture stands beside an answer', () => {
    const both = job();
    both.add('photo.answer', { piece: pieceId(), slot: 'bow', answer: 'could-not', reason: 'flat battery' });
    photographed(both, 'bow');
    expect(both.of(key)).toEqual([]);
  });
  it('only notes one that could not be taken', () => {
    const answered = job();
    answered.add('photo.answer', { piece: pieceId(), slot: 'bow', answer: 'could-not', reason: 'flat battery' });
    expect(answered.of(key)).toMatchObject([
      { severity: 'note', numbers: { answer: 'could-not', reason: 'flat battery' } },
    ]);
  });
  it('doubts a needed picture that is not there', () => {
    expect(job().of(key)).toMatchObject([
      {
        severity: 'doubt',
        slot: 'bow',
        id: `${key}:${[pieceId(), 'bow'].sort().join('+')}`,
        numbers: { answer: null },
      },
    ]);
  });
  it('tells the same step of two pieces apart', () => {
    const two = job().piece({ name: 'second', shots: [{ slot: 'bow', points: [] }] });
    expect(new Set(two.of(key).map((finding) => finding.id)).size).toBe(2);
  });
});
