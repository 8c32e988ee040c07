import { describe, expect, it, vi } from 'vitest';
import { type Finding, judge } from '../../../src/core/check/index.ts';
import { guides } from '../../../src/core/guide/pieces/index.ts';
import { distances, installer, Job, owner, readingId } from './build.ts';
import { demoBow, guideNamed } from './demo-bow.ts';
import { deviates, Measured, type Place } from './measured.ts';

const key = 'reading-doubted';
vi.setConfig({ testTimeout: 120_000 });
const bow = guideNamed('open-bow');

/** The demo bow, as typed but for the slips given. */
const typed = (slips: Record<string, string> = {}) => new Measured(bow, { typed: { ...demoBow, ...slips } });
/** The guide's own layout, exact but for the mm given. */
const off = (added: Record<string, number>, more: ConstructorParameters<typeof Measured>[1] = {}) =>
  new Measured(bow, { added, ...more });
const doubts = ({ job }: Measured): Finding[] => job.all().filter(({ rule }) => rule === key);
const firstNamed = (measured: Measured): string[][] =>
  doubts(measured).map(({ subjects }) => measured.names(subjects).slice(0, 1));

/** A boat that is not the guide's: every point 60 mm elsewhere, one standard deviation. */
function elsewhere(seed: number, flat: boolean): (slot: string, nominal: Place) => Place {
  const deviate = deviates(seed);
  return (_, [x, y, z]) => [x + 60 * deviate(), y + 60 * deviate(), flat ? z : z + 60 * deviate()];
}

describe(`${key}, quiet`, () => {
  // A hundred tests are made at once in a bow cover; the promise is at most one clean job in a hundred accused.
  it('accuses at most one in a hundred clean jobs, whoever measured', () => {
    let [jobs, accused] = [0, 0];
    for (const guide of guides)
      for (let seed = 1; seed <= 100; seed++) {
        const who = seed % 2 ? installer : owner;
        const place = elsewhere(seed * 104729, guide.flat);
        const measured = new Measured(guide, { who, place, noise: deviates(seed * 7919) });
        jobs++;
        if (doubts(measured).length > 0) accused++;
      }
    expect(jobs).toBe(100 * guides.length);
    expect(accused).toBeLessThanOrEqual(jobs / 100);
  });
  it('says nothing about an exact job', () => {
    for (const guide of guides) expect(doubts(new Measured(guide))).toEqual([]);
  });
  it('says nothing about the demo bow as it should have been read', () => {
    expect(doubts(typed())).toEqual([]);
  });
  it('says nothing about a difference the tape explains', () => {
    expect(doubts(off({ 'W1-P2': 2 }))).toEqual([]);
    expect(doubts(off({ 'F-T': -2 }))).toEqual([]);
  });
  it('says nothing where nothing is spare', () => {
    const [a, b, c] = [1000, 1200, 900];
    const job = new Job().piece({ points: { A: null, B: null, C: null }, flat: true, readings: ['A-B', 'B-C', 'A-C'] });
    job.takes({ 'A-B': a, 'B-C': b + 304.8, 'A-C': c });
    expect(job.all().filter(({ rule }) => rule === key)).toEqual([]);
  });
  it('says nothing about a piece without readings', () => {
    expect(
      new Job()
        .piece({ points: { A: null } })
        .all()
        .filter(({ rule }) => rule === key),
    ).toEqual([]);
  });
  it('stops beside a triangle that contradicts: the rule says that it cannot be, the engine which reading', () => {
    const measured = typed({ 'F-P3': '72 3/16' });
    const rules = measured.job.all().map(({ rule }) => rule);
    expect(rules).toContain('impossible-triangle');
    expect(measured.job.all().find(({ rule }) => rule === key)?.severity).toBe('stop');
    const judgement = judge(measured.job.sheet()).pieces.get(measured.piece.id);
    expect(judgement?.slips?.explanations[0]?.slips).toMatchObject([
      { reading: measured.reading('F-P3'), kind: 'digits-swapped', value: 27.1875 * 25.4 },
    ]);
  });
  it('is silent while two takes contradict each other', () => {
    const measured = off({}).read('W1-P1', { added: { 'W1-P1': 304.8 } });
    const rules = measured.job.all().map(({ rule }) => rule);
    expect(rules).toContain('takes-disagree');
    expect(rules).not.toContain(key);
  });
  it('is silent again once the wrong take is struck out and read anew', () => {
    const measured = typed({ 'W1-P1': '21 3/4' });
    const [wrong] = measured.job
      .sheet()
      .readings.filter(({ id }) => id === measured.reading('W1-P1'))
      .flatMap(({ takes }) => takes);
    measured.job.add('take.strike', { take: wrong?.id, reason: 'wrong foot' });
    expect(doubts(measured.read('W1-P1', { typed: demoBow }))).toEqual([]);
  });
});

