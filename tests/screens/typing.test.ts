import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/core/length/index.ts';
import {
  fractionKeys,
  keyFromKeyboard,
  type PadKey,
  typed,
  typedByKeyboard,
} from '../../src/screens/parts/pad/typing.ts';

const press = (...keys: PadKey[]): string => keys.reduce(typed, '');
const digit = (text: string): PadKey => ({ type: 'text', text });
const fraction = (text: string): PadKey => ({ type: 'fraction', text });
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

  it('puts a unit behind metric numbers and changes it', () => {
    expect(press(digit('3'), { type: 'unit', unit: 'cm' }, { type: 'unit', unit: 'm' })).toBe('3 m');
    expect(press({ type: 'unit', unit: 'cm' })).toBe('');
  });

  it('offers the fractions of the tape, reduced, in order', () => {
    expect(fractionKeys(8)).toEqual(['1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8']);
    expect(fractionKeys(16)).toHaveLength(15);
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
