import { describe, expect, it } from 'vitest';
import { Job, pieceId, pointId } from './build.ts';
import { photographed } from './pictures.ts';

const key = 'missing-mark';
const job = (needed = true) =>
  new Job().piece({ points: { A: null, B: null }, shots: [{ slot: 'bow', points: ['A', 'B'], needed }] });

describe(key, () => {
  it('says nothing while there is no picture: that is missing-photo', () => {
    expect(
      job()
        .findings()
        .map((finding) => finding.rule),
    ).toEqual(['missing-photo']);
  });
  it('says nothing when every point is marked', () => {
    const marked = job();
    photographed(marked, 'bow', ['A', 'B']);
    expect(marked.findings()).toEqual([]);
  });
  it('says nothing when two pictures show the points between them', () => {
    const two = job();
    photographed(two, 'bow', ['A']);
    photographed(two, 'bow', ['B'], 'again');
    expect(two.of(key)).toEqual([]);
  });
  it('says nothing about a shot without points', () => {
    const plain = new Job().piece({ shots: [{ slot: 'bow', points: [] }] });
    photographed(plain, 'bow');
    expect(plain.of(key)).toEqual([]);
  });
  it('only notes it for a picture that was only wished for', () => {
    const wished = job(false);
    photographed(wished, 'bow', ['A']);
    expect(wished.of(key).map((finding) => finding.severity)).toEqual(['note']);
  });
  it('doubts each point that is not marked, one by one', () => {
    const half = job();
    const photo = photographed(half, 'bow', ['A']);
    expect(half.of(key)).toMatchObject([{ severity: 'doubt', slot: 'bow', basis: photo, numbers: { photos: 1 } }]);
    expect(half.of(key)[0]?.id).toBe(`${key}:${[pieceId(), pointId('B'), 'bow'].sort().join('+')}`);
  });
});
