import { describe, expect, it } from 'vitest';
import { check } from '../../../src/core/check/index.ts';
import { tallyOf } from '../../../src/core/guide/tally.ts';
import { owner } from '../check/build.ts';
import { guideNamed } from '../check/demo-bow.ts';
import { Measured } from '../check/measured.ts';

const shade = guideNamed('tension-shade');
const tally = ({ job }: Measured) => tallyOf(job.sheet(), check(job.sheet()));
const SLOTS = shade.walk.flatMap(({ on, slot }) => (on === 'reading' && !slot.startsWith('pole-') ? [slot] : []));

describe('what an owner is told is done', () => {
  it('counts measurements apart from pictures, answers and looks after the first', () => {
    const measured = new Measured(shade, { who: owner, open: SLOTS.slice(1) });
    expect(tally(measured).measurements).toEqual({ done: 1, leftOut: 0, all: 10 });
    expect(tally(measured).again).toEqual({ done: 0, all: 10, last: 0 });
    // No picture was taken: each was answered without one.
    const { done, leftOut, all } = tally(measured).photos;
    expect([done, leftOut]).toEqual([0, all]);
  });
  it('never falls while the round and the looks after it go on, a third look among them', () => {
    const measured = new Measured(shade, { who: owner, open: SLOTS });
    const seen = [tally(measured)];
    for (const slot of SLOTS) seen.push(tally(measured.read(slot)));
    measured.read('A-C', { added: { 'A-C': 304.8 } });
    seen.push(tally(measured));
    expect(tally(measured).again).toEqual({ done: 1, all: 10, last: 1 });
    seen.push(tally(measured.read('A-C')));
    for (const slot of SLOTS.filter((slot) => slot !== 'A-C')) seen.push(tally(measured.read(slot)));
    const last = seen.at(-1);
    expect(last?.measurements).toEqual({ done: 10, leftOut: 0, all: 10 });
    expect(last?.again).toMatchObject({ done: 10, all: 10 });
    for (const [i, now] of seen.entries()) {
      const before = seen[i - 1] ?? now;
      expect(now.measurements.all).toBe(10);
      expect(now.again.all).toBe(10);
      expect(now.measurements.done).toBeGreaterThanOrEqual(before.measurements.done);
      expect(now.again.done).toBeGreaterThanOrEqual(before.again.done);
      expect(now.whole.done).toBeGreaterThanOrEqual(before.whole.done);
    }
  });
  it('keeps what was measured when the shop asks for it again, and says what was left out', () => {
    const measured = new Measured(shade, { who: owner });
    const before = tally(measured).measurements;
    const piece = measured.piece.id;
    const item = { on: 'reading' as const, id: measured.reading('A-B'), note: '' };
    measured.job.add('ask.again', { piece, note: 'Please once more.', items: [item] });
    expect(measured.job.sheet().asks.flatMap(({ items }) => items.map(({ open }) => open))).toEqual([true]);
    expect(tally(measured).measurements).toEqual(before);
    const without = new Measured(shade, { who: owner, open: ['h-D'] });
    without.job.add('reading.answer', { reading: without.reading('h-D'), answer: 'could-not', reason: 'Too far out' });
    expect(tally(without).measurements).toEqual({ done: 9, leftOut: 1, all: 10 });
  });
  it('has a whole that is all of it', () => {
    const { whole, measurements, photos, answers, edges, again } = tally(new Measured(shade, { who: owner }));
    expect(whole.all).toBe(measurements.all + photos.all + answers.all + edges.all + again.all);
  });
  it('is of one piece where one is named', () => {
    const measured = new Measured(shade, { who: owner });
    const sheet = measured.job.sheet();
    expect(tallyOf(sheet, check(sheet), measured.piece.id)).toEqual(tally(measured));
    expect(tallyOf(sheet, check(sheet), 'another').whole.all).toBe(0);
  });
});
