import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LengthParts, type LengthRefusal, type LengthUnit, parseLength } from '../../../src/core/length';

const INCH = 25.4;

/** Text, unit of a bare number, millimetres, unit read. */
const READ: readonly (readonly [string, LengthUnit, number, LengthUnit])[] = [
  [`12' 3 1/2"`, 'in', 147.5 * INCH, 'ft'],
  [`12'3-1/2"`, 'in', 147.5 * INCH, 'ft'],
  [`12'-3 1/2"`, 'in', 147.5 * INCH, 'ft'],
  [`12' - 3 1/2"`, 'in', 147.5 * INCH, 'ft'],
  ['12-3-1/2', 'in', 147.5 * INCH, 'ft'],
  ['12-3 1/2', 'in', 147.5 * INCH, 'ft'],
  ['12-3-1/2', 'mm', 147.5 * INCH, 'ft'],
  ['12-3', 'in', 147 * INCH, 'ft'],
  ['12 ft 3 1/2 in', 'mm', 147.5 * INCH, 'ft'],
  ['12 FEET 3 AND 1/2 INCHES', 'mm', 147.5 * INCH, 'ft'],
  ['12 ft. 3 in.', 'mm', 147 * INCH, 'ft'],
  [`12' 3.5"`, 'in', 147.5 * INCH, 'ft'],
  [`12' 1/2"`, 'in', 144.5 * INCH, 'ft'],
  ['12\u2019 3 1/2\u201D', 'in', 147.5 * INCH, 'ft'],
  ['12\u2032 3 1/2\u2033', 'in', 147.5 * INCH, 'ft'],
  [`12' 3 1/2''`, 'in', 147.5 * INCH, 'ft'],
  ['12\u2032 3\u00BD\u2032\u2032', 'in', 147.5 * INCH, 'ft'],
  [`5' 8`, 'in', 68 * INCH, 'ft'],
  [`5'8`, 'mm', 68 * INCH, 'ft'],
  [`12'`, 'in', 144 * INCH, 'ft'],
  [`12.5'`, 'in', 150 * INCH, 'ft'],
  ['12.29 ft', 'in', 12.29 * 12 * INCH, 'ft'],
  ['12 1/2 ft', 'in', 150 * INCH, 'ft'],
  ['12', 'ft', 144 * INCH, 'ft'],
  ['12.25', 'ft', 147 * INCH, 'ft'],
  ['147 1/2', 'in', 147.5 * INCH, 'in'],
  ['147 1/2"', 'mm', 147.5 * INCH, 'in'],
  ['147.5 in', 'mm', 147.5 * INCH, 'in'],
  ['147,5', 'in', 147.5 * INCH, 'in'],
  ['47 5/8', 'in', 47.625 * INCH, 'in'],
  ['47-5/8', 'in', 47.625 * INCH, 'in'],
  ['47\u215D', 'in', 47.625 * INCH, 'in'],
  ['47 5\u20448', 'in', 47.625 * INCH, 'in'],
  ['\u215D', 'in', 0.625 * INCH, 'in'],
  ['47\u00A05/8\u2009in', 'mm', 47.625 * INCH, 'in'],
  ['\uFF14\uFF17 \uFF15\uFF0F\uFF18', 'in', 47.625 * INCH, 'in'],
  ['.5"', 'mm', 0.5 * INCH, 'in'],
  ['3755', 'mm', 3755, 'mm'],
  ['  3755 MM  ', 'in', 3755, 'mm'],
  ['375.5cm', 'in', 3755, 'cm'],
  ['3.755 m', 'in', 3755, 'm'],
  ['3,755 m', 'in', 3755, 'm'],
  ['3,755', 'm', 3755, 'm'],
  ['3.755 metres', 'in', 3755, 'm'],
  ['375,5', 'cm', 3755, 'cm'],
  ['0,755 mm', 'in', 0.755, 'mm'],
  ['3,755.5 mm', 'in', 3755.5, 'mm'],
  ['3.755,5 mm', 'in', 3755.5, 'mm'],
  ['3\u2009755 mm', 'in', 3755, 'mm'],
  ['3 755', 'mm', 3755, 'mm'],
  ['-12', 'mm', -12, 'mm'],
  [`-1' 6"`, 'in', -18 * INCH, 'ft'],
  ['\u22123/8"', 'in', -0.375 * INCH, 'in'],
  ['-0', 'mm', 0, 'mm'],
];

