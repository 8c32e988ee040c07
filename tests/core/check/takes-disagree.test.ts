import { describe, expect, it } from 'vitest';
import { Job, owner, readingId } from './build.ts';

const key = 'takes-disagree';
const job = (who = {}) => new Job(who).piece({ points: { A: null, B: null }, readings: ['A-B'] });
const taken = (...values: number[]) => {
  const made = job();
  for (const value of values) made.take('A-B', value);
  return made;
};

describe(key, () => {
  it('says nothing about one take', () => {
    expect(taken(3000).of(key)).toEqual([]);
  });
  it('says nothing about takes that agree to the millimetre', () => {
    expect(taken(3000, 3000, 3001).of(key)).toEqual([]);
  });
  // 3.3 · √2 · (1 + 0.3 · 3) = 8.87 mm.
  it('says nothing just inside what the tape explains', () => {
    expect(taken(3000, 3008).of(key)).toEqual([]);
  });
  it('gives an owner twice the room', () => {
    const made = job({ who: owner });
    made.take('A-B', 3000);
    made.take('A-B', 3016);
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing when the odd one is struck out', () => {
    const made = job();
    made.take('A-B', 3000);
    made.add('take.strike', { take: made.take('A-B', 3300), reason: 'wrong foot' });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing once two of three agree and the last is one of them', () => {
    expect(taken(3300, 3000, 3001).of(key)).toEqual([]);
    expect(taken(3000, 3300, 3001).of(key)).toEqual([]);
  });
  it('doubts three that all differ', () => {
    expect(taken(3000, 3300, 2000).of(key)).toMatchObject([{ severity: 'doubt', numbers: { takes: 3, before: 1 } }]);
  });
  it('takes a person at their word about how sure they are', () => {
    const made = job();
    made.take('A-B', 3000, { sigma: 10 });
    made.take('A-B', 3040, { sigma: 10 });
    expect(made.of(key)).toEqual([]);
  });
  it('doubts takes further apart than that, and names the two', () => {
    const made = job();
    const first = made.take('A-B', 3000);
    made.take('A-B', 3003);
    const third = made.take('A-B', 3025);
    const [finding, ...more] = made.of(key);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      severity: 'doubt',
      numbers: { difference: 25, low: 3000, high: 3025, takes: 3, before: 2, quantity: 'length' },
      subjects: [{ id: readingId('A-B') }, { id: first }, { id: third }],
    });
    expect(finding?.numbers.tolerance).toBeCloseTo(3.3 * Math.hypot(1.9, 1.9075), 9);
  });
  it('compares angles as angles', () => {
    const made = new Job().piece({ points: { A: null }, readings: [{ name: 'lean', kind: 'lean', points: ['A'] }] });
    const degrees = (text: string) =>
      made.add('take.add', { reading: readingId('lean'), text, unit: 'deg', value: (Number(text) * Math.PI) / 180 });
    degrees('15');
    degrees('17');
    expect(made.of(key)).toEqual([]);
    degrees('30');
    expect(made.of(key)).toMatchObject([{ numbers: { quantity: 'angle' } }]);
  });
});
