import { describe, expect, it } from 'vitest';
import type { Step, StepState } from '../../../src/core/guide/index.ts';
import { timeLeft } from '../../../src/core/guide/time-left.ts';

const steps = (on: Step['on'], state: StepState, count: number) => Array.from({ length: count }, () => ({ on, state }));

describe('how long is left', () => {
  it('is nothing where nothing is open', () => {
    expect(timeLeft([])).toMatchObject({ minutes: 0, marks: false });
    expect(timeLeft([...steps('reading', 'done', 9), ...steps('shot', 'answered-without-value', 2)]).minutes).toBe(0);
  });
  it('counts what is open and what is asked again, by kind', () => {
    const left = timeLeft([
      ...steps('reading', 'open', 8),
      ...steps('reading', 'done', 1),
      ...steps('shot', 'asked-again', 2),
      ...steps('question', 'open', 4),
      ...steps('run', 'open', 1),
    ]);
    expect(left).toEqual({ minutes: 30, open: { reading: 8, shot: 2, question: 4, run: 1 }, marks: false, looks: 0 });
  });
  it('has time for the marks before the first reading, and only then', () => {
    expect(timeLeft(steps('reading', 'open', 5))).toMatchObject({ minutes: 20, marks: true });
    expect(timeLeft([...steps('reading', 'open', 5), ...steps('reading', 'done', 1)]).minutes).toBe(10);
    expect(timeLeft(steps('question', 'open', 5))).toMatchObject({ minutes: 5, marks: false });
  });
});
