import { rangeOf, type ShopField, shopValue } from '../../core/check/shop-fields.ts';
import type { ShopRules } from '../../core/job/index.ts';
import { formatLength, type LengthUnit, parseLength } from '../../core/length/index.ts';
import type { Setting } from '../../device/store/index.ts';
import { sayLength } from '../../text/length.ts';
import { sayShop } from '../../text/shop.ts';

type Units = Pick<Setting<'units'>, 'system'>;

/** What nobody can tell from a mark of the tape, mm. */
const NEAR = 0.05;
/** Above this a shop thinks in eighths of an inch, below in sixteenths, mm. */
const EIGHTHS_FROM = 10;

/** What a field says, as it stands in its box: in inches where it is a mark of the tape, in millimetres where it is not. */
export function fieldText(field: ShopField, value: number, units: Units): string {
  const { quantity } = rangeOf(field);
  if (quantity === 'share') return sayShop().share(plain(value * 100));
  if (quantity === 'times') return plain(value);
  return units.system === 'imperial' && isMark(value, FINEST) ? inchesOf(value, FINEST) : millimetres(value);
}

/** The same for reading, in both units where the shop thinks in inches: `about 1/4" (6 mm)`. */
export function fieldWords(field: ShopField, value: number, units: Units): string {
  const { quantity } = rangeOf(field);
  if (quantity === 'times') return sayShop().times(plain(value));
  if (quantity === 'share' || units.system === 'metric') return fieldText(field, value, units);
  const words = sayShop();
  if (isMark(value, FINEST)) return words.both(inchesOf(value, FINEST), millimetres(value));
  return words.nearly(inchesOf(value, value < EIGHTHS_FROM ? 16 : 8), millimetres(value));
}

/** The number a shop goes by, in words. */
export const shopWords = (shop: ShopRules | null, field: ShopField, units: Units): string =>
  fieldWords(field, shopValue(shop, field), units);

export type FieldReading = { readonly ok: true; readonly value: number } | { readonly ok: false; readonly why: string };

/** What a person typed into a field. */
export function readField(field: ShopField, text: string, units: Units): FieldReading {
  const { quantity } = rangeOf(field);
  if (quantity === 'length') {
    const unit: LengthUnit = units.system === 'metric' ? 'mm' : 'in';
    const read = parseLength(text, unit);
    return read.ok ? { ok: true, value: read.mm } : { ok: false, why: sayLength().refusals[read.why] };
  }
  const digits = /^\s*(\d+(?:[.,]\d+)?)\s*%?\s*$/.exec(text)?.[1]?.replace(',', '.');
  if (digits === undefined) return { ok: false, why: sayShop().notANumber };
  return { ok: true, value: quantity === 'share' ? Number(digits) / 100 : Number(digits) };
}

/** Two decimals at most, and none that say nothing. */
const plain = (value: number): string => String(Number(value.toFixed(2)));
const millimetres = (value: number): string => `${Number(value.toFixed(1))} mm`;
const FINEST = 32;
type Marks = 8 | 16 | 32;
const inchesOf = (value: number, denominator: Marks): string =>
  formatLength(value, { system: 'imperial', denominator, feet: 'never' });

function isMark(value: number, denominator: Marks): boolean {
  const read = parseLength(inchesOf(value, denominator), 'in');
  return read.ok && Math.abs(read.mm - value) < NEAR;
}
