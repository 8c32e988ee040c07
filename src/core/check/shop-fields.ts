import { defaultAllowances, instrumentsOf, type ShopRules } from '../job/index.ts';
import { limitsOf } from './limits.ts';

/** What a shop can set, one number each. Permanent: texts and tests name them. */
export const SHOP_FIELDS = [
  'line',
  'corner',
  'owner',
  'gap-min',
  'gap-max',
  'end',
  'sides',
  'tape-short',
  'tape-long',
  'girth-short',
  'girth-long',
  'offset-short',
  'offset-long',
  'hem',
  'hollow',
  'trim',
] as const;
export type ShopField = (typeof SHOP_FIELDS)[number];

/** length: mm. times: a plain factor. share: of a span, 0 to 1. */
export type Quantity = 'length' | 'times' | 'share';

/** The long span over which people know their tapes, mm. */
export const LONG_SPAN = 3000;

/** Numbers a shop can mean; beyond them it is a slip of the finger. */
const RANGES: Readonly<Record<ShopField, { min: number; max: number; quantity: Quantity }>> = {
  line: { min: 1, max: 100, quantity: 'length' },
  corner: { min: 1, max: 100, quantity: 'length' },
  owner: { min: 1, max: 10, quantity: 'times' },
  'gap-min': { min: 10, max: 1000, quantity: 'length' },
  'gap-max': { min: 10, max: 1000, quantity: 'length' },
  end: { min: 5, max: 500, quantity: 'length' },
  sides: { min: 1, max: 500, quantity: 'length' },
  'tape-short': { min: 0.5, max: 50, quantity: 'length' },
  'tape-long': { min: 0.5, max: 100, quantity: 'length' },
  'girth-short': { min: 0.5, max: 50, quantity: 'length' },
  'girth-long': { min: 0.5, max: 100, quantity: 'length' },
  'offset-short': { min: 0.5, max: 50, quantity: 'length' },
  'offset-long': { min: 0.5, max: 100, quantity: 'length' },
  hem: { min: 0, max: 200, quantity: 'length' },
  hollow: { min: 0, max: 0.25, quantity: 'share' },
  trim: { min: 0, max: 500, quantity: 'length' },
};
export const rangeOf = (field: ShopField) => RANGES[field];

export type ShopFault = 'out-of-range' | 'min-above-max' | 'long-below-short';
export type ShopSetting =
  | { readonly ok: true; readonly shop: ShopRules }
  | { readonly ok: false; readonly why: ShopFault };

/** Far below any mark of a tape, mm: what lies so near is the same. */
const SAME = 1e-6;
const same = (a: number, b: number): boolean => Math.abs(a - b) < SAME;

interface Spread {
  readonly base: number;
  readonly perMetre: number;
}
type Tape = 'tape' | 'girth' | 'offset';

/** What 19 readings in 20 stay within, mm: two standard deviations, on a short span and over the long one. */
const within = ({ base, perMetre }: Spread) => ({ short: 2 * base, long: 2 * (base + (perMetre * LONG_SPAN) / 1000) });
function spreadOf(short: number, long: number): Spread {
  const growth = (long - short) / 2 / (LONG_SPAN / 1000);
  return { base: short / 2, perMetre: same(growth, 0) ? 0 : growth };
}

/** The number a shop goes by: its own where it set one, the default otherwise. */
export function shopValue(shop: ShopRules | null, field: ShopField): number {
  const limits = limitsOf(shop);
  const instruments = instrumentsOf(shop);
  switch (field) {
    case 'line':
    case 'corner':
      return limits.tolerance[field];
    case 'owner':
      return limits.ownerFactor;
    case 'gap-min':
      return limits.fastenerGap.min;
    case 'gap-max':
      return limits.fastenerGap.max;
    case 'end':
      return limits.fastenerEnd;
    case 'sides':
      return limits.portStarboard;
    case 'hem':
    case 'hollow':
    case 'trim':
      return shop?.[field] ?? defaultAllowances[field];
    default: {
      const [tape, span] = tapeAndSpan(field);
      return within(instruments[tape])[span];
    }
  }
}

