import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stateOf } from '../../../src/core/packet/drawing/index.ts';
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
