import { describe, expect, it } from 'vitest';
import { gates } from '../../../src/core/check/index.ts';
import { distances, installer, Job, owner, readingId } from './build.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const key = 'missing-second-look';
const BOX: Record<string, [number, number, number]> = {
  A: [0, 0, 0],
  B: [2000, 0, 0],
  C: [2000, 1500, 0],
  D: [0, 1500, 0],
};
const LENGTHS = distances(BOX);
const box = (who = owner): Job =>
  new Job({ who }).piece({
    points: BOX,
    flat: true,
    sides: { C: ['port'], D: ['port'] },
    readings: [...Object.keys(LENGTHS), { name: 'wished', points: ['A', 'B'], needed: false }],
  });
const asked = (job: Job): (string | undefined)[] => job.of(key).map(({ subjects }) => subjects[0]?.id);

describe(`${key}, quiet`, () => {
  it('says nothing where an installer measured', () => {
    expect(asked(box(installer).takes(LENGTHS))).toEqual([]);
  });
  it('says nothing while something needed is not read yet: the round comes first', () => {
    const { 'C-D': last, ...others } = LENGTHS;
    expect(last).toBe(2000);
    expect(asked(box().takes(others))).toEqual([]);
  });
  it('says nothing of what the cloth does not need, nor of what was declared', () => {
    const ids = asked(box().takes({ ...LENGTHS, wished: 2000 }));
    expect(ids).not.toContain(readingId('wished'));
    expect(ids).toHaveLength(6);
  });
  it('says nothing once everything was read twice, whether it agrees or not', () => {
    expect(asked(box().takes(LENGTHS).takes(LENGTHS))).toEqual([]);
    expect(
      asked(
        box()
          .takes(LENGTHS)
          .takes({ ...LENGTHS, 'A-B': 2300 }),
      ),
    ).toEqual([]);
  });
  it('leaves to the graver rule what nothing else would check', () => {
    const job = new Measured(guideNamed('tension-shade'), { who: owner }).job;
    const looks = job.all().filter(({ rule }) => rule === key || rule === 'reading-unchecked');
    const ids = looks.flatMap(({ subjects }) => subjects.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(10);
  });
});

describe(`${key}, loud`, () => {
  it('doubts each needed reading an owner took once, at its own step, and holds the gate', () => {
    const job = box().takes(LENGTHS);
    expect(asked(job).sort()).toEqual(Object.keys(LENGTHS).map(readingId).sort());
    expect(job.of(key)[0]).toMatchObject({ severity: 'doubt', slot: 'A-B' });
    expect(gates(job.sheet(), job.all()).leave.clear).toBe(false);
    job.takes(LENGTHS);
    expect(gates(job.sheet(), job.all()).leave.clear).toBe(true);
  });
  it('wants another look where the second was struck out', () => {
    const job = box().takes(LENGTHS).takes(LENGTHS);
    job.add('take.strike', { take: job.entries.at(-1)?.id, reason: 'only typed' });
    expect(asked(job)).toHaveLength(1);
  });
  it('wants a third look at what nothing else checks once two readings of the piece were found off, and only then', () => {
    const heights = ['h-A', 'h-B', 'h-C', 'h-D'];
    const measured = new Measured(guideNamed('tension-shade'), { who: owner });
    const third = (): string[] =>
      measured.job.of(key).flatMap(({ subjects, numbers }) => (numbers.looks === 3 ? measured.names(subjects) : []));
    for (const reading of measured.job.sheet().readings)
      if (reading.slot !== null && reading.needed) measured.read(reading.slot);
    expect(third()).toEqual([]);
    /** A look that is off, and one more that agrees with the two before. */
    const slip = (slot: string): void => {
      const reading = measured.reading(slot);
      measured.job.add('take.add', { reading, ...measured.job.typed(measured.length(slot) + 300) });
      measured.read(slot);
    };
    slip('A-B');
    expect(third()).toEqual([]);
    slip('C-D');
    expect(third().sort()).toEqual(heights);
    for (const slot of heights) measured.read(slot);
    expect(third()).toEqual([]);
  });
  it('may be taken on with a reason, as long as nothing else is read', () => {
    const job = box().takes(LENGTHS);
    for (const { id, basis } of job.of(key))
      job.add('finding.accept', { finding: id, basis, reason: 'the boat has left' });
    expect(gates(job.sheet(), job.all()).leave.clear).toBe(true);
  });
});
