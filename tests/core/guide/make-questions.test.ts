import { describe, expect, it } from 'vitest';
import * as questions from '../../../src/core/guide/pieces/make-questions.ts';
import * as words from '../../../src/text/en/guides/common.ts';

const steps = Object.values(questions).filter((one) => typeof one !== 'function');
/** `dock-side` has its words under dockSide. */
const camel = (slot: string): string => slot.replace(/-./g, ([, letter = '']) => letter.toUpperCase());

describe('the questions every piece may ask', () => {
  it('are each asked under a slot of their own, and decided by another of them', () => {
    const choices = new Map(steps.map((step) => [step.slot, step.choices]));
    expect(choices.size).toBe(steps.length);
    for (const { when } of steps)
      for (const choice of when?.is ?? []) expect(choices.get(when?.question ?? '')).toContain(choice);
  });

  it('have words for themselves and every choice, and there are no other words', () => {
    const known = new Map(Object.entries(words));
    expect([...known.keys()].sort()).toEqual(steps.map(({ slot }) => camel(slot)).sort());
    for (const { slot, choices } of steps)
      expect(Object.keys(known.get(camel(slot))?.choices ?? {}).sort()).toEqual([...choices].sort());
  });
});
