import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import type { Side } from '../../../src/core/job/index.ts';
import { distances, installer, Job, owner, pointId } from './build.ts';
import { Measured } from './measured.ts';

const key = 'two-shapes';
type Place = [number, number, number];
/** C and D lie on one side of A-B, so that only a tape between them, or a side, tells where D is. */
const PLACES: Record<string, Place> = { A: [0, 0, 0], B: [2000, 0, 0], C: [700, 900, 0], D: [1500, 800, 0] };
const LENGTHS = distances(PLACES);
const POINTS = { A: null, B: null, C: null, D: null };
const FIVE = ['A-B', 'A-C', 'B-C', 'A-D', 'B-D'];

function job(readings: readonly string[], more: { sides?: Record<string, Side[]>; open?: string[] } = {}): Job {
  const made = new Job().piece({
    points: POINTS,
    flat: true,
    readings: [...readings, ...(more.open ?? [])],
    roles: { A: 'mark', B: 'mark' },
    ...(more.sides ? { sides: more.sides } : {}),
  });
  return made.takes(Object.fromEntries(readings.map((name) => [name, LENGTHS[name] ?? 0])));
}
const found = (made: Job): Finding[] => made.all().filter(({ rule }) => rule === key);

describe(`${key}, quiet`, () => {
  it('says nothing about a guide measured as it asks', () => {
    for (const guide of guides)
      for (const who of [installer, owner]) expect(found(new Measured(guide, { who }).job)).toEqual([]);
  });
  it('says nothing about a triangle, whose mirror image is the same shape', () => {
    expect(found(job(['A-B', 'A-C', 'B-C']))).toEqual([]);
  });
  it('says nothing where the tape across was taken', () => {
    expect(found(job([...FIVE, 'C-D']))).toEqual([]);
  });
  it('says nothing where sides were declared', () => {
    expect(found(job(FIVE, { sides: { A: ['aft'], B: ['forward'], C: ['port'], D: ['port'] } }))).toEqual([]);
    expect(found(job(FIVE, { sides: { A: ['aft'], B: ['forward'], C: ['port'], D: ['starboard'] } }))).toEqual([]);
  });
  it('says nothing while a needed reading is open: that is said instead', () => {
    const made = job(FIVE, { open: ['C-D'] });
    expect(made.all().map(({ rule }) => rule)).toContain('missing-reading');
    expect(found(made)).toEqual([]);
  });
  it('says nothing about a point that floats: it has more than two places', () => {
    expect(found(job(FIVE.slice(0, 4)))).toEqual([]);
  });
  it('is silent while a triangle contradicts', () => {
    expect(found(job(FIVE))).toHaveLength(1);
    const wrong = new Job().piece({ points: POINTS, flat: true, readings: FIVE });
    wrong.takes({ ...Object.fromEntries(FIVE.map((name) => [name, LENGTHS[name] ?? 0])), 'A-C': 4000 });
    expect(wrong.all().map(({ rule }) => rule)).toContain('impossible-triangle');
    expect(found(wrong)).toEqual([]);
  });
});

describe(`${key}, loud`, () => {
  it('stops at a point that may lie on either side, and names the tape that tells', () => {
    const [finding, ...more] = found(job(FIVE));
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'stop', numbers: { shapes: '2' } });
    expect([finding?.numbers.from, finding?.numbers.to].sort()).toEqual(['C', 'D']);
    expect(finding?.subjects).toEqual([pointId('C'), pointId('D')].sort().map((id) => ({ on: 'point', id })));
  });
  it('is settled by that tape, whichever of the two it was', () => {
    for (const across of [LENGTHS['C-D'] ?? 0, Math.hypot(800, 1700)]) {
      const made = job(FIVE);
      const reading = { id: pointId('tape'), slot: 'C-D', kind: 'straight', needed: true };
      made.add('reading.add', {
        piece: made.sheet().pieces[0]?.id,
        reading: { ...reading, points: [pointId('C'), pointId('D')] },
      });
      expect(found(made)).toEqual([]);
      made.add('take.add', { reading: reading.id, ...made.typed(across) });
      expect(found(made)).toEqual([]);
    }
  });
  it('stops in inches as in millimetres', () => {
    const made = new Job({ system: 'imperial' }).piece({ points: POINTS, flat: true, readings: FIVE });
    made.takes(Object.fromEntries(FIVE.map((name) => [name, LENGTHS[name] ?? 0])));
    expect(found(made)).toMatchObject([{ numbers: { shapes: '2' } }]);
  });
});
