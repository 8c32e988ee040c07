import { describe, expect, it } from 'vitest';
import { defaultLimits, type Finding } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { installer, owner } from './build.ts';
import { guideNamed } from './demo-bow.ts';
import { EFFORTS } from './efforts.ts';
import { Measured } from './measured.ts';

const key = 'slip-unseen';
const [bow, shade] = [guideNamed('open-bow'), guideNamed('tension-shade')];
const found = ({ job }: Measured, unseen = defaultLimits.unseen): Finding[] =>
  job.all({ limits: { ...defaultLimits, unseen } }).filter(({ rule }) => rule === key);
const named = (measured: Measured, unseen: { line: number; corner: number }): string[] =>
  found(measured, unseen)
    .map(({ subjects }) => measured.names(subjects).join(' by '))
    .sort();

describe(`${key}, quiet`, () => {
  it('says nothing about a guide measured as it asks, by whom ever', () => {
    for (const guide of guides) {
      const [{ answers, again } = { answers: {}, again: [] }] = EFFORTS[guide.kind] ?? [];
      for (const who of [installer, owner])
        expect(found(new Measured(guide, { who, answers, twice: again }))).toEqual([]);
    }
  });
  it('goes by the limit of edges for edges and of corners for corners and mounts', () => {
    expect(named(new Measured(bow), { line: 12, corner: 0.1 })).toEqual([]);
    expect(named(new Measured(shade), { line: 0.1, corner: 25 })).toEqual([]);
  });
  it('says nothing while a needed reading is open', () => {
    expect(found(new Measured(bow, { open: ['P1-P2'] }), { line: 0.1, corner: 0.1 })).toEqual([]);
  });
  it('says nothing while something impossible stands: that is mended first', () => {
    const measured = new Measured(bow, { added: { 'W1-P2': 600 } });
    expect(measured.job.all().map(({ rule }) => rule)).toContain('impossible-triangle');
    expect(found(measured, { line: 0.1, corner: 0.1 })).toEqual([]);
  });
  it('says nothing about marks', () => {
    const subjects = named(new Measured(bow), { line: 0.1, corner: 0.1 });
    expect(subjects.filter((name) => /^(W1|W2|F) by/.test(name))).toEqual([]);
    expect(subjects).toHaveLength(7);
  });
  it('says nothing of a reading that was read twice and agreed', () => {
    expect(named(new Measured(shade), { line: 12, corner: 16 })).toEqual(['C by C-D']);
    expect(named(new Measured(shade, { twice: ['C-D'] }), { line: 12, corner: 16 })).toEqual([]);
  });
});

describe(`${key}, loud`, () => {
  it('doubts the points that a slip nobody would see moves furthest, and names the reading', () => {
    const measured = new Measured(bow);
    expect(named(measured, { line: 6.5, corner: 25 })).toEqual(['P2 by W2-P2', 'S2 by W1-S2']);
    const [finding] = found(measured, { line: 6.5, corner: 25 });
    expect(finding).toMatchObject({ severity: 'doubt', numbers: { limit: 6.5 }, accepted: null });
    expect(finding?.subjects).toMatchObject([
      { on: 'point', id: measured.point('P2') },
      { on: 'reading', id: measured.reading('W2-P2') },
    ]);
    expect(Number(finding?.numbers.shift)).toBeGreaterThan(6.5);
    expect(Number(finding?.numbers.shift)).toBeLessThan(7.5);
  });
  it('allows an owner twice as much', () => {
    const [finding] = found(new Measured(bow, { who: owner }), { line: 6.5, corner: 25 });
    expect(finding?.numbers.limit).toBe(13);
    expect(found(new Measured(bow, { who: owner }), { line: 7, corner: 25 })).toEqual([]);
  });
  it('says the same in inches and in millimetres', () => {
    const [metric, imperial] = (['metric', 'imperial'] as const).map((system) =>
      named(new Measured(bow, { system }), { line: 5.6, corner: 25 }),
    );
    expect(metric?.length).toBeGreaterThan(2);
    expect(imperial).toEqual(metric);
  });
  it('speaks again when the second take is struck out', () => {
    const measured = new Measured(shade).read('C-D');
    expect(named(measured, { line: 12, corner: 16 })).toEqual([]);
    measured.job.add('take.strike', { take: measured.job.entries.at(-1)?.id, reason: 'the hook had slipped' });
    expect(named(measured, { line: 12, corner: 16 })).toEqual(['C by C-D']);
  });
});
