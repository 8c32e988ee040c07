import { describe, expect, it } from 'vitest';
import { Job, pieceId } from './build.ts';

const key = 'missing-cord-exit';
const job = (choice: string): Job =>
  new Job().piece({ questions: [{ slot: 'cord' }, { slot: 'in-the-way' }] }).answers({ cord: choice });

describe(key, () => {
  it.each(['no-cord', 'none-here', 'could-not-tell'])('says nothing after %s', (choice) => {
    expect(job(choice).of(key)).toEqual([]);
  });
  it('says nothing where nobody was asked, or nobody answered', () => {
    expect(new Job().piece({}).of(key)).toEqual([]);
    expect(new Job().piece({ questions: [{ slot: 'cord' }] }).of(key)).toEqual([]);
  });
  it('says nothing of a cord that leaves where the piece ends', () => {
    const made = job('aft');
    const declared = made.entries.find(({ kind }) => kind === 'piece.add');
    if (declared) declared.payload.kind = 'open-bow';
    expect(made.of(key)).toEqual([]);
    made.answers({ cord: 'port' });
    expect(made.of(key)).toHaveLength(1);
  });
  it('says nothing once a way out is recorded', () => {
    expect(job('port').thing('cord-exit', 'E1').of(key)).toEqual([]);
  });
  it.each(['port', 'starboard', 'aft', 'forward'])('doubts a cord that leaves %s with no way out', (side) => {
    expect(job(side).thing('cleat', 'C1').of(key)).toMatchObject([
      {
        severity: 'doubt',
        slot: 'in-the-way',
        subjects: [
          { on: 'question', id: 'cord' },
          { on: 'piece', id: pieceId() },
        ],
        numbers: { side },
      },
    ]);
  });
  it('leads to the question itself where the walk has no list of things in the way', () => {
    const made = new Job().piece({ questions: [{ slot: 'cord' }] }).answers({ cord: 'aft' });
    expect(made.of(key)).toMatchObject([{ slot: 'cord' }]);
  });
});
