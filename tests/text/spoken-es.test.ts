import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LengthUnit, parseLength } from '../../src/core/length/index.ts';
import type { SpokenValue } from '../../src/text/en/spoken.ts';
import { valueSpoken } from '../../src/text/es/spoken.ts';

function spoken(text: string, unit: LengthUnit = 'in'): string {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) throw new Error(`${text} is not a length`);
  return valueSpoken(parsed);
}

describe('a value said aloud in Spanish', () => {
  it.each([
    ['47 5/8', 'cuarenta y siete pulgadas y cinco octavos'],
    ['47', 'cuarenta y siete pulgadas'],
    ['1', 'una pulgada'],
    ['21', 'veintiuna pulgadas'],
    ['31', 'treinta y una pulgadas'],
    ['0', 'cero pulgadas'],
    ['100', 'cien pulgadas'],
    ['101', 'ciento una pulgadas'],
    ['200', 'doscientas pulgadas'],
    ['112 13/16', 'ciento doce pulgadas y trece dieciseisavos'],
    ['1 1/2', 'una pulgada y media'],
    ['35 1/2', 'treinta y cinco pulgadas y media'],
    ['35 1/4', 'treinta y cinco pulgadas y un cuarto'],
    ['35 3/4', 'treinta y cinco pulgadas y tres cuartos'],
    ['20 1/8', 'veinte pulgadas y un octavo'],
    ['9 7/32', 'nueve pulgadas y siete treintaidosavos'],
    ['9 21/32', 'nueve pulgadas y veintiún treintaidosavos'],
    ['9 1/64', 'nueve pulgadas y un sesentaicuatroavo'],
    ['9 31/64', 'nueve pulgadas y treinta y un sesentaicuatroavos'],
    ['7/16', 'siete dieciseisavos de pulgada'],
    ['5/8', 'cinco octavos de pulgada'],
    ['1/2', 'media pulgada'],
    ["3' 4 1/2", 'tres pies cuatro y medio'],
    ["5' 8 3/8", 'cinco pies ocho y tres octavos'],
    ["5' 8", 'cinco pies ocho'],
    ["5' 10", 'cinco pies diez'],
    ["5' 10 7/8", 'cinco pies diez pulgadas y siete octavos'],
    ["1' 0 1/2", 'un pie cero y medio'],
    ["5' 3/8", 'cinco pies, tres octavos de pulgada'],
    ["12'", 'doce pies'],
    ["21'", 'veintiún pies'],
    ['-4 3/8', 'menos cuatro pulgadas y tres octavos'],
    ['47.625', 'cuarenta y siete coma seis dos cinco pulgadas'],
    ['21.5', 'veintiuno coma cinco pulgadas'],
    ["5.8'", 'cinco coma ocho pies'],
  ])('%s', (text, words) => {
    expect(spoken(text)).toBe(words);
  });

  it.each([
    ['1234', 'mil doscientos treinta y cuatro milímetros'],
    ['23', 'veintitrés milímetros'],
    ['16', 'dieciséis milímetros'],
    ['101', 'ciento un milímetros'],
    ['521', 'quinientos veintiún milímetros'],
    ['1005', 'mil cinco milímetros'],
    ['2000', 'dos mil milímetros'],
    ['12000', 'doce mil milímetros'],
    ['21000', 'veintiún mil milímetros'],
    ['31001', 'treinta y un mil un milímetros'],
    ['100000', 'cien mil milímetros'],
    ['300', 'trescientos milímetros'],
    ['47.6 cm', 'cuarenta y siete coma seis centímetros'],
    ['1.204 m', 'uno coma dos cero cuatro metros'],
    ['1 m', 'un metro'],
    ['-38', 'menos treinta y ocho milímetros'],
  ])('%s in a metric job', (text, words) => {
    expect(spoken(text, 'mm')).toBe(words);
  });

  it.each([
    [21_021, 'veintiún mil veintiuna pulgadas'],
    [100_000, 'cien mil pulgadas'],
    [200_000, 'doscientas mil pulgadas'],
    [231_201, 'doscientas treinta y un mil doscientas una pulgadas'],
    [101_001, 'ciento un mil una pulgadas'],
  ])('%d inches agree with what they count', (n, words) => {
    expect(valueSpoken({ unit: 'in', parts: { form: 'decimal', decimal: n } })).toBe(words);
  });

  it('an angle', () => {
    const lean: SpokenValue = { unit: 'deg', parts: { form: 'decimal', decimal: 7.5, negative: true } };
    expect(valueSpoken(lean)).toBe('menos siete coma cinco grados');
    expect(valueSpoken({ unit: 'deg', parts: { form: 'decimal', decimal: 1 } })).toBe('un grado');
  });

  it('says no two whole numbers alike, and no digit as a digit', () => {
    const number = fc.integer({ min: 0, max: 200_000 });
    const say = (n: number): string => valueSpoken({ unit: 'mm', parts: { form: 'metric', decimal: n } });
    fc.assert(
      fc.property(number, number, (a, b) => {
        expect(say(a)).toMatch(/^[a-zéíóú]+( [a-zéíóú]+)*$/);
        expect(say(a) === say(b)).toBe(a === b);
      }),
    );
  });

  it('says no two values of a tape alike', () => {
    const said = new Map<string, string>();
    const values = [16, 32, 64].flatMap((over) =>
      Array.from({ length: over }, (_, n) => n)
        .filter((n) => n % 2 === 1 || over === 16)
        .map((n) => [n, over] as const),
    );
    for (let inches = 0; inches < 130; inches++)
      for (const [numerator, denominator] of values) {
        const words = valueSpoken({ unit: 'in', parts: { form: 'inches', inches, numerator, denominator } });
        expect(said.get(words), `${inches} ${numerator}/${denominator}`).toBeUndefined();
        said.set(words, `${inches} ${numerator}/${denominator}`);
      }
  });
});
