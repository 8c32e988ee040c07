import { describe, expect, it } from 'vitest';
import { type Finding, judge } from '../../../src/core/check/index.ts';
import { distances, installer, Job, owner, readingId } from './build.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured, type Place } from './measured.ts';

const key = 'reading-unchecked';
const [bow, shade] = [guideNamed('open-bow'), guideNamed('tension-shade')];
const HEIGHTS = ['h-A', 'h-B', 'h-C', 'h-D'];
const found = (job: Job): Finding[] => job.all().filter(({ rule }) => rule === key);
const named = (measured: Measured): string[] => found(measured.job).flatMap(({ subjects }) => measured.names(subjects));

const BOX: Record<string, [number, number, number]> = {
  A: [0, 0, 0],
  B: [2000, 0, 0],
  C: [2000, 1500, 0],
  D: [0, 1500, 0],
};
const LENGTHS = distances(BOX);
/** A flat box of which the readings given were taken. */
const box = (...names: string[]): Job => {
  const job = new Job().piece({ points: BOX, flat: true, readings: names, sides: { C: ['port'], D: ['port'] } });
  return job.takes(Object.fromEntries(names.map((name) => [name, LENGTHS[name] ?? 0])));
};

describe(`${key}, quiet`, () => {
  it('says nothing about a box with both diagonals', () => {
    expect(found(box(...Object.keys(LENGTHS)))).toEqual([]);
  });
  it('says nothing about the tapes of a bow cover, which check each other', () => {
    expect(named(new Measured(bow)).filter((slot) => slot !== 'h-G')).toEqual([]);
  });
  it('says nothing about stations along a run and its whole length, which check each other', () => {
    const names = named(new Measured(bow, { twice: ['h-G'] }));
    expect(names).toEqual([]);
  });
  it('says nothing once the heights were read a second time and agree, in whatever unit and by whom', () => {
    for (const who of [installer, owner])
      for (const system of ['imperial', 'metric'] as const)
        expect(named(new Measured(shade, { who, system, twice: HEIGHTS }))).toEqual([]);
  });
  it('says nothing while a needed reading is open: that is said instead', () => {
    const rules = new Measured(shade, { open: ['h-D'] }).job.all().map(({ rule }) => rule);
    expect(rules).toContain('missing-reading');
    expect(rules).not.toContain(key);
  });
  it('says nothing about what is weakly checked: what could hide there is another rule', () => {
    const place = (slot: string, [x, y, z]: Place): Place => [x, y, slot === 'C' ? z + 200 : z];
    const measured = new Measured(shade, { place });
    const controls = judge(measured.job.sheet()).pieces.get(measured.piece.id)?.adjustment;
    const readings = controls?.state === 'solved' ? controls.solution.readings : [];
    const weak = readings.filter(({ control }) => control === 'weakly checked');
    expect(measured.names(weak).sort()).toEqual(HEIGHTS);
    expect(named(measured)).toEqual([]);
  });
  it('says nothing about readings the cloth does not depend on', () => {
    const readings = Object.keys(LENGTHS).map((name) => ({ name, needed: name !== 'B-D' && name !== 'C-D' }));
    const job = new Job().piece({ points: BOX, flat: true, readings: [...readings, { name: 'E-A', needed: false }] });
    expect(found(job.takes(LENGTHS).takes({ 'E-A': 700 }))).toEqual([]);
  });
  it('says nothing about what was declared, not taped', () => {
    const flat = { name: 'flat', kind: 'flat' as const, points: ['A', 'B', 'C', 'D'] };
    const job = new Job().piece({ points: BOX, readings: [...Object.keys(LENGTHS), flat] });
    job.takes(LENGTHS).take('flat', 0);
    expect(found(job).map(({ subjects }) => subjects[0]?.id)).not.toContain(readingId('flat'));
  });
  it('is silent where two takes contradict each other: they are settled first', () => {
    const measured = new Measured(shade, { twice: HEIGHTS }).read('h-C', { added: { 'h-C': 50 } });
    const rules = measured.job.all().map(({ rule }) => rule);
    expect(rules).toContain('takes-disagree');
    expect(rules).not.toContain(key);
  });
});

describe(`${key}, loud`, () => {
  it.each([installer, owner])('wants the heights of a shade a second time, one by one (%o)', (who) => {
    const measured = new Measured(shade, { who });
    expect(named(measured)).toEqual(HEIGHTS);
    for (const [index, slot] of HEIGHTS.entries()) {
      measured.read(slot);
      expect(named(measured)).toEqual(HEIGHTS.slice(index + 1));
    }
  });
  it('stops, at the step of the reading, and rests on its takes', () => {
    const measured = new Measured(shade, { twice: ['h-A', 'h-B', 'h-C'] });
    const id = measured.reading('h-D');
    expect(found(measured.job)).toMatchObject([{ severity: 'stop', slot: 'h-D', subjects: [{ on: 'reading', id }] }]);
    const takes = measured.job
      .sheet()
      .readings.find((reading) => reading.id === id)
      ?.takes.map((take) => take.id);
    expect(found(measured.job)[0]?.basis).toBe(takes?.join('+'));
  });
  it('is not settled by a second take that was struck out', () => {
    const measured = new Measured(shade, { twice: ['h-A', 'h-B', 'h-C'] }).read('h-D');
    expect(named(measured)).toEqual([]);
    const last = measured.job.entries.at(-1)?.id;
    measured.job.add('take.strike', { take: last, reason: 'not read, only typed' });
    expect(named(measured)).toEqual(['h-D']);
  });
  it('is not settled by a second take that contradicts, even where somebody accepted that', () => {
    const measured = new Measured(shade, { twice: ['h-A', 'h-B', 'h-D'] }).read('h-C', { added: { 'h-C': 50 } });
    const [differ] = measured.job.all().filter(({ rule }) => rule === 'takes-disagree');
    measured.job.add('finding.accept', { finding: differ?.id, basis: differ?.basis, reason: 'the pole leant' });
    expect(named(measured)).toContain('h-C');
  });
  it('wants every side of a box with one diagonal a second time: nothing is spare', () => {
    const names = ['A-B', 'B-C', 'C-D', 'A-D', 'A-C'];
    const job = box(...names);
    const ids = (): (string | undefined)[] => found(job).map(({ subjects }) => subjects[0]?.id);
    expect(ids().sort()).toEqual(names.map(readingId).sort());
    job.take('A-C', (LENGTHS['A-C'] ?? 0) + 1);
    expect(ids()).not.toContain(readingId('A-C'));
    expect(ids()).toHaveLength(4);
  });
  it('wants a girth a second time along which no fasteners were measured', () => {
    const over = { name: 'over', kind: 'girth' as const, points: ['A', 'B'] };
    const job = new Job().piece({ points: BOX, flat: true, readings: [...Object.keys(LENGTHS), over] });
    job.takes({ ...LENGTHS, over: 2060 });
    expect(found(job).map(({ subjects }) => subjects[0]?.id)).toEqual([readingId('over')]);
    job.take('over', 2062);
    expect(found(job)).toEqual([]);
  });
  it('wants a reading a second time that reaches no point of the shape', () => {
    const measured = new Measured(bow);
    expect(named(measured)).toEqual(['h-G']);
    expect(named(measured.read('h-G'))).toEqual([]);
  });
});