/** Text, unit of a bare number, why it is refused, the beginning that made sense. */
const REFUSED: readonly (readonly [string, LengthUnit, LengthRefusal, string])[] = [
  ['', 'in', 'empty', ''],
  [' \u00A0 ', 'in', 'empty', ''],
  ['abc', 'in', 'not-a-length', ''],
  ['NaN', 'in', 'not-a-length', ''],
  ['Infinity', 'mm', 'not-a-length', ''],
  ['1e3', 'mm', 'not-a-length', '1'],
  ['5\u00B2', 'in', 'not-a-length', '5'],
  ['-', 'in', 'not-a-length', ''],
  ['--5', 'in', 'not-a-length', ''],
  [`12'"`, 'in', 'not-a-length', '12 ft'],
  [`12' 3 1/`, 'in', 'not-a-length', '12 ft 3'],
  ['1/2.5', 'in', 'not-a-length', '1'],
  ['3 mmm', 'in', 'not-a-length', '3'],
  ['12 - 3', 'in', 'two-numbers', '12'],
  [`12' 15"`, 'in', 'inches-over-eleven', '12 ft'],
  [`12' 12"`, 'in', 'inches-over-eleven', '12 ft'],
  [`-12' 15"`, 'in', 'inches-over-eleven', '-12 ft'],
  ['3/0', 'in', 'zero-denominator', ''],
  ['47 3/0', 'in', 'zero-denominator', '47'],
  ['5/3"', 'in', 'improper-fraction', ''],
  ['8/8', 'in', 'improper-fraction', ''],
  ['47 1/3', 'in', 'odd-fraction', '47'],
  ['47 \u2153', 'in', 'odd-fraction', '47'],
  ['47 5/128', 'in', 'odd-fraction', '47'],
  ['1.2.3', 'mm', 'several-decimal-points', ''],
  ['5 1..2', 'mm', 'several-decimal-points', '5'],
  ['3,755 mm', 'in', 'ambiguous-comma', ''],
  ['3,755', 'mm', 'ambiguous-comma', ''],
  ['3,755 cm', 'in', 'ambiguous-comma', ''],
  ['3,755 ft', 'in', 'ambiguous-comma', ''],
  ['3 m 2 in', 'in', 'mixed-units', '3 m'],
  [`3' 2 cm`, 'in', 'mixed-units', '3 ft 2'],
  ['3 m 20 cm', 'mm', 'mixed-units', '3 m'],
  [`3" 12'`, 'in', 'mixed-units', '3 in'],
  [`12.5' 3"`, 'in', 'mixed-forms', '12.5 ft'],
  ['147.5 1/2', 'in', 'mixed-forms', '147.5'],
  ['3 1/2 mm', 'mm', 'mixed-forms', '3'],
  ['5 8', 'in', 'two-numbers', '5'],
  ['12 34', 'mm', 'two-numbers', '12'],
  ['147 1/2', 'mm', 'unit-needed', '147'],
  ['12 1/2', 'ft', 'unit-needed', '12'],
  ['12-3', 'mm', 'unit-needed', '12'],
  ['3755000', 'mm', 'too-large', '3755000'],
  ['1'.repeat(49), 'mm', 'too-long', ''],
];

const PARTS: readonly (readonly [string, LengthUnit, LengthParts])[] = [
  [`12' 3 1/2"`, 'in', { form: 'feet-inches', feet: 12, inches: 3, numerator: 1, denominator: 2 }],
  [`-5' 8`, 'in', { form: 'feet-inches', feet: 5, inches: 8, negative: true }],
  ['47 4/8', 'in', { form: 'inches', inches: 47, numerator: 4, denominator: 8 }],
  ['5/8', 'in', { form: 'inches', numerator: 5, denominator: 8 }],
  ['12.29 ft', 'in', { form: 'decimal', decimal: 12.29 }],
  ['147.5', 'in', { form: 'decimal', decimal: 147.5 }],
  ['375.5 cm', 'in', { form: 'metric', decimal: 375.5 }],
];

