import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LengthUnit, parseLength } from '../../src/core/length/index.ts';
import { type SpokenValue, valueSpoken } from '../../src/text/spoken.ts';

function spoken(text: string, unit: LengthUnit = 'in'): string {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) throw new Error(`${text} is not a length`);
  return valueSpoken(parsed);
}

describe('a value said aloud', () => {
  it.each([
    ['47 5/8', 'forty-seven and five eighths'],
    ['47', 'forty-seven inches'],
    ['1', 'one inch'],
    ['0', 'nought inches'],
    ['112 13/16', 'one hundred and twelve and thirteen sixteenths'],
    ['35 1/2', 'thirty-five and a half'],
    ['35 1/4', 'thirty-five and a quarter'],
    ['35 3/4', 'thirty-five and three quarters'],
    ['20 1/8', 'twenty and one eighth'],
    ['9 7/32', 'nine and seven thirty-seconds'],
    ['5/8', 'five eighths of an inch'],
    ['1/2', 'half an inch'],
    ["5' 8 3/8", 'five feet eight and three eighths'],
    ["5' 8", 'five feet eight'],
    ["1' 0 1/2", 'one foot nought and a half'],
    ["5' 3/8", 'five feet, three eighths of an inch'],
    ["12'", 'twelve feet'],
    ['-4 3/8', 'minus four and three eighths'],
    ['47.625', 'forty-seven point six two five inches'],
    ["5.8'", 'five point eight feet'],
  ])('%s', (text, words) => {
    expect(spoken(text)).toBe(words);
  });

  it.each([
    ['1234', 'one thousand two hundred and thirty-four millimetres'],
    ['1005', 'one thousand and five millimetres'],
    ['2000', 'two thousand millimetres'],
    ['12000', 'twelve thousand millimetres'],
    ['300', 'three hundred millimetres'],
    ['47.6 cm', 'forty-seven point six centimetres'],
    ['1.204 m', 'one point two nought four metres'],
    ['1 m', 'one metre'],
    ['-38', 'minus thirty-eight millimetres'],
  ])('%s in a metric job', (text, words) => {
    expect(spoken(text, 'mm')).toBe(words);
  });

  it('an angle', () => {
    const lean: SpokenValue = { unit: 'deg', parts: { form: 'decimal', decimal: 7.5, negative: true } };
    expect(valueSpoken(lean)).toBe('minus seven point five degrees');
  });

  it('says no two whole numbers alike, and no digit as a digit', () => {
    const number = fc.integer({ min: 0, max: 200_000 });
    const say = (n: number): string => valueSpoken({ unit: 'mm', parts: { form: 'metric', decimal: n } });
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(say(a)).toMatch(/^[a-z]+(-[a-z]+)?( [a-z]+(-[a-z]+)?)*$/);
        expect(say(a) === say(b)).toBe(a === b);
      }),
    );
  });
});
