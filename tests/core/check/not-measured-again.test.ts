import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/check/index.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const key = 'not-measured-again';
/** Digits swapped in one tape of the cover: 92 7/8 in is the truth. */
const swapped = () => new Measured(guideNamed('open-bow'), { typed: { 'W1-T': '29 7/8' } });
const liveTakes = (made: Measured): string =>
  (made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'))?.takes ?? [])
    .filter(({ struck }) => struck === null)
    .map(({ id }) => id)
    .sort()
    .join('+');
const suppose = (made: Measured, value: number): string =>
  made.job.add('reading.suppose', {
    reading: made.reading('W1-T'),
    value,
    text: String(value),
    slip: 'digits-swapped',
    basis: liveTakes(made),
  });
const said = (made: Measured) => judge(made.job.sheet()).findings.filter(({ rule }) => rule === key);
const CONTRADICTIONS: readonly string[] = ['reading-doubted', 'impossible-triangle', 'implausible-value'];
const doubted = (made: Measured) =>
  judge(made.job.sheet()).findings.filter(({ rule }) => CONTRADICTIONS.includes(rule));
const truth = 92.875 * 25.4;

describe(key, () => {
  it('says nothing of readings that count as they were read', () => {
    expect(said(new Measured(guideNamed('open-bow')))).toEqual([]);
    expect(said(swapped())).toEqual([]);
  });

  it('marks a reading the shop counts as something else; the take stays as typed, and the shape fits', () => {
    const made = swapped();
    expect(doubted(made)).not.toEqual([]);
    suppose(made, truth);
    expect(said(made)).toMatchObject([{ severity: 'note', numbers: { value: truth, read: '29 7/8' } }]);
    expect(doubted(made)).toEqual([]);
    const reading = made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'));
    expect(reading).toMatchObject({
      value: truth,
      takes: [{ text: '29 7/8', value: 29.875 * 25.4, struck: null }],
    });
  });

  it('lapses as soon as somebody reads it again, whatever that says', () => {
    const made = swapped();
    suppose(made, truth);
    made.read('W1-T');
    const reading = made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'));
    expect(reading?.supposed).toBeNull();
    expect(said(made)).toEqual([]);
  });

  it('is undone like anything else', () => {
    const made = swapped();
    const entry = suppose(made, truth);
    made.job.add('undo', { entry });
    expect(said(made)).toEqual([]);
    expect(doubted(made)).not.toEqual([]);
  });
});
