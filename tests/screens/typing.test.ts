import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/core/length/index.ts';
import {
  fractionKeys,
  isQuarter,
  keyFromKeyboard,
  type PadKey,
  typed,
  typedByKeyboard,
  withUnit,
} from '../../src/screens/parts/pad/typing.ts';

const press = (...keys: PadKey[]): string => keys.reduce(typed, '');
const digit = (text: string): PadKey => ({ type: 'text', text });
const fraction = (text: string): PadKey => ({ type: 'fraction', text });
const SIGN: PadKey = { type: 'sign' };
const FINER: PadKey = { type: 'finer' };
const FEET: PadKey = { type: 'feet' };
const BACK: PadKey = { type: 'back' };

describe('the length pad', () => {
  it('needs three taps for 47 5/8', () => {
    expect(press(digit('4'), digit('7'), fraction('5/8'))).toBe('47 5/8');
  });

  it('takes feet, inches and a fraction', () => {
    expect(press(digit('5'), FEET, digit('8'), fraction('3/8'))).toBe("5' 8 3/8");
    expect(press(digit('5'), FEET, fraction('3/8'))).toBe("5' 3/8");
  });

  it('changes a fraction that was tapped wrong for the next one', () => {
    expect(press(digit('4'), fraction('5/8'), fraction('3/8'))).toBe('4 3/8');
    expect(press(fraction('1/2'), fraction('1/4'))).toBe('1/4');
  });

  it('goes back a fraction, a digit, the feet at a time, and stops at nothing', () => {
    expect(press(digit('4'), digit('7'), fraction('5/8'), BACK)).toBe('47');
    expect(press(digit('5'), FEET, BACK)).toBe('5');
    expect(press(digit('5'), BACK, BACK, BACK)).toBe('');
  });

  it('ignores feet without a number and a digit after a fraction', () => {
    expect(press(FEET)).toBe('');
    expect(press(digit('4'), fraction('5/8'), digit('9'))).toBe('4 5/8');
    expect(press(digit('5'), FEET, digit('8'), FEET)).toBe("5' 8");
  });

  it('turns the sign over, before or after the number, and reads it over feet and inches together', () => {
    expect(press(SIGN, digit('4'), fraction('3/8'))).toBe('-4 3/8');
    expect(press(digit('4'), fraction('3/8'), SIGN)).toBe('-4 3/8');
    expect(press(SIGN, digit('4'), SIGN)).toBe('4');
    expect(press(SIGN, fraction('3/8'))).toBe('-3/8');
    expect(press(SIGN, digit('1'), FEET, digit('2'))).toBe("-1' 2");
    expect(press(SIGN, BACK)).toBe('');
    expect(parseLength(press(SIGN, digit('1'), FEET, digit('2')), 'in')).toMatchObject({ ok: true, mm: -355.6 });
  });

  it('puts half a sixteenth on a fraction, and takes it off again', () => {
    expect(press(digit('4'), digit('7'), fraction('3/8'), FINER)).toBe('47 13/32');
    expect(press(digit('4'), digit('7'), fraction('3/8'), FINER, FINER)).toBe('47 3/8');
    expect(press(digit('4'), digit('7'), FINER)).toBe('47 1/32');
    expect(press(digit('4'), digit('7'), FINER, FINER)).toBe('47');
    expect(press(digit('4'), fraction('15/16'), FINER)).toBe('4 31/32');
  });

  it('takes one decimal point, and nothing behind a unit that was typed', () => {
    const point = digit('.');
    expect(press(digit('4'), point, digit('7'), point, digit('5'))).toBe('4.75');
    expect(press(point, digit('5'))).toBe('.5');
    expect(typed('47.6 cm', digit('1'))).toBe('47.6 cm');
    expect(typed('47.6 cm', { type: 'unit', unit: 'm' })).toBe('47.6 m');
    expect(typed('47.6', { type: 'unit', unit: 'm' })).toBe('47.6');
  });

  it('offers the fractions of the tape, reduced, in order', () => {
    expect(fractionKeys(8)).toEqual(['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8']);
    expect(fractionKeys(16)).toHaveLength(15);
    expect(fractionKeys(32)).toEqual(fractionKeys(16));
    expect(fractionKeys(16).filter(isQuarter)).toEqual(['1/4', '1/2', '3/4']);
    expect(fractionKeys(8).filter((text) => !isQuarter(text))).toEqual(['1/8', '3/8', '5/8', '7/8']);
  });

  it('never makes a text that a person could not have typed: feet, then inches up to eleven, always parse', () => {
    const feet = fc.integer({ min: 0, max: 30 });
    const inches = fc.integer({ min: 0, max: 11 });
    fc.assert(
      fc.property(feet, inches, fc.constantFrom(...fractionKeys(16)), (f, i, part) => {
        const keys = [...String(f)].map(digit).concat(FEET, [...String(i)].map(digit), fraction(part));
        expect(parseLength(press(...keys), 'in').ok).toBe(true);
      }),
    );
  });
});

