import { describe, expect, it } from 'vitest';
import { Job, pieceId } from './build.ts';

const key = 'missing-answer';
function job(choice: string | null, needed = true): Job {
  const made = new Job().piece({ questions: [{ slot: 'rain', needed }] });
  if (choice !== null) made.add('question.answer', { piece: pieceId(), slot: 'rain', choice, text: '' });
  return made;
}

describe(key, () => {
  it('says nothing about a choice that was made', () => {
    expect(job('yes').findings()).toEqual([]);
  });
  it('says nothing when there is none here', () => {
    expect(job('none-here').findings()).toEqual([]);
  });
  it('leaves "could not tell" to unsure-choice', () => {
    expect(job('could-not-tell').of(key)).toEqual([]);
  });
  it('notes an open choice that was only wished for', () => {
    expect(job(null, false).of(key)).toMatchObject([{ severity: 'note' }]);
  });
  it('stops at an open choice the cloth is cut by', () => {
    expect(job(null).of(key)).toMatchObject([
      {
        severity: 'stop',
        slot: 'rain',
        subjects: [
          { on: 'question', id: 'rain' },
          { on: 'piece', id: pieceId() },
        ],
      },
    ]);
  });
});
