import { describe, expect, it } from 'vitest';
import { Job, pieceId } from './build.ts';

const key = 'unsure-choice';
function job(choice: string | null): Job {
  const made = new Job().piece({ questions: [{ slot: 'rain' }] });
  if (choice !== null) made.add('question.answer', { piece: pieceId(), slot: 'rain', choice, text: 'ask the owner' });
  return made;
}

describe(key, () => {
  it.each(['yes', 'none-here', null])('says nothing when the answer is %s', (choice) => {
    expect(job(choice).of(key)).toEqual([]);
  });
  it('doubts a question nobody could tell, and passes on what was typed', () => {
    expect(job('could-not-tell').of(key)).toMatchObject([{ severity: 'doubt', numbers: { text: 'ask the owner' } }]);
  });
  it('falls silent when somebody answers after all', () => {
    const settled = job('could-not-tell');
    settled.add('question.answer', { piece: pieceId(), slot: 'rain', choice: 'no', text: '' });
    expect(settled.findings()).toEqual([]);
  });
});
