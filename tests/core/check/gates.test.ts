import { describe, expect, it } from 'vitest';
import { contradictionsTakenOn } from '../../../src/core/check/gates.ts';
import { gates } from '../../../src/core/check/index.ts';
import { Job, pieceId, readingId } from './build.ts';

const POINTS = { A: null, B: null, C: null };
const sound = () =>
  new Job()
    .piece({ points: POINTS, readings: ['A-B', 'B-C', { name: 'A-C', needed: false }] })
    .takes({ 'A-B': 3000, 'B-C': 4000 });
const gatesOf = (job: Job, piece?: string) => gates(job.sheet(), job.findings(), piece);
const doubtful = () => sound().takes({ 'A-B': 3030 });

describe('gates', () => {
  it('are both clear when all is sound', () => {
    const { leave, cut } = gatesOf(sound());
    expect([leave, cut]).toEqual([
      { clear: true, standing: [] },
      { clear: true, standing: [] },
    ]);
  });
  it('are not held by a note', () => {
    expect(
      sound()
        .findings()
        .map(({ severity }) => severity),
    ).toEqual(['note']);
    expect(gatesOf(sound()).cut.clear).toBe(true);
  });
  it('are not held by a doubt that was accepted', () => {
    const job = doubtful();
    const finding = job.of('takes-disagree')[0];
    job.add('finding.accept', { finding: finding?.id, basis: finding?.basis, reason: 'mean is fine' });
    // Clear, but over looks that contradict each other: whoever cuts is told.
    expect(contradictionsTakenOn(job.findings(), pieceId())).toMatchObject([{ rule: 'takes-disagree' }]);
    expect(contradictionsTakenOn(doubtful().findings(), pieceId())).toEqual([]);
    expect(gatesOf(job)).toMatchObject({ leave: { clear: true }, cut: { clear: true } });
  });
  it('of one piece are not held by another', () => {
    const job = sound().piece({ name: 'second', readings: ['A-D'], points: { D: null } });
    expect(gatesOf(job).leave.clear).toBe(false);
    expect(gatesOf(job, pieceId()).leave.clear).toBe(true);
    expect(gatesOf(job, pieceId('second')).leave.clear).toBe(false);
  });
  it('of one piece are held by what belongs to no piece', () => {
    const job = sound();
    job.add('tide.add', {});
    expect(gatesOf(job, pieceId()).cut).toMatchObject({ clear: false, standing: [{ rule: 'carried' }] });
  });
  it('are held by a doubt nobody accepted', () => {
    expect(gatesOf(doubtful())).toMatchObject({ leave: { clear: false }, cut: { clear: false } });
  });
  it('are held by a stop', () => {
    const job = new Job().piece({ points: POINTS, readings: ['A-B'] });
    expect(gatesOf(job)).toMatchObject({ leave: { clear: false }, cut: { standing: [{ rule: 'missing-reading' }] } });
  });
  it('hold the cut, not the leaving, while something asked again is open', () => {
    const job = sound();
    const items = [{ on: 'reading', id: readingId('A-B'), note: '' }];
    job.add('ask.again', { piece: pieceId(), note: '', items });
    expect(gatesOf(job)).toMatchObject({
      leave: { clear: true },
      cut: { clear: false, standing: [{ rule: 'asked-again' }] },
    });
    expect(gatesOf(job.takes({ 'A-B': 3001 })).cut.clear).toBe(true);
  });
  it('list what stands in the order a person walks, piece by piece', () => {
    const walk = ['late', 'A-B', 'early', 'B-C'];
    const questions = [{ slot: 'early' }, { slot: 'late' }];
    const job = new Job().piece({ points: POINTS, readings: ['B-C', 'A-B', { name: 'A-C' }], questions, walk });
    job.piece({ name: 'second', questions: [{ slot: 'first-here' }] }).add('tide.add', {});
    const slots = gatesOf(job).leave.standing.map(({ slot }) => slot);
    expect(slots).toEqual(['late', 'A-B', 'early', 'B-C', 'A-C', 'first-here', null]);
  });
});