describe(`${key}, loud`, () => {
  it.each([
    ['a foot', 'W1-P1', '21 3/4', 'whole-foot'],
    ['a foot', 'F-T', '41 11/16', 'whole-foot'],
    ['a foot', 'P2-P3', '44 7/16', 'whole-foot'],
    ['ten inches', 'S3-S2', '42 5/16', 'ten-inches'],
    ['an inch', 'S2-S1', '31 5/8', 'burnt-inch'],
    ['an inch', 'F-T', '30 11/16', 'burnt-inch'],
  ])('names the reading that is %s off on the demo bow: %s', (_, slot, text, kind) => {
    const measured = typed({ [slot]: text });
    const [finding, ...more] = doubts(measured);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: 'doubt', slot, accepted: null, numbers: { verdict: 'named' } });
    expect(measured.names(finding?.subjects ?? [])[0]).toBe(slot);
    expect(finding?.numbers.slip).toBe(kind);
    expect(finding?.numbers.again).toBe(finding?.subjects.length);
    expect(Number(finding?.numbers.chance)).toBeGreaterThanOrEqual(70);
  });
  it('names swapped digits, and what they were', () => {
    const place = (slot: string, nominal: Place): Place => (slot === 'P2' ? [1080, 930, 0] : nominal);
    const right = new Measured(bow, { place });
    expect(right.length('P2-P3') / 25.4).toBeCloseTo(23.43, 2);
    expect(doubts(right)).toEqual([]);
    const wrong = new Measured(bow, { place, typed: { 'P2-P3': '32 7/16' } });
    const [finding] = doubts(wrong);
    expect(wrong.names(finding?.subjects ?? [])[0]).toBe('P2-P3');
    expect(finding?.numbers).toMatchObject({ verdict: 'named' });
    expect(finding?.numbers).toMatchObject({ slip: 'digits-swapped', wouldRead: expect.stringContaining('23 7/16') });
  });
  it('names the same reading in inches and in millimetres, whoever measured', () => {
    for (const slot of ['W1-P1', 'F-T', 'P2-P3'])
      for (const who of [installer, owner]) {
        const [metric, imperial] = (['metric', 'imperial'] as const).map((system) =>
          off({ [slot]: 304.8 }, { system, who }),
        );
        expect(metric && firstNamed(metric), `${slot} ${who.role}`).toEqual([[slot]]);
        expect(imperial && firstNamed(imperial), `${slot} ${who.role}`).toEqual([[slot]]);
      }
  });
  it('names both of two slips', () => {
    const measured = typed({ 'W1-P1': '21 3/4', 'P2-P3': '44 7/16' });
    const [finding, ...more] = doubts(measured);
    expect(more).toEqual([]);
    expect(
      measured
        .names(finding?.subjects ?? [])
        .slice(0, 2)
        .sort(),
    ).toEqual(['P2-P3', 'W1-P1']);
  });
  it('lists the suspects as the engine ranks them, several where it cannot tell them apart', () => {
    const measured = typed({ 'F-P3': '27 11/16' });
    const [finding] = doubts(measured);
    const ranked = judge(measured.job.sheet()).pieces.get(measured.piece.id)?.slips?.readAgain ?? [];
    expect(finding?.numbers.verdict).toBe('tied');
    expect(ranked.length).toBeGreaterThan(1);
    expect(finding?.subjects.map(({ id }) => id)).toEqual(ranked);
  });
  it('speaks of no more than six readings, in one doubt for a piece', () => {
    for (const slot of ['P1-P2', 'F-T', 'W2-S1']) {
      const found = doubts(off({ [slot]: 30 }));
      expect(found).toHaveLength(1);
      expect(found[0]?.subjects.length).toBeLessThanOrEqual(6);
    }
  });
  it('rests on the takes of the readings it names, so that reading one again makes it a new doubt', () => {
    const measured = typed({ 'F-T': '41 11/16' });
    const [before] = doubts(measured);
    measured.job.add('finding.accept', { finding: before?.id, basis: before?.basis, reason: 'a mark that moved' });
    expect(doubts(measured)[0]?.accepted).toMatchObject({ reason: 'a mark that moved' });
    const [after] = doubts(measured.read('F-T', { typed: { 'F-T': '41 3/4' } }));
    expect(after).toMatchObject({ id: before?.id, accepted: null });
  });
  it('accuses nobody in a box with one spare, and turns from a reading that was read twice alike', () => {
    const corners = { A: [0, 0, 0], B: [1500, 0, 0], C: [1400, 1200, 0], D: [100, 1300, 0] } as const;
    const lengths = distances(corners);
    const read: Record<string, number> = { ...lengths, 'A-C': (lengths['A-C'] ?? 0) + 12 };
    const points = { A: null, B: null, C: null, D: null };
    const job = new Job().piece({ points, flat: true, readings: Object.keys(lengths) }).takes(read);
    const box = (): Finding[] => job.all().filter(({ rule }) => rule === key);
    const [before] = box();
    expect(before?.numbers.verdict).toBe('tied');
    const first = Object.keys(read).find((name) => readingId(name) === before?.subjects[0]?.id) ?? '';
    job.take(first, read[first] ?? 0);
    const [after] = box();
    expect(after?.subjects[0]?.id).toBeDefined();
    expect(after?.subjects[0]?.id).not.toBe(readingId(first));
  });
});
