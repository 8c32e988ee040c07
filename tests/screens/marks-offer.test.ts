import { afterEach, describe, expect, it } from 'vitest';
import { type Step, stepsOf } from '../../src/core/guide/index.ts';
import { told, wantsMarks } from '../../src/screens/owner/told.ts';
import { owner } from '../core/check/build.ts';
import { guideNamed } from '../core/check/demo-bow.ts';
import { Measured } from '../core/check/measured.ts';

const shade = guideNamed('tension-shade');
const SLOTS = shade.walk.flatMap(({ on, slot }) => (on === 'reading' ? [slot] : []));
const at = ({ job, piece }: Measured, slot: string): boolean => {
  const sheet = job.sheet();
  const step = stepsOf(sheet, piece.id).find(({ key }) => key === slot) as Step;
  return wantsMarks(sheet, piece.id, step);
};

describe('marks before an owner measures', () => {
  afterEach(() => {
    told.value = null;
  });
  it('are offered before the first measurement or picture, not before a question', () => {
    const fresh = new Measured(shade, { who: owner, open: SLOTS });
    expect([at(fresh, 'A-B'), at(fresh, 'photo-mounts'), at(fresh, 'over')]).toEqual([true, true, false]);
  });
  it('are offered once, and to nobody who has begun', () => {
    const fresh = new Measured(shade, { who: owner, open: SLOTS });
    told.value = [fresh.piece.id];
    expect(at(fresh, 'A-B')).toBe(false);
    told.value = [];
    expect(at(fresh, 'A-B')).toBe(true);
    fresh.read('A-B');
    expect(at(fresh, 'A-C')).toBe(false);
  });
});