/** Taps before Next, of what a tape commonly says, each with the millimetres it must come to. */
describe('common readings', () => {
  const POINT = digit('.');
  const keysOf = (text: string): PadKey[] =>
    text
      .split(/(?<=')\s*|\s+/)
      .flatMap((part) =>
        part.includes('/')
          ? [fraction(part)]
          : [...part].map((key) => (key === "'" ? FEET : key === '-' ? SIGN : key === '.' ? POINT : digit(key))),
      );

  it.each([
    ['47 5/8', 3, 1209.675],
    ['5/8', 1, 15.875],
    ['9', 1, 228.6],
    ['112 13/16', 4, 2865.4375],
    ["12'", 3, 3657.6],
    ["5' 8", 3, 1727.2],
    ["5' 11 15/16", 5, 1827.2125],
    ["5' 3/8", 3, 1533.525],
    ['-4 3/8', 3, -111.125],
    ["-1' 2", 4, -355.6],
  ])('%s takes %i taps', (text, taps, millimetres) => {
    const keys = keysOf(text);
    expect(keys).toHaveLength(taps);
    expect(press(...keys).trim()).toBe(text);
    expect(parseLength(press(...keys), 'in')).toMatchObject({ ok: true, mm: millimetres });
  });

  it.each([
    ['1234', 4, 'mm', 1234],
    ['47.6', 4, 'cm', 476],
    ['1.234', 5, 'm', 1234],
    ['-38', 3, 'mm', -38],
  ] as const)('%s takes %i taps on a pad that stands on %s', (text, taps, unit, millimetres) => {
    const keys = keysOf(text);
    expect(keys).toHaveLength(taps);
    expect(parseLength(withUnit(press(...keys), unit), 'mm')).toMatchObject({ ok: true, mm: millimetres });
  });
});

describe('the unit that stays', () => {
  it('is written behind a bare number, so that the text says what it means', () => {
    expect(withUnit('47.6', 'cm')).toBe('47.6 cm');
    expect(withUnit('1,5', 'm')).toBe('1,5 m');
    expect(withUnit('-3 ', 'cm')).toBe('-3 cm');
  });

  it('leaves alone what has a unit, what is no number, and millimetres, which the job means anyway', () => {
    for (const text of ['1.234 m', '47.6 cm', "5'", '47 5/8', '3"', '', '-', 'm'])
      expect(withUnit(text, 'cm')).toBe(text);
    expect(withUnit('1234', 'mm')).toBe('1234');
  });
});

describe('a hardware keyboard', () => {
  it('types what a person types, the fraction key by key', () => {
    const text = [...'47 5/8']
      .map((key) => keyFromKeyboard(key, 'imperial'))
      .reduce((before, key) => (key ? typedByKeyboard(before, key) : before), '');
    expect(text).toBe('47 5/8');
    expect(typedByKeyboard('47 5/8', BACK)).toBe('47 5/');
  });

  it('leaves arrows, tab and function keys alone', () => {
    for (const key of ['ArrowLeft', 'Tab', 'F5', 'Escape', 'Shift'])
      expect(keyFromKeyboard(key, 'imperial')).toBeNull();
  });
});
