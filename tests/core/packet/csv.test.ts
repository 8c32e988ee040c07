import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseCsv, writeCsv } from '../../../src/core/packet/csv.ts';

const cells = (text: string, delimiter: ',' | ';' | '\t' = ',') =>
  parseCsv(text, delimiter).map((record) => record.cells);

describe('parseCsv', () => {
  // RFC 4180, section 2: the rules and their examples.
  it.each([
    [
      '1: records end with a line break',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '2: the last may go without',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '5: cells may be quoted',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '6: quoted cells hold breaks and commas',
      '"aaa","b\r\nb,b","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nb,b', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['7: a quote inside is doubled', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('follows RFC 4180, rule %s', (_, text, expected) => {
    expect(cells(text)).toEqual(expected);
  });

  it.each([
    ['a byte order mark', '\ufeffa,b', [['a', 'b']]],
    ['inch marks in a bare cell', `a,12' 3 1/2",b`, [['a', `12' 3 1/2"`, 'b']]],
    [
      'old line ends and blank lines',
      'a,b\r\r\n\nc,d\n\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    ['blanks about cells', ' a ,\t"b" ,c', [['a', '"b"', 'c']]],
    ['empty cells at the end', 'a,,\n', [['a', '', '']]],
    ['nothing', '', []],
  ])('reads %s', (_, text, expected) => {
    expect(cells(text)).toEqual(expected);
  });

  it('knows where each record begins', () => {
    expect(parseCsv('a\n\n"b\nb",c\r\nd', ',').map((record) => record.line)).toEqual([1, 3, 5]);
  });

  it('marks a record that breaks the quoting', () => {
    expect(parseCsv('"a"b,c\n"d', ',').map((record) => record.fault)).toEqual(['text-after-quote', 'open-quote']);
  });
});

describe('writeCsv', () => {
  it.each([
    ['plain text', 'bow', 'bow'],
    ['a number below nought', '-3.5', '-3.5'],
    ['a number with its sign', '+12', '+12'],
    ['a formula', '=1+1', "'=1+1"],
    ['a call', '@SUM(A1)', "'@SUM(A1)"],
    ['a sum', '+1+1', "'+1+1"],
    ['a difference', '-2+3', "'-2+3"],
    ['a formula behind a quote', '=HYPERLINK("x","y")', `"'=HYPERLINK(""x"",""y"")"`],
    ['a formula in wide letters', '＝1', "'＝1"],
    ['what looks neutralised already', "'=1", "''=1"],
    ['an apostrophe of its own', "'tis", "'tis"],
    ['a comma', 'a,b', '"a,b"'],
  ])('writes %s', (_, cell, expected) => {
    expect(writeCsv([[cell]])).toBe(`${expected}\r\n`);
  });

  it('lets no cell begin as a formula does', () => {
    fc.assert(
      fc.property(fc.constantFrom('=', '+', '-', '@', '\t', '\r'), fc.string(), (sign, rest) => {
        fc.pre(!/^\d+(\.\d+)?$/.test(rest));
        expect(writeCsv([[sign + rest]])).toMatch(/^"?'/);
      }),
    );
  });

  it('is read back as it was', () => {
    const cell = fc
      .oneof(fc.string(), fc.string({ unit: fc.constantFrom("'", '=', '-', '"', ',', '\n', '\r', ' ', 'a', '1', '@') }))
      .map((text) => text.trim());
    const row = fc.array(cell, { minLength: 1, maxLength: 4 }).filter((cells) => cells.some((one) => one !== ''));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 4 }), (rows) => {
        expect(cells(writeCsv(rows))).toEqual(rows);
      }),
    );
  });
});
