import { beforeEach, describe, expect, it } from 'vitest';
import type { Sheet, SheetReading } from '../../src/core/job/index.ts';
import { halvesBefore, halvesOf, offered, recordedLast } from '../../src/screens/parts/pad/repeat.ts';

const [PORT, STARBOARD, MARK, BOW] = ['port', 'starboard', 'mark', 'bow'];

type Given = Partial<SheetReading> & { texts?: readonly string[] };

function reading(
  id: string,
  points: readonly (string | undefined)[],
  { texts = [], ...rest }: Given = {},
): SheetReading {
  const takes = texts.map((text, i) => ({ id: `${id}${i}`, text, struck: null }));
  return { id, points, kind: 'straight', piece: 'bow-cover', takes, ...rest } as unknown as SheetReading;
}

const sheetOf = (readings: readonly SheetReading[], system: Sheet['system'] = 'imperial') =>
  ({ system, readings, pieces: [{ id: 'bow-cover', pairs: [[PORT, STARBOARD]] }] }) as unknown as Sheet;

const before = reading('before', [MARK, PORT], { texts: ['47 5/8'] });
const next = reading('next', [MARK, BOW]);
const trusting = (): boolean => false;

const offer = (
  to: SheetReading,
  {
    from = before,
    again = false,
    doubted = trusting,
    job = 'job',
    recorded = from.id,
  }: Partial<{
    from: SheetReading;
    again: boolean;
    doubted: (id: string) => boolean;
    job: string;
    recorded: string;
  }> = {},
) => {
  recordedLast('job', recorded);
  return halvesBefore(sheetOf([from, to]), { job, reading: to, again, unit: 'mm' }, doubted);
};

describe('what may be tapped again', () => {
  beforeEach(() => recordedLast('', ''));

  it('is the reading recorded just before, in halves', () => {
    expect(offer(next)).toEqual({ whole: '47', fraction: '5/8' });
  });

  it('is nothing before anything was recorded, or in another job', () => {
    expect(
      halvesBefore(sheetOf([before, next]), { job: 'job', reading: next, again: false, unit: 'mm' }, trusting),
    ).toBeNull();
    expect(offer(next, { job: 'another' })).toBeNull();
  });

  it('never leads a second look: not of the same reading, not of one that was read, struck out or asked again', () => {
    expect(offer(before)).toBeNull();
    expect(offer(reading('next', [MARK, BOW], { texts: ['31'] }))).toBeNull();
    const struck = {
      ...next,
      takes: [{ id: 't', text: '31', struck: { reason: 'misread' } }],
    } as unknown as SheetReading;
    expect(offer(struck)).toBeNull();
    expect(offer(next, { again: true })).toBeNull();
  });

  it('never lets one side of the boat lead the other, nor a chord its girth', () => {
    expect(offer(reading('next', [STARBOARD, MARK]))).toBeNull();
    expect(offer(reading('next', [PORT, MARK]))).toBeNull();
    expect(offer(reading('next', [MARK, BOW], { kind: 'girth' }))).toBeNull();
  });

  it('is nothing of a reading that was taken back or is in doubt', () => {
    expect(offer(next, { from: reading('before', [MARK, PORT]) })).toBeNull();
    expect(offer(next, { doubted: (id) => id === 'before' })).toBeNull();
  });

  it('stays within one piece', () => {
    expect(offer(reading('next', [MARK, BOW], { piece: 'another' }))).toBeNull();
  });
});

describe('halves', () => {
  it.each([
    ['47 5/8', '47', '5/8'],
    ["5' 8 3/8", "5' 8", '3/8'],
    ["5' 3/8", "5'", '3/8'],
    ["12'", "12'", ''],
    ['47', '47', ''],
    ['5/8', '', '5/8'],
    ['-4 3/8', '-4', '3/8'],
  ])('of %s', (text, whole, fraction) => {
    expect(halvesOf(text, 'imperial')).toEqual({ whole, fraction });
  });

  it('of metric decimals, in the unit the pad stands on', () => {
    expect(halvesOf('47.6 cm', 'cm')).toEqual({ whole: '47.', fraction: '6' });
    expect(halvesOf('1.234 m', 'm')).toEqual({ whole: '1.', fraction: '234' });
    expect(halvesOf('47.6 cm', 'm')).toBeNull();
    expect(halvesOf('47.6', 'cm')).toBeNull();
  });

  it('there are none of whole millimetres, where a half would pass for a length ten times too short', () => {
    expect(halvesOf('1234', 'mm')).toBeNull();
    expect(halvesOf('1234 mm', 'mm')).toBeNull();
  });

  it('there are none of a text in other units or decimals', () => {
    for (const text of ['1.234 m', '47.625', '3 1/2"', '', '-']) expect(halvesOf(text, 'imperial')).toBeNull();
  });
});

describe('the offer', () => {
  const halves = { whole: '47', fraction: '5/8' };
  it('is the whole while nothing is typed, the fraction once a whole is', () => {
    expect(offered('', halves, false)).toEqual({ whole: '47', fraction: '' });
    expect(offered('4', halves, false)).toEqual({ whole: '', fraction: '5/8' });
    expect(offered("5' ", halves, false)).toEqual({ whole: '', fraction: '5/8' });
    expect(offered('48 3/8', halves, false)).toEqual({ whole: '', fraction: '' });
    expect(offered('48.5', halves, false)).toEqual({ whole: '', fraction: '' });
  });

  it('is never both halves: the one that is not tapped again is read off the tape', () => {
    expect(offered('47', halves, true)).toEqual({ whole: '', fraction: '' });
  });

  it('waits for the point before decimals', () => {
    const metric = { whole: '47.', fraction: '6' };
    expect(offered('48', metric, false).fraction).toBe('');
    expect(offered('48.', metric, false).fraction).toBe('6');
  });
});
