import type { LengthParts } from '../../core/length/index.ts';

/** A length as it was understood, or an angle. */
export interface SpokenValue {
  readonly unit: 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'deg';
  readonly parts: LengthParts;
}

const ONES =
  'nought one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = ' ten twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function whole(n: number): string {
  if (n < 20) return ONES[n] ?? '';
  if (n < 100) return [TENS[Math.floor(n / 10)], n % 10 > 0 ? ONES[n % 10] : ''].filter(Boolean).join('-');
  if (n < 1000)
    return [`${ONES[Math.floor(n / 100)]} hundred`, n % 100 > 0 ? whole(n % 100) : ''].filter(Boolean).join(' and ');
  const rest = n % 1000;
  const thousands = `${whole(Math.floor(n / 1000))} thousand`;
  return rest === 0 ? thousands : `${thousands}${rest < 100 ? ' and' : ''} ${whole(rest)}`;
}

/** Decimals one by one, as people read them off: one point two three four. */
function decimal(n: number): string {
  const [before = '0', after] = String(n).split('.');
  const spoken = whole(Number(before));
  return after === undefined ? spoken : `${spoken} point ${[...after].map((digit) => ONES[Number(digit)]).join(' ')}`;
}

const PARTS: Readonly<Record<number, readonly [one: string, many: string]>> = {
  2: ['a half', 'halves'],
  4: ['a quarter', 'quarters'],
  8: ['one eighth', 'eighths'],
  16: ['one sixteenth', 'sixteenths'],
  32: ['one thirty-second', 'thirty-seconds'],
  64: ['one sixty-fourth', 'sixty-fourths'],
};

function fraction({ numerator, denominator }: LengthParts): string {
  const [one, many] = PARTS[denominator ?? 0] ?? [];
  if (numerator === undefined || numerator === 0 || one === undefined) return '';
  return numerator === 1 ? one : `${whole(numerator)} ${many}`;
}

/** A fraction with nothing before it. */
const alone = (over: string): string => (over === 'a half' ? 'half an inch' : `${over} of an inch`);

const counted = (n: number, one: string, many: string): string => `${decimal(n)} ${n === 1 ? one : many}`;

function inFeet(parts: LengthParts): string {
  const feet = counted(parts.feet ?? 0, 'foot', 'feet');
  const over = fraction(parts);
  if (parts.inches === undefined) return over === '' ? feet : `${feet}, ${alone(over)}`;
  return [`${feet} ${decimal(parts.inches)}`, over].filter(Boolean).join(' and ');
}

function inInches(parts: LengthParts): string {
  const over = fraction(parts);
  if (parts.inches === undefined || parts.inches === 0) return over === '' ? 'nought inches' : alone(over);
  return over === '' ? counted(parts.inches, 'inch', 'inches') : `${decimal(parts.inches)} and ${over}`;
}

const UNITS = {
  mm: ['millimetre', 'millimetres'],
  cm: ['centimetre', 'centimetres'],
  m: ['metre', 'metres'],
  in: ['inch', 'inches'],
  ft: ['foot', 'feet'],
  deg: ['degree', 'degrees'],
} as const;

/**
 * A value as the trade says it: forty-seven and five eighths; five feet eight and a half; one thousand two hundred and
 * thirty-four millimetres. From the parts as typed, so that a slip of the thumb is heard.
 */
export function valueSpoken({ unit, parts }: SpokenValue): string {
  const [one, many] = UNITS[unit];
  const said =
    parts.form === 'feet-inches'
      ? inFeet(parts)
      : parts.form === 'inches'
        ? inInches(parts)
        : counted(parts.decimal ?? 0, one, many);
  return parts.negative ? `minus ${said}` : said;
}