describe('parseLength', () => {
  it.each(READ)('reads %j with default %s', (text, unit, expected, unitRead) => {
    const parsed = parseLength(text, unit);
    expect(parsed).toMatchObject({ ok: true, unit: unitRead });
    if (parsed.ok) expect(parsed.mm).toBeCloseTo(expected, 9);
  });

  it.each(REFUSED)('refuses %j with default %s: %s', (text, unit, why, understood) => {
    expect(parseLength(text, unit)).toEqual({ ok: false, why, understood });
  });

  it.each(PARTS)('keeps the parts of %j as typed', (text, unit, parts) => {
    expect(parseLength(text, unit)).toMatchObject({ ok: true, parts });
    const parsed = parseLength(text, unit);
    if (parsed.ok) expect(parsed.parts).toEqual(parts);
  });

  it('gives no negative zero, which would print and compare oddly', () => {
    expect(parseLength('-0', 'mm')).toMatchObject({ ok: true, mm: 0 });
    expect(parseLength(`-0' 0"`, 'in')).toMatchObject({ ok: true, mm: 0 });
  });
});

describe('parseLength, for every reading', () => {
  const sixtyFourths = fc.integer({ min: 0, max: 64 * 12 * 99 });

  it('gives the same bits for one reading typed in feet and inches, inches, and decimals', () => {
    fc.assert(
      fc.property(sixtyFourths, (steps) => {
        const inches = Math.floor(steps / 64);
        const fraction = ` ${steps % 64}/64`;
        const texts = [
          `${Math.floor(inches / 12)}' ${inches % 12}${fraction}"`,
          `${Math.floor(inches / 12)}-${inches % 12}${fraction.replace(' ', '-')}`,
          `${inches}${fraction}`,
          `${steps / 64} in`,
        ];
        const lengths = texts.map((text) => {
          const parsed = parseLength(text, 'in');
          return parsed.ok ? parsed.mm : parsed.why;
        });
        expect(new Set(lengths)).toEqual(new Set([(steps * 127) / 320]));
      }),
    );
  });

  it('gives the same bits in mm, cm and m, with a point or a comma', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 200_000 }), (length) => {
        const metres = (length / 1000).toFixed(3);
        for (const text of [
          `${length}`,
          `${(length / 10).toFixed(1)} cm`,
          `${metres}m`,
          `${metres.replace('.', ',')} m`,
        ]) {
          expect(parseLength(text, 'mm')).toMatchObject({ ok: true, mm: length });
        }
      }),
    );
  });

  it('turns the sign and nothing else for a leading minus', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 1, max: 11 }), (feet, inches) => {
        const plus = parseLength(`${feet}' ${inches} 1/4"`, 'in');
        const minus = parseLength(`-${feet}' ${inches} 1/4"`, 'in');
        expect(plus.ok && minus.ok && plus.mm + minus.mm).toBe(0);
      }),
    );
  });

  it('never throws, and every length it gives is finite and no longer than a boat', () => {
    const keys = fc.constantFrom(...`0123456789 .,-/'"mcinft\u00BD\u2033\u00A0x`);
    const text = fc.oneof(
      fc.string(),
      fc.array(keys, { maxLength: 14 }).map((list) => list.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom<LengthUnit>('mm', 'cm', 'm', 'in', 'ft'), (typed, unit) => {
        const parsed = parseLength(typed, unit);
        if (parsed.ok) expect(Math.abs(parsed.mm)).toBeLessThanOrEqual(200_000);
        else if (parsed.understood !== '') {
          const again = parseLength(parsed.understood, unit);
          expect(again.ok || again.why).toBeOneOf([true, 'too-large']);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
