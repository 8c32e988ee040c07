import { describe, expect, it } from 'vitest';
import { judge } from '../../../src/core/check/index.ts';
import { guideNamed } from './demo-bow.ts';
import { Measured } from './measured.ts';

const key = 'not-measured-again';
/** Digits swapped in one tape of the cover: 3000 mm is nowhere near. */
const swapped = () => new Measured(guideNamed('open-bow'), { system: 'metric', typed: { 'W1-T': '3732 mm' } });
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
const truth = Math.round(Math.hypot(2180, 900));

describe(key, () => {
  it('says nothing of readings that count as they were read', () => {
    expect(said(new Measured(guideNamed('open-bow')))).toEqual([]);
    expect(said(swapped())).toEqual([]);
  });

  it('marks a reading the shop counts as something else; the take stays as typed, and the shape fits', () => {
    const made = swapped();
    expect(doubted(made)).not.toEqual([]);
    suppose(made, truth);
    expect(said(made)).toMatchObject([{ severity: 'note', numbers: { value: truth, read: '3732 mm' } }]);
    expect(doubted(made)).toEqual([]);
    const reading = made.job.sheet().readings.find(({ id }) => id === made.reading('W1-T'));
    expect(reading).toMatchObject({
      value: truth,
      takes: [{ text: '3732 mm', value: 3732, struck: null }],
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
