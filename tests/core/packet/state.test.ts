import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, heads } from '../../../src/core/job/index.ts';
import { stateOf, stateOfPiece } from '../../../src/core/packet/drawing/index.ts';
import { Scribe } from './sample.ts';

const logbook = () => {
  const scribe = new Scribe();
  scribe.add('job.open', { name: 'A job', system: 'imperial', fraction: 16 });
  for (const value of ['one', 'two', 'three']) scribe.add('job.detail', { field: 'boat', value });
  return scribe.entries;
};

describe('the mark of a state', () => {
  it('is the same on every device that has the same entries, in whatever order they came', () => {
    const entries = logbook();
    const mark = stateOf(entries);
    fc.assert(
      fc.property(fc.shuffledSubarray(entries, { minLength: entries.length }), (mixed) => {
        expect(stateOf(mixed)).toEqual(mark);
      }),
    );
    expect(mark).toMatchObject({ entries: 4, seal: expect.stringMatching(/^[0-9a-f]{64}$/) });
  });

  it('is another as soon as one entry is missing or says something else', () => {
    const entries = logbook();
    const { seal } = stateOf(entries);
    expect(stateOf(entries.slice(1)).seal).not.toBe(seal);
    const changed = entries.map((entry, i) =>
      i === 2 ? { ...entry, payload: { ...entry.payload, value: '2' } } : entry,
    );
    expect(stateOf(changed).seal).not.toBe(seal);
  });

  it('of no entries has no date', () => {
    expect(stateOf([]).latest).toBeNull();
  });
});

describe('the state of a piece that was cleared to cut', () => {
  const cleared = () => {
    const scribe = new Scribe();
    scribe.add('job.open', { name: 'A job', system: 'imperial', fraction: 16 });
    const judged = scribe.entries.slice();
    const piece = scribe.newId();
    scribe.add('piece.clear', { piece, judged: heads(judged), basis: 'rules' });
    return { scribe, judged, piece };
  };

  it('names the state that was judged, not the one with the clearance in it', () => {
    const { scribe, judged, piece } = cleared();
    const of = stateOfPiece(scribe.entries, fold(scribe.entries), piece);
    expect(of.judged).toEqual(stateOf(judged));
    expect(of.seal).toBe(stateOf(scribe.entries).seal);
  });

  it('names none for another piece, and none once something has changed', () => {
    const { scribe, piece } = cleared();
    expect(stateOfPiece(scribe.entries, fold(scribe.entries), scribe.newId()).judged).toBeNull();
    scribe.add('job.detail', { field: 'boat', value: 'another' });
    expect(stateOfPiece(scribe.entries, fold(scribe.entries), piece).judged).toBeNull();
  });
});