const tapeAndSpan = (field: ShopField): [Tape, 'short' | 'long'] => field.split('-') as [Tape, 'short' | 'long'];

/** The fields in which a shop goes by a number of its own. */
export const ownFields = (shop: ShopRules | null): ShopField[] =>
  SHOP_FIELDS.filter((field) => !same(shopValue(shop, field), shopValue(null, field)));

/** Whether a job is judged alike by both. What the shop is called makes no difference. */
export const judgesAlike = (a: ShopRules | null, b: ShopRules | null): boolean =>
  SHOP_FIELDS.every((field) => same(shopValue(a, field), shopValue(b, field)));

/** One number set, or put back to the default with null. What contradicts another number is refused. */
export function withShopValue(shop: ShopRules, field: ShopField, value: number | null): ShopSetting {
  const { min, max } = RANGES[field];
  const wanted = value ?? shopValue(null, field);
  if (!(wanted >= min - SAME && wanted <= max + SAME)) return { ok: false, why: 'out-of-range' };
  const changed = tidy(put(shop, field, wanted));
  const [why] = contradictions(changed);
  return why ? { ok: false, why } : { ok: true, shop: changed };
}

/** Why a shop's settings cannot be used; empty where they can. */
export function shopFaults(shop: ShopRules): ShopFault[] {
  const outside = SHOP_FIELDS.filter((field) => {
    const value = shopValue(shop, field);
    return !(value >= RANGES[field].min - SAME && value <= RANGES[field].max + SAME);
  });
  return [...(outside.length > 0 ? (['out-of-range'] as const) : []), ...contradictions(shop)];
}

function contradictions(shop: ShopRules): ShopFault[] {
  const faults: ShopFault[] = [];
  if (shopValue(shop, 'gap-min') > shopValue(shop, 'gap-max')) faults.push('min-above-max');
  for (const tape of ['tape', 'girth', 'offset'] as const)
    if (shopValue(shop, `${tape}-long`) < shopValue(shop, `${tape}-short`) - SAME) faults.push('long-below-short');
  return faults;
}

function put(shop: ShopRules, field: ShopField, value: number): ShopRules {
  const { tolerance, fastenerGap } = limitsOf(shop);
  switch (field) {
    case 'line':
    case 'corner':
      return { ...shop, tolerance: { ...tolerance, [field]: value } };
    case 'owner':
      return { ...shop, ownerFactor: value };
    case 'gap-min':
      return { ...shop, fastenerGap: { ...fastenerGap, min: value } };
    case 'gap-max':
      return { ...shop, fastenerGap: { ...fastenerGap, max: value } };
    case 'end':
      return { ...shop, fastenerEnd: value };
    case 'sides':
      return { ...shop, portStarboard: value };
    case 'hem':
    case 'hollow':
    case 'trim':
      return { ...shop, [field]: value };
    default: {
      const [tape, span] = tapeAndSpan(field);
      const now = within(instrumentsOf(shop)[tape]);
      const spread = span === 'short' ? spreadOf(value, now.long) : spreadOf(now.short, value);
      return { ...shop, [tape]: spread };
    }
  }
}

/** Which fields each part of the settings holds. */
const HELD: readonly (readonly [keyof ShopRules, readonly ShopField[]])[] = [
  ['tolerance', ['line', 'corner']],
  ['ownerFactor', ['owner']],
  ['fastenerGap', ['gap-min', 'gap-max']],
  ['fastenerEnd', ['end']],
  ['portStarboard', ['sides']],
  ['tape', ['tape-short', 'tape-long']],
  ['girth', ['girth-short', 'girth-long']],
  ['offset', ['offset-short', 'offset-long']],
  ['hem', ['hem']],
  ['hollow', ['hollow']],
  ['trim', ['trim']],
];

/** Without what is the default anyway. */
function tidy(shop: ShopRules): ShopRules {
  const own = new Set(ownFields(shop));
  const gone = new Set<string>(
    HELD.filter(([, fields]) => !fields.some((field) => own.has(field))).map(([key]) => key),
  );
  return Object.fromEntries(Object.entries(shop).filter(([key]) => !gone.has(key)));
}
