import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { distances, installer, Job, owner, pointId, readingId } from './build.ts';
import { Measured } from './measured.ts';

const key = 'point-floats';
type Place = [number, number, number];
const PLACES: Record<string, Place> = { A: [0, 0, 0], B: [2000, 0, 0], C: [900, 1500, 0], D: [1900, 1400, 300] };
const LENGTHS = distances(PLACES);
const POINTS = { A: null, B: null, C: null, D: null };
const BASE = ['A-B', 'A-C', 'B-C'];

/** Readings of D besides the triangle A, B, C; `taken` of them have a value. */
function job(flat: boolean, readings: readonly string[], taken = readings, places = PLACES): Job {
  const lengths = distances(places);
  const made = new Job().piece({ points: POINTS, flat, readings: [...BASE, ...readings], roles: { A: 'mark' } });
  return made.takes(Object.fromEntries([...BASE, ...taken].map((name) => [name, lengths[name] ?? 0])));
}
const found = (made: Job): Finding[] => made.all().filter(({ rule }) => rule === key);

describe(`${key}, quiet`, () => {
  it('says nothing about a guide measured as it asks', () => {
    for (const guide of guides)
      for (const who of [installer, owner]) expect(found(new Measured(guide, { who }).job)).toEqual([]);
  });
  it('says nothing about a point that three tapes fix, flat or in space', () => {
    expect(found(job(true, ['A-D', 'B-D', 'C-D'], undefined, { ...PLACES, D: [1900, 1400, 0] }))).toEqual([]);
    expect(found(job(false, ['A-D', 'B-D', 'C-D']))).toEqual([]);
  });
  it('says nothing of a point with two tapes on a flat piece: that is one of two places, another rule', () => {
    expect(found(job(true, ['A-D', 'B-D']))).toEqual([]);
  });
  it('says nothing while one of its readings is open: that is said instead', () => {
    const made = job(true, ['A-D', 'B-D'], ['A-D']);
    expect(made.all().map(({ rule }) => rule)).toContain('missing-reading');
    expect(found(made)).toEqual([]);
  });
  it('says nothing about a mark or an obstruction, which the cloth does not follow', () => {
    for (const role of ['mark', 'obstruction'] as const) {
      const made = new Job().piece({ points: POINTS, flat: true, readings: [...BASE, 'A-D'], roles: { D: role } });
      expect(found(made.takes(LENGTHS).takes({ 'A-D': 900 })), role).toEqual([]);
    }
  });
  it('says nothing about points nobody has measured', () => {
    expect(found(new Job().piece({ points: POINTS, flat: true, readings: BASE }))).toEqual([]);
  });
});

describe(`${key}, loud`, () => {
  it('stops at a point on one tape, and says in how many ways it can move', () => {
    const [finding, ...more] = found(job(true, ['A-D']));
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      severity: 'stop',
      slot: 'A-D',
      subjects: [{ on: 'point', id: pointId('D') }],
      numbers: { ways: '1' },
    });
  });
  it.each([
    [['A-D'], '2'],
    [['A-D', 'B-D'], '1'],
  ])('counts the ways in space too: %o', (readings, ways) => {
    expect(found(job(false, readings))).toMatchObject([{ subjects: [{ id: pointId('D') }], numbers: { ways } }]);
  });
  it('stops at every point of a piece that only a girth holds together', () => {
    const made = new Job().piece({
      points: { A: null, B: null, C: null },
      flat: true,
      readings: ['A-B', { name: 'round', kind: 'girth', points: ['A', 'C'], via: ['B'] }],
    });
    const names = found(made.takes({ 'A-B': 1000, round: 2300 })).map(({ subjects }) => subjects[0]?.id);
    expect(names).toContain(pointId('C'));
  });
  it('stops at a point measured only by its height', () => {
    const made = new Job().piece({ points: POINTS, readings: [...BASE, { name: 'h', kind: 'height', points: ['D'] }] });
    made.takes(Object.fromEntries(BASE.map((name) => [name, LENGTHS[name] ?? 0]))).take('h', 300);
    expect(found(made).map(({ subjects }) => subjects[0]?.id)).toContain(pointId('D'));
  });
  it('falls silent with the tape that fixes it', () => {
    const made = job(false, ['A-D', 'B-D']);
    expect(found(made)).toHaveLength(1);
    const id = readingId('C-D');
    const reading = { id, slot: 'C-D', kind: 'straight', points: ['C', 'D'].map(pointId), needed: true };
    made.add('reading.add', { piece: made.sheet().pieces[0]?.id, reading });
    expect(found(made.takes({ 'C-D': LENGTHS['C-D'] ?? 0 }))).toEqual([]);
  });
  it('is silent where one of its readings could not be taken: that is what stops', () => {
    const names = ['A-B', 'B-C', 'A-C', 'A-D', 'B-D'];
    const job = new Job().piece({ points: { A: null, B: null, C: null, D: null }, readings: names, flat: true });
    job.takes({ 'A-B': 2000, 'B-C': 1500, 'A-C': 2500, 'A-D': 1500 });
    job.add('reading.answer', { reading: readingId('B-D'), answer: 'could-not', reason: 'mast' });
    const stops = job.all().filter(({ severity }) => severity === 'stop');
    expect(stops.map(({ rule }) => rule)).toEqual(['unmeasured-reading']);
  });
});
