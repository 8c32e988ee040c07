import { describe, expect, it } from 'vitest';
import { check } from '../../src/core/check/index.ts';
import { lookAgainAt, piecesInDoubt, sharedPoint } from '../../src/screens/model/contradicted.ts';
import { owner } from '../core/check/build.ts';
import { guideNamed } from '../core/check/demo-bow.ts';
import { Measured } from '../core/check/measured.ts';

const shade = guideNamed('tension-shade');
const doubt = ({ job }: Measured) => piecesInDoubt(check(job.sheet()));

describe('a piece whose readings contradict each other', () => {
  it('is none where all fit, nor where something is only missing or to be read once more', () => {
    expect(doubt(new Measured(shade, { who: owner }))).toEqual(new Set());
    expect(doubt(new Measured(shade, { who: owner, open: ['C-D', 'h-D'] }))).toEqual(new Set());
  });
  it('is one with a value far off, and no more once that is struck out', () => {
    const measured = new Measured(shade, { who: owner, added: { 'A-C': 4000 } });
    expect(doubt(measured)).toEqual(new Set([measured.piece.id]));
    const take = measured.job.sheet().readings.find(({ id }) => id === measured.reading('A-C'))?.takes[0]?.id;
    measured.job.add('take.strike', { take, reason: 'Misread' });
    expect(doubt(measured)).toEqual(new Set());
  });
});

describe('marks that may have been swapped', () => {
  const measured = new Measured(shade, { who: owner });
  const ids = (...slots: string[]) => new Set(slots.map((slot) => measured.reading(slot)));
  it('are spoken of from three readings at one point on', () => {
    const sheet = measured.job.sheet();
    expect(sharedPoint(sheet, ids())).toBeNull();
    expect(sharedPoint(sheet, ids('A-B', 'A-C'))).toBeNull();
    expect(sharedPoint(sheet, ids('A-B', 'B-D', 'C-D'))).toBeNull();
    expect(sharedPoint(sheet, ids('A-B', 'B-C', 'B-D', 'C-D'))).toBe(measured.point('B'));
  });
  it('are looked for among what the shop asks again and was read, not among what is open', () => {
    const partly = new Measured(shade, { who: owner, open: ['A-D'] });
    const items = ['A-B', 'A-C', 'A-D'].map((slot) => ({ on: 'reading', id: partly.reading(slot), note: '' }));
    partly.job.add('ask.again', { piece: partly.piece.id, note: 'Please.', items });
    const sheet = partly.job.sheet();
    expect(lookAgainAt(sheet, check(sheet))).toEqual(new Set([partly.reading('A-B'), partly.reading('A-C')]));
  });
});
