import type { LengthParts } from '../../core/length/index.ts';
import type { SpokenValue } from '../en/spoken.ts';

const ONES =
  'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve'.split(
    ' ',
  );
const TENS = '   treinta cuarenta cincuenta sesenta setenta ochenta noventa'.split(' ');
const HUNDREDS =
  ' ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos'.split(' ');

/** What is counted decides how a number ends: veintiún pies, veintiuna pulgadas; alone it is veintiuno. */
type Before = 'el' | 'la' | null;

/** The one at a number's end. */
const ended = (words: string, before: Before): string =>
  before === 'la'
    ? words.replace(/uno$/, 'una')
    : before === 'el'
      ? words.replace(/veintiuno$/, 'veintiún').replace(/uno$/, 'un')
      : words;

function below1000(n: number, before: Before, hundredsBefore = before): string {
  if (n < 30) return ended(ONES[n] ?? '', before);
  if (n === 100) return 'cien';
  if (n < 100) {
    const tens = TENS[Math.floor(n / 10)] ?? '';
    return n % 10 === 0 ? tens : `${tens} y ${ended(ONES[n % 10] ?? '', before)}`;
  }
  const named = HUNDREDS[Math.floor(n / 100)] ?? '';
  const hundreds = hundredsBefore === 'la' ? named.replace(/os$/, 'as') : named;
  return n % 100 === 0 ? hundreds : `${hundreds} ${below1000(n % 100, before)}`;
}

/** Before mil a one is short whatever is counted, and the hundreds agree with it: doscientas veintiún mil pulgadas. */
const thousands = (n: number, before: Before): string => (n === 1 ? 'mil' : `${below1000(n, 'el', before)} mil`);

function whole(n: number, before: Before): string {
  if (n < 1000) return below1000(n, before);
  const said = thousands(Math.floor(n / 1000), before);
  return n % 1000 === 0 ? said : `${said} ${below1000(n % 1000, before)}`;
}

/** Decimals one by one, as people read them off: uno coma dos tres cuatro. */
function decimal(n: number, before: Before): string {
  const [digits = '0', after] = String(n).split('.');
  if (after === undefined) return whole(Number(digits), before);
  return `${whole(Number(digits), null)} coma ${[...after].map((digit) => ONES[Number(digit)]).join(' ')}`;
}

const PARTS: Readonly<Record<number, readonly [one: string, many: string]>> = {
  2: ['medio', 'medios'],
  4: ['un cuarto', 'cuartos'],
  8: ['un octavo', 'octavos'],
  16: ['un dieciseisavo', 'dieciseisavos'],
  32: ['un treintaidosavo', 'treintaidosavos'],
  64: ['un sesentaicuatroavo', 'sesentaicuatroavos'],
};

function fraction({ numerator, denominator }: LengthParts): string {
  const [one, many] = PARTS[denominator ?? 0] ?? [];
  if (numerator === undefined || numerator === 0 || one === undefined) return '';
  return numerator === 1 ? one : `${whole(numerator, 'el')} ${many}`;
}

/** A fraction with nothing before it. */
const alone = (over: string): string => (over === 'medio' ? 'media pulgada' : `${over} de pulgada`);

const UNITS = {
  mm: ['el', 'milímetro', 'milímetros'],
  cm: ['el', 'centímetro', 'centímetros'],
  m: ['el', 'metro', 'metros'],
  in: ['la', 'pulgada', 'pulgadas'],
  ft: ['el', 'pie', 'pies'],
  deg: ['el', 'grado', 'grados'],
} as const;

function counted(n: number, unit: keyof typeof UNITS): string {
  const [before, one, many] = UNITS[unit];
  return `${decimal(n, before)} ${n === 1 ? one : many}`;
}

/** Inches as such, with the fraction after them: without the word, "treinta y cinco octavos" is said of two values. */
const inchesAnd = (inches: number, over: string): string =>
  [counted(inches, 'in'), over === 'medio' ? 'media' : over].filter(Boolean).join(' y ');

function inFeet(parts: LengthParts): string {
  const feet = counted(parts.feet ?? 0, 'ft');
  const over = fraction(parts);
  if (parts.inches === undefined) return over === '' ? feet : `${feet}, ${alone(over)}`;
  // "Diez y siete octavos" sounds as diecisiete does.
  if (parts.inches === 10 && over !== '') return `${feet} ${inchesAnd(10, over)}`;
  return [`${feet} ${decimal(parts.inches, null)}`, over].filter(Boolean).join(' y ');
}

function inInches(parts: LengthParts): string {
  const over = fraction(parts);
  if (parts.inches === undefined || parts.inches === 0) return over === '' ? 'cero pulgadas' : alone(over);
  return inchesAnd(parts.inches, over);
}

/**
 * A value as it is said aloud: cuarenta y siete pulgadas y cinco octavos; cinco pies ocho y medio; mil doscientos treinta y
 * cuatro milímetros. From the parts as typed, so that a slip of the thumb is heard.
 */
export function valueSpoken({ unit, parts }: SpokenValue): string {
  const said =
    parts.form === 'feet-inches'
      ? inFeet(parts)
      : parts.form === 'inches'
        ? inInches(parts)
        : counted(parts.decimal ?? 0, unit);
  return parts.negative ? `menos ${said}` : said;
}
