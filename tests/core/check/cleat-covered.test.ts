import { describe, expect, it } from 'vitest';
import { type Job, thingId } from './build.ts';
import { deck, toDeck } from './deck.ts';

const key = 'cleat-covered';
type Place = [number, number, number];
const QUESTIONS = ['berth', 'cleats'];
/** Well inside the edge, on it, and outside it. */
const [INSIDE, NEAR, OUTSIDE]: [Place, Place, Place] = [
  [700, 200, 0],
  [1045, 490, 0],
  [1300, 900, 0],
];

function thing(kind: string, facts: Record<string, string>, place: Place | null = null, questions = {}): Job {
  const job = deck([], QUESTIONS).answers({ berth: 'water', ...questions });
  if (place) job.placeThing('C1', place, toDeck(place, ['W1', 'W2', 'F']));
  return job.thing(kind, 'C1', facts, place !== null);
}

describe(key, () => {
  it.each([
    ['a cleat with a cut-out', 'cleat', { treatment: 'cut-out' }, INSIDE, {}],
    ['a cleat outside that lies outside', 'cleat', { treatment: 'left-free' }, OUTSIDE, {}],
    ['a cleat outside that lies about on the line', 'cleat', { treatment: 'left-free' }, NEAR, {}],
    ['a cleat outside that has no place', 'cleat', { treatment: 'left-free' }, null, {}],
    ['a covered cleat that nobody needs', 'cleat', { treatment: 'covered', needed: 'no' }, INSIDE, {}],
    ['a covered cleat of a boat on a lift', 'cleat', { treatment: 'covered' }, INSIDE, { berth: 'lift' }],
    ['a covered hatch', 'hatch', { treatment: 'covered' }, INSIDE, {}],
    ['a covered light nobody must see', 'light', { treatment: 'covered' }, INSIDE, {}],
    ['a light that must be seen, with a cut-out', 'light', { treatment: 'cut-out', needed: 'yes' }, INSIDE, {}],
    ['a cleat without a word, all being cut out', 'cleat', {}, INSIDE, { cleats: 'cut-outs' }],
    ['a cleat without any word', 'cleat', {}, INSIDE, {}],
  ] as const)('says nothing about %s', (_, kind, facts, place, questions) => {
    expect(thing(kind, facts, place as Place | null, questions).of(key)).toEqual([]);
  });

  it('stops at one that is said to be needed and to lie under the cloth', () => {
    for (const kind of ['cleat', 'light'])
      expect(thing(kind, { treatment: 'covered', needed: 'yes' }, null, { berth: 'lift' }).of(key)).toMatchObject([
        { severity: 'stop', subjects: [{ on: 'obstruction', id: thingId('C1') }], numbers: { by: 'treatment', kind } },
      ]);
  });
  it('doubts it where one of the two is only taken from the answers for all', () => {
    expect(thing('cleat', { treatment: 'covered' }).of(key)).toMatchObject([
      { severity: 'doubt', numbers: { by: 'treatment' } },
    ]);
    expect(thing('cleat', { needed: 'yes' }, null, { cleats: 'under-cover' }).of(key)).toMatchObject([
      { severity: 'doubt', numbers: { by: 'treatment' } },
    ]);
  });
  it('doubts one that is called outside and lies inside the line round the piece', () => {
    const [finding, ...more] = thing('cleat', { treatment: 'left-free' }, INSIDE).of(key);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'doubt', numbers: { by: 'place', kind: 'cleat' } });
    // From 700, 200 to the straight from P (100, 1000) to T (2000, 0): |1000·600 - 1900·800| / √(1000² + 1900²).
    expect(finding?.numbers.depth).toBeCloseTo((1900 * 800 - 1000 * 600) / Math.hypot(1000, 1900), -1);
    expect(thing('cleat', {}, INSIDE, { cleats: 'outside' }).of(key)).toHaveLength(1);
  });
});
