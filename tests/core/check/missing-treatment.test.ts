import { describe, expect, it } from 'vitest';
import { Job, pieceId, thingId } from './build.ts';

const key = 'missing-treatment';
const job = (): Job =>
  new Job().piece({
    points: { W1: null, W2: null },
    questions: [{ slot: 'in-the-way' }, { slot: 'cleats' }],
  });
const lacks = (made: Job) => made.of(key).map(({ numbers }) => numbers.lack);
const cutOut = (): Job => job().thing('hatch', 'H1', { treatment: 'cut-out' }, true);

describe(key, () => {
  it.each(['left-free', 'covered'])('says nothing about a thing that is %s, wherever it is', (treatment) => {
    expect(job().thing('vent', 'V1', { treatment }).of(key)).toEqual([]);
  });
  it('says nothing about a cut-out that has its place and its size', () => {
    const made = cutOut().placeThing('H1', null, { W1: 600, W2: 700 }).sizeThing('H1', { length: 300 });
    expect(made.of(key)).toEqual([]);
  });
  it('says nothing about a cleat that was answered for with all the others', () => {
    expect(job().answers({ cleats: 'outside' }).thing('cleat', 'C1').of(key)).toEqual([]);
  });
  it('says nothing about a list that was not announced, or is not empty', () => {
    expect(job().answers({ 'in-the-way': 'nothing' }).of(key)).toEqual([]);
    expect(job().answers({ 'in-the-way': 'listed' }).thing('vent', 'V1', { treatment: 'covered' }).of(key)).toEqual([]);
  });

  it('doubts a thing nobody says what to do about', () => {
    expect(job().thing('vent', 'V1').of(key)).toMatchObject([
      {
        severity: 'doubt',
        slot: 'in-the-way',
        subjects: [
          { on: 'obstruction', id: thingId('V1') },
          { on: 'detail', id: 'treatment' },
        ],
      },
    ]);
    expect(lacks(job().answers({ cleats: 'outside' }).thing('light', 'L1'))).toEqual(['treatment']);
  });
  it('doubts a cut-out without a place, without a size, or placed by one tape only', () => {
    expect(lacks(cutOut())).toEqual(['place', 'size']);
    expect(lacks(cutOut().sizeThing('H1', { diameter: 80 }).placeThing('H1', null, { W1: 600 }))).toEqual(['place']);
    expect(lacks(cutOut().placeThing('H1', null, { W1: 600, W2: 700 }))).toEqual(['size']);
    expect(lacks(cutOut().placeThing('H1', null, { W1: 600, W2: 700 }).sizeThing('H1', { clearance: 20 }))).toEqual([
      'size',
    ]);
  });
  it('doubts a list that was announced and is empty', () => {
    expect(job().answers({ 'in-the-way': 'listed' }).of(key)).toMatchObject([
      { numbers: { lack: 'list' }, subjects: [{ id: 'in-the-way' }, { id: pieceId() }] },
    ]);
  });
});
