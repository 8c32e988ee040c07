import { describe, expect, it } from 'vitest';
import { stepsOf } from '../../src/core/guide/index.ts';
import { fold } from '../../src/core/job/index.ts';
import { progressOf, whereToGoOn } from '../../src/screens/owner/progress.ts';
import { AB, begunPhone, PIECE } from '../core/job/support.ts';

const place = (step: string) => ({ job: PIECE, piece: PIECE, step });

describe('where an owner goes on', () => {
  const phone = begunPhone();
  const fresh = fold(phone.entries);
  const keys = stepsOf(fresh, PIECE).map(({ key }) => key);
  const reading = stepsOf(fresh, PIECE).find((step) => step.on === 'reading')?.key ?? '';

  it('is the first step where nobody was anywhere yet, or where the place is unknown', () => {
    expect(keys.length).toBeGreaterThan(1);
    expect(whereToGoOn(fresh, null)?.step.key).toBe(keys[0]);
    expect(whereToGoOn(fresh, place('gone'))?.step.key).toBe(keys[0]);
  });
  it('is where the person was while that is open', () => {
    for (const key of keys) expect(whereToGoOn(fresh, place(key))?.step.key).toBe(key);
  });
  it('is the next open one where that is done, and nowhere when all is', () => {
    const later = begunPhone();
    later.does('take.add', { reading: AB, text: '40', unit: 'mm', value: 40 });
    const sheet = fold(later.entries);
    const open = keys.filter((key) => key !== reading);
    expect(open).toContain(whereToGoOn(sheet, place(reading))?.step.key);
    expect(progressOf(sheet, [])).toMatchObject({ tally: { measurements: { done: 1 } } });
    expect(whereToGoOn({ ...sheet, pieces: [] }, null)).toBeNull();
  });
});
