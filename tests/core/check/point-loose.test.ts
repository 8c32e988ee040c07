import { describe, expect, it } from 'vitest';
import { defaultLimits, type Finding } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { distances, installer, Job, owner, pointId } from './build.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const key = 'point-loose';
const [bow, shade] = [guideNamed('open-bow'), guideNamed('tension-shade')];
const limitsOf = (tolerance: { line: number; corner: number }) => ({ ...defaultLimits, tolerance });
const found = ({ job }: Measured, tolerance = defaultLimits.tolerance): Finding[] =>
  job.all({ limits: limitsOf(tolerance) }).filter(({ rule }) => rule === key);
const named = (measured: Measured, tolerance: { line: number; corner: number }): string[] =>
  found(measured, tolerance)
    .flatMap(({ subjects }) => measured.names(subjects))
    .sort();

/** Corners taped from two marks close together, far off: D is known along the tapes and loose across them. */
function grazing(who = installer): Job {
  const places = { A: [0, 0, 0], B: [150, 0, 0], C: [75, 4000, 0], D: [90, -300, 0] } as const;
  const lengths = distances(places);
  const points = { A: null, B: null, C: null, D: null };
  const roles = { A: 'mark', B: 'mark', C: 'edge', D: 'mark' } as const;
  return new Job({ who }).piece({ points, flat: true, readings: Object.keys(lengths), roles }).takes(lengths);
}

describe(`${key}, quiet`, () => {
  it('says nothing about a guide measured as it asks', () => {
    for (const guide of guides)
      for (const who of [installer, owner]) expect(found(new Measured(guide, { who }))).toEqual([]);
  });
  it('says nothing where the shop allows for it', () => {
    const all = grazing().all({ limits: limitsOf({ line: 1000, corner: 0.01 }) });
    expect(all.filter(({ rule }) => rule === key)).toEqual([]);
  });
  it('says nothing about marks, however loose', () => {
    const marks = new Set(['W1', 'W2', 'F']);
    expect(named(new Measured(bow), { line: 0.1, corner: 0.1 }).filter((slot) => marks.has(slot))).toEqual([]);
  });
  it('says nothing while a needed reading is open', () => {
    expect(found(new Measured(bow, { open: ['F-T'] }), { line: 0.1, corner: 0.1 })).toEqual([]);
  });
  it('goes by the limit of edges for edges and of corners for corners and mounts', () => {
    expect(named(new Measured(bow), { line: 6, corner: 0.1 })).toEqual([]);
    expect(named(new Measured(shade), { line: 0.1, corner: 12 })).toEqual([]);
  });
  it('does not rest on the values read, only on how they were taken', () => {
    const tolerance = { line: 2.9, corner: 12 };
    const shifted = new Measured(bow, { added: { 'W1-P2': 2, 'F-T': -2 } });
    expect(named(shifted, tolerance)).toEqual(named(new Measured(bow), tolerance));
  });
});

describe(`${key}, loud`, () => {
  it('stops at a point taped from marks too close together, with how sure it is', () => {
    const [finding, ...more] = grazing()
      .all()
      .filter(({ rule }) => rule === key);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      severity: 'stop',
      subjects: [{ on: 'point', id: pointId('C') }],
      numbers: { limit: 6 },
    });
    expect(Number(finding?.numbers.sure)).toBeGreaterThan(6);
  });
  it('stops at the loosest points of a bow cover first when the limit comes down', () => {
    expect(named(new Measured(bow), { line: 3.05, corner: 12 })).toEqual([]);
    expect(named(new Measured(bow), { line: 2.9, corner: 12 })).toEqual(['P2', 'S2']);
    expect(named(new Measured(bow), { line: 2.7, corner: 12 })).toEqual(['P2', 'S2', 'T']);
  });
  it('allows an owner twice as much', () => {
    const [finding] = found(new Measured(bow, { who: owner }), { line: 2.9, corner: 12 });
    expect(finding?.numbers.limit).toBe(5.8);
    expect(named(new Measured(bow, { who: owner }), { line: 2.9, corner: 12 })).toEqual(['P2', 'S2']);
    const strict = { ...limitsOf({ line: 2.9, corner: 12 }), ownerFactor: 1 };
    const all = new Measured(bow, { who: owner }).job.all({ limits: strict }).filter(({ rule }) => rule === key);
    expect(all).toHaveLength(7);
  });
  it('says the same in inches and in millimetres', () => {
    const [metric, imperial] = (['metric', 'imperial'] as const).map((system) =>
      found(new Measured(bow, { system }), { line: 2.7, corner: 12 }),
    );
    expect(imperial?.map(({ id }) => id)).toEqual(metric?.map(({ id }) => id));
    for (const [index, { numbers }] of (metric ?? []).entries())
      expect(Math.abs(Number(numbers.sure) - Number(imperial?.[index]?.numbers.sure))).toBeLessThan(0.01);
  });
  it('speaks of corners and mounts by their own limit, at a step of the point', () => {
    const measured = new Measured(shade);
    expect(named(measured, { line: 0.1, corner: 5 })).toEqual(['A', 'B', 'C', 'D']);
    expect(found(measured, { line: 0.1, corner: 5 }).map(({ slot }) => slot)).toEqual(['A-B', 'A-B', 'A-C', 'A-D']);
  });
});
