import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/core/check/index.ts';
import { check } from '../../src/core/check/index.ts';
import { blindText } from '../../src/screens/model/blind-text.ts';
import { owner } from '../core/check/build.ts';
import { guideNamed } from '../core/check/demo-bow.ts';
import { Measured } from '../core/check/measured.ts';

const shade = guideNamed('tension-shade');
const of = (measured: Measured, rule: string, slot: string): Finding => {
  const found = check(measured.job.sheet()).find(
    (finding) => finding.rule === rule && finding.subjects.some(({ id }) => id === measured.reading(slot)),
  );
  if (!found) throw new Error(`nothing says ${rule} of ${slot}`);
  return found;
};
const asked = (measured: Measured, slot: string): Finding => {
  const piece = measured.piece.id;
  measured.job.add('ask.again', {
    piece,
    note: 'Please.',
    items: [{ on: 'reading', id: measured.reading(slot), note: '' }],
  });
  return of(measured, 'asked-again', slot);
};

describe('what whoever reads afresh is told', () => {
  it('of a reading that was never taken is its own words, or to measure it: never to look again', () => {
    const measured = new Measured(shade, { who: owner, open: ['A-B'] });
    expect(blindText(of(measured, 'missing-reading', 'A-B'), measured.job.sheet(), false)).toBeNull();
    expect(blindText(asked(measured, 'A-B'), measured.job.sheet(), false)).toBe(
      'A–B: please measure it and type what the tape says.',
    );
  });
  it('of a reading that could not be taken is why', () => {
    const measured = new Measured(shade, { who: owner, open: ['A-B'] });
    measured.job.add('reading.answer', { reading: measured.reading('A-B'), answer: 'could-not', reason: 'No helper' });
    expect(blindText(of(measured, 'unmeasured-reading', 'A-B'), measured.job.sheet(), false)).toBeNull();
  });
  it('of one that was read is to look again, without a number', () => {
    const measured = new Measured(shade, { who: owner });
    expect(blindText(asked(measured, 'A-B'), measured.job.sheet(), false)).toBe(
      'A–B: please look at the tape again and type what it says.',
    );
  });
  it('names of several only what was read', () => {
    const measured = new Measured(shade, { who: owner, open: ['A-B'] });
    const finding = asked(measured, 'A-C');
    const both = {
      ...finding,
      subjects: [{ on: 'reading' as const, id: measured.reading('A-B') }, ...finding.subjects],
    };
    expect(blindText(both, measured.job.sheet(), false)).toBe(
      'A–C: please look at the tape again and type what it says.',
    );
  });
  it('of two looks that differ goes by whether another is to come', () => {
    const measured = new Measured(shade, { who: owner }).read('A-C', { added: { 'A-C': 304.8 } });
    const finding = of(measured, 'takes-disagree', 'A-C');
    expect(blindText(finding, measured.job.sheet(), true)).toBe('A–C: one more look, please.');
    expect(blindText(finding, measured.job.sheet(), false)).toContain('The shop will ask you');
  });
});
