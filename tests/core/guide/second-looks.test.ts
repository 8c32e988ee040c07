import { describe, expect, it } from 'vitest';
import { check } from '../../../src/core/check/index.ts';
import { looksOf, secondLooks, stepsOf } from '../../../src/core/guide/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { FACT_KINDS } from '../../../src/core/job/index.ts';
import { installer, Job, owner, pointId, readingId, uuid } from '../check/build.ts';
import { guideNamed } from '../check/demo-bow.ts';
import { EFFORTS } from '../check/efforts.ts';
import { Measured } from '../check/measured.ts';

const shade = guideNamed('tension-shade');
const looks = (job: Job) => secondLooks(job.sheet(), check(job.sheet()));
const slots = (measured: Measured) => measured.names(looks(measured.job).map(({ reading }) => ({ id: reading })));
const cases = guides.flatMap((guide) =>
  (EFFORTS[guide.kind] ?? []).map(({ answers }) => ({
    name: `${guide.kind} ${JSON.stringify(answers)}`,
    guide,
    answers,
  })),
);

describe('second looks', () => {
  it('are none for an installer beyond what nothing else checks', () => {
    expect(looks(new Measured(shade, { who: installer }).job)).toEqual([]);
  });
  it('are none before the round is walked', () => {
    expect(slots(new Measured(shade, { who: owner, open: ['h-D'] }))).toEqual([]);
  });
  it.each(cases)('$name: everything needed, in the order of the walk', ({ guide, answers }) => {
    const measured = new Measured(guide, { who: owner, answers });
    const walk = stepsOf(measured.job.sheet(), measured.piece.id).flatMap((step) =>
      step.on === 'reading' && step.reading.needed && !FACT_KINDS.has(step.reading.kind) ? [step.key] : [],
    );
    expect(slots(measured)).toEqual(walk);
    for (const slot of walk) measured.read(slot);
    expect(slots(measured)).toEqual([]);
  });
  it('are taken from the other end where the tape has two', () => {
    const measured = new Measured(shade, { who: owner });
    const [tape, ...others] = looks(measured.job);
    expect(tape).toEqual({ piece: measured.piece.id, reading: measured.reading('A-B'), look: 2, fromOtherEnd: true });
    expect(others.find(({ reading }) => reading === measured.reading('h-A'))?.fromOtherEnd).toBe(false);
  });
  it('ask for what a change of the answers brings, and no more for what it takes away', () => {
    const measured = new Measured(guideNamed('cushion'), { who: owner, answers: { corners: 'rounded' } });
    expect(slots(measured)).toContain('radius');
    measured.job.add('question.answer', { piece: measured.piece.id, slot: 'corners', choice: 'square', text: '' });
    expect(slots(measured)).not.toContain('radius');
  });
  it('ask for a point that was added', () => {
    const readings = ['A-B', 'B-C', 'A-C'];
    const job = new Job({ who: owner }).piece({
      flat: true,
      points: { A: [0, 0, 0], B: [2000, 0, 0], C: [0, 1500, 0] },
      sides: { C: ['port'] },
      readings,
    });
    job.takes({ 'A-B': 2000, 'B-C': 2500, 'A-C': 1500 });
    const point = { id: pointId('D'), label: 'D', slot: null, role: 'edge', sides: ['port'], nominal: [1500, 1500, 0] };
    job.add('point.add', { piece: uuid('piece piece'), point });
    for (const from of ['A', 'B']) {
      const reading = { id: readingId(`${from}-D`), slot: null, kind: 'straight', points: [pointId(from), point.id] };
      job.add('reading.add', { piece: uuid('piece piece'), reading: { ...reading, needed: true } });
    }
    expect(looks(job)).toEqual([]);
    job.takes({ 'A-D': Math.hypot(1500, 1500), 'B-D': Math.hypot(500, 1500) });
    expect(looks(job).map(({ reading }) => reading)).toEqual([...readings, 'A-D', 'B-D'].map(readingId));
  });
});

describe('third looks', () => {
  const twice = (added: number): Measured => {
    const measured = new Measured(shade, { who: owner });
    for (const slot of slots(measured)) measured.read(slot, slot === 'A-C' ? { added: { 'A-C': added } } : {});
    return measured;
  };
  it('are none where both agree within what the tape explains', () => {
    expect(looks(twice(8).job)).toEqual([]);
  });
  it('are asked where the two differ, after every second, from the end of the first', () => {
    const measured = twice(304.8);
    const reading = measured.reading('A-C');
    expect(looks(measured.job)).toEqual([{ piece: measured.piece.id, reading, look: 3, fromOtherEnd: false }]);
  });
  it('settle it where two of three agree: no doubt is left, and no look is lost', () => {
    const measured = twice(304.8).read('A-C');
    const sheet = measured.job.sheet();
    const reading = sheet.readings.find(({ slot }) => slot === 'A-C');
    expect(looks(measured.job)).toEqual([]);
    expect(check(sheet).filter(({ rule }) => rule === 'takes-disagree' || rule === 'reading-doubted')).toEqual([]);
    expect(reading && looksOf(reading)).toHaveLength(3);
    expect(reading?.value).toBeCloseTo(measured.length('A-C'), -1);
  });
  it('leave the doubt to the shop where all three differ', () => {
    const measured = twice(304.8).read('A-C', { added: { 'A-C': -500 } });
    expect(looks(measured.job)).toEqual([]);
    expect(check(measured.job.sheet()).map(({ rule }) => rule)).toContain('takes-disagree');
  });
  it('are asked where a look the shop wanted stands against two that agreed', () => {
    const measured = twice(0).read('A-C', { added: { 'A-C': 304.8 } });
    expect(slots(measured)).toEqual(['A-C']);
    expect(slots(measured.read('A-C'))).toEqual([]);
  });
});
