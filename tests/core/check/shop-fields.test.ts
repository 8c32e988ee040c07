import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sigmaOf } from '../../../src/core/check/index.ts';
import { limitsOf } from '../../../src/core/check/limits.ts';
import {
  judgesAlike,
  LONG_SPAN,
  ownFields,
  rangeOf,
  SHOP_FIELDS,
  type ShopField,
  shopFaults,
  shopValue,
  withShopValue,
} from '../../../src/core/check/shop-fields.ts';
import { instrumentsOf, ShopRules } from '../../../src/core/job/index.ts';
import { installer } from './build.ts';

const field = fc.constantFrom(...SHOP_FIELDS);
const inRange = (of: ShopField) => fc.double({ ...rangeOf(of), noNaN: true });
/** Any numbers set one after the other; what contradicts is refused and leaves the rest as it was. */
const shops = fc
  .array(
    field.chain((of) => fc.tuple(fc.constant(of), inRange(of))),
    { maxLength: 12 },
  )
  .map((list) =>
    list.reduce<ShopRules>((shop, [of, value]) => {
      const set = withShopValue(shop, of, value);
      return set.ok ? set.shop : shop;
    }, {}),
  );

describe('what a shop sets', () => {
  it('is nothing at first, and every default is inside its own range', () => {
    expect(ownFields(null)).toEqual([]);
    expect(ownFields({ shop: 'A shop' })).toEqual([]);
    expect(shopFaults({})).toEqual([]);
  });

  it('is what is judged by then, and nothing else changes', () => {
    fc.assert(
      fc.property(shops, field, fc.nat(), (shop, of, pick) => {
        const { min, max } = rangeOf(of);
        const value = min + ((max - min) * (pick % 1000)) / 1000;
        const set = withShopValue(shop, of, value);
        if (!set.ok) {
          expect(['min-above-max', 'long-below-short']).toContain(set.why);
          return;
        }
        expect(shopValue(set.shop, of)).toBeCloseTo(value, 6);
        for (const other of SHOP_FIELDS)
          if (other !== of) expect(shopValue(set.shop, other)).toBeCloseTo(shopValue(shop, other), 6);
        expect(ShopRules.safeParse(set.shop).success).toBe(true);
        expect(shopFaults(set.shop)).toEqual([]);
      }),
    );
  });

  it('goes back to the default one by one, and then nothing is left', () => {
    fc.assert(
      fc.property(shops, (shop) => {
        // The long span first: a short one cannot be put back above it.
        const order = [...SHOP_FIELDS].sort((a, b) => Number(b.endsWith('long')) - Number(a.endsWith('long')));
        let now: ShopRules = shop;
        for (let round = 0; round < 2; round++)
          for (const of of order) {
            const set = withShopValue(now, of, null);
            if (set.ok) now = set.shop;
          }
        expect(now).toEqual({});
        expect(judgesAlike(now, null)).toBe(true);
      }),
    );
  });

  it('keeps the name of the shop, which changes no judgement', () => {
    const set = withShopValue({ shop: 'A shop' }, 'line', 9);
    expect(set.ok && set.shop).toEqual({ shop: 'A shop', tolerance: { line: 9, corner: 12 } });
    expect(judgesAlike({ shop: 'A shop' }, { shop: 'Another' })).toBe(true);
    expect(judgesAlike({ tolerance: { line: 9, corner: 12 } }, null)).toBe(false);
  });

  it('is refused where it is a slip of the finger or contradicts another number', () => {
    expect(withShopValue({}, 'line', 600)).toEqual({ ok: false, why: 'out-of-range' });
    expect(withShopValue({}, 'line', Number.NaN)).toEqual({ ok: false, why: 'out-of-range' });
    expect(withShopValue({}, 'gap-min', 210)).toEqual({ ok: false, why: 'min-above-max' });
    expect(withShopValue({}, 'tape-short', 5)).toEqual({ ok: false, why: 'long-below-short' });
    expect(shopFaults({ fastenerGap: { min: 300, max: 200 } })).toEqual(['min-above-max']);
    expect(shopFaults({ trim: 90_000 })).toEqual(['out-of-range']);
  });

  it('says of a tape what 19 readings in 20 stay within: twice the standard deviation', () => {
    expect([shopValue(null, 'tape-short'), shopValue(null, 'tape-long')]).toEqual([2, 3.8]);
    const set = withShopValue({}, 'tape-long', 8);
    const shop = set.ok ? set.shop : {};
    const take = { text: '3000', unit: 'mm', value: LONG_SPAN, sigma: null } as const;
    expect(sigmaOf({ kind: 'straight' }, take, installer, instrumentsOf(shop))).toBeCloseTo(4, 9);
    expect(limitsOf(shop)).toEqual(limitsOf(null));
  });
});
