import { describe, expect, it } from 'vitest';
import { askAgain, judge } from '../../../src/core/check/index.ts';
import { installer, type Job, owner } from './build.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const bow = guideNamed('open-bow');
const asked = (measured: Measured): string[] => {
  const sheet = measured.job.sheet();
  const { findings, pieces } = judge(sheet);
  return measured.names(askAgain(sheet, findings, measured.piece.id, pieces.get(measured.piece.id)));
};
const ask = (job: Job, piece: string, reading: string): string =>
  job.add('ask.again', { piece, note: '', items: [{ on: 'reading', id: reading, note: '' }] });

describe('what the shop begins to ask again with', () => {
  it('is nothing where everything fits', () => {
    expect(asked(new Measured(bow, { who: installer, twice: ['h-G'] }))).toEqual([]);
  });
  it('is the reading that is suspected, until it is asked', () => {
    const measured = new Measured(bow, { who: installer, twice: ['h-G'], added: { 'W1-P2': 304.8 } });
    expect(asked(measured)).toContain('W1-P2');
    ask(measured.job, measured.piece.id, measured.reading('W1-P2'));
    expect(asked(measured)).not.toContain('W1-P2');
  });
  it('is a reading whose looks all differ, and second looks that were not taken', () => {
    const measured = new Measured(bow, { who: owner });
    expect(asked(measured)).toContain('W1-P2');
    for (const { slot } of measured.piece.readings)
      if (slot !== null && slot !== 'h-G') measured.read(slot, { added: { 'W1-P2': 304.8 } });
    measured.read('W1-P2', { added: { 'W1-P2': -400 } });
    expect(asked(measured).sort()).toEqual(['W1-P2', 'h-G']);
  });
});
