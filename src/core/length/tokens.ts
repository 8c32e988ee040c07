import type { LengthUnit } from './units.ts';

/** `N` whole number, `D` number with decimals; its value is `n / d`. */
export interface NumberToken {
  readonly shape: 'N' | 'D';
  readonly text: string;
  readonly n: number;
  readonly d: number;
  /** A comma before exactly three digits: thousands to one reader, decimals to another. */
  readonly ambiguous: boolean;
}
/** `F`: a fraction as typed, not yet judged. */
export interface FractionToken {
  readonly shape: 'F';
  readonly text: string;
  readonly n: number;
  readonly d: number;
}
/** `'` feet, `"` inches, `m` any metric unit. */
export interface UnitToken {
  readonly shape: "'" | '"' | 'm';
  readonly text: string;
  readonly unit: LengthUnit;
}
/** `-` a dash that touches both neighbours, `~` a dash with space beside it (which may mean a subtraction). */
interface DashToken {
  readonly shape: '-' | '~';
  readonly text: '-';
}
export type Token = NumberToken | FractionToken | UnitToken | DashToken;

interface Tokens {
  readonly negative: boolean;
  readonly tokens: readonly Token[];
  /** Why reading stopped before the end of the text, if it did. */
  readonly stopped?: 'not-a-length' | 'several-decimal-points';
}

const UNIT_WORDS: readonly (readonly [RegExp, LengthUnit])[] = [
  [/^(?:millimet(?:re|er)s?|mm)(?![a-z])\.?/, 'mm'],
  [/^(?:centimet(?:re|er)s?|cm)(?![a-z])\.?/, 'cm'],
  [/^(?:met(?:re|er)s?|m)(?![a-z])\.?/, 'm'],
  [/^(?:inch(?:es)?|ins?)(?![a-z])\.?/, 'in'],
  [/^"/, 'in'],
  [/^(?:feet|foot|ft)(?![a-z])\.?/, 'ft'],
  [/^'/, 'ft'],
];

const UNIT_SHAPES: Record<LengthUnit, UnitToken['shape']> = { mm: 'm', cm: 'm', m: 'm', in: '"', ft: "'" };

/**
 * One spelling for what keyboards, phones and other programs write differently. Characters are mapped one by one and
 * not by a Unicode compatibility form, which would turn the raised two of `5²` into 52.
 */
export function tidy(text: string): string {
  return text
    .replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[\u00BC-\u00BE\u2150-\u215E\u2189]/g, (fraction) => ` ${fraction.normalize('NFKC')} `)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2010-\u2015\u2212\uFE58\uFE63]/g, '-')
    .replace(/[\u2018\u2019\u201B\u2032\u02B9\u02BC\u0060\u00B4]/g, "'")
    .replace(/[\u201C-\u201F\u2033\u02BA\u3003]/g, '"')
    .replace(/[\u200B-\u200F\u2060]/g, '')
    .toLowerCase()
    .replace(/\band\b|&/g, ' ')
    .replace(/''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();
}

function numberToken(text: string): NumberToken | undefined {
  const english = text.replace(/^([1-9]\d{0,2}(?:,\d{3})+)(?=\.\d)/, (whole) => whole.replaceAll(',', ''));
  const continental = english.replace(/^([1-9]\d{0,2}(?:\.\d{3})+)(?=,\d)/, (whole) => whole.replaceAll('.', ''));
  const found = /^(\d*)(?:[.,](\d*))?$/.exec(continental);
  const whole = found?.[1] ?? '';
  const decimals = found?.[2] ?? '';
  if (!found || whole + decimals === '') return undefined;
  return {
    shape: decimals === '' ? 'N' : 'D',
    text,
    n: Number(whole + decimals),
    d: 10 ** decimals.length,
    ambiguous: /^[1-9]\d{0,2},\d{3}$/.test(text),
  };
}

function unitToken(rest: string): { readonly token: UnitToken; readonly length: number } | undefined {
  for (const [pattern, unit] of UNIT_WORDS) {
    const found = pattern.exec(rest);
    if (found) return { token: { shape: UNIT_SHAPES[unit], text: unit, unit }, length: found[0].length };
  }
  return undefined;
}

/** Splits tidied text into numbers, fractions, units and dashes, as far as it makes sense. */
export function tokenise(tidied: string): Tokens {
  const negative = tidied.startsWith('-');
  let rest = tidied.replace(/^[-+] ?/, '');
  const tokens: Token[] = [];
  while (rest !== '') {
    const fraction = /^(\d+) ?\/ ?(\d+)(?![\d.,])/.exec(rest);
    const blob = /^[\d.,]+/.exec(rest);
    const dash = /^ ?- ?/.exec(rest);
    const unit = unitToken(rest);
    let used = 0;
    if (fraction) {
      const [text, n, d] = fraction;
      tokens.push({ shape: 'F', text: text.replaceAll(' ', ''), n: Number(n), d: Number(d) });
      used = text.length;
    } else if (blob) {
      const token = numberToken(blob[0]);
      if (!token) return { negative, tokens, stopped: 'several-decimal-points' };
      tokens.push(token);
      used = blob[0].length;
    } else if (dash && tokens.length > 0) {
      tokens.push({ shape: dash[0] === '-' ? '-' : '~', text: '-' });
      used = dash[0].length;
    } else if (unit) {
      tokens.push(unit.token);
      used = unit.length;
    } else if (rest.startsWith(' ')) {
      used = 1;
    } else {
      return { negative, tokens, stopped: 'not-a-length' };
    }
    rest = rest.slice(used);
  }
  return { negative, tokens };
}

/** Tokens as a person would read them back: `12 ft 3`, `12-3-1/2`. */
export function asText(tokens: readonly Token[], negative: boolean): string {
  const body = tokens
    .map((token) => token.text)
    .join(' ')
    .replaceAll(' - ', '-');
  return negative && body !== '' ? `-${body}` : body;
}
