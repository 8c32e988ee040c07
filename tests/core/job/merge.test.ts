import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Entry, ERASED, fold, merge } from '../../../src/core/job/index.ts';
import { AB, begunPhone, id, logbooks } from './support.ts';

const ids = (entries: readonly Entry[]): string[] => entries.map((e) => e.id).sort();
const three = logbooks.map((phones) => phones.map((phone) => phone.entries) as [Entry[], Entry[], Entry[]]);
const both = (a: readonly Entry[], b: readonly Entry[]): Entry[] => merge(a, b).entries;

describe('merge is set union', () => {
  it('is commutative', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        expect(both(a, b)).toEqual(both(b, a));
      }),
    );
  });

  it('is associative', () => {
    fc.assert(
      fc.property(three, ([a, b, c]) => {
        expect(both(both(a, b), c)).toEqual(both(a, both(b, c)));
      }),
    );
  });

  it('is idempotent, and taking the same packet twice adds nothing', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        const once = both(a, b);
        expect(both(once, once)).toEqual(once);
        expect(merge(once, b).added).toEqual([]);
        expect(merge(once, b).setAside).toEqual([]);
      }),
    );
  });

  it('loses no entry of either side', () => {
    fc.assert(
      fc.property(three, ([a, b]) => {
        expect(ids(both(a, b))).toEqual([...new Set([...ids(a), ...ids(b)])].sort());
      }),
    );
  });

  it('lets half a packet arrive first and the whole later', () => {
    fc.assert(
      fc.property(three, fc.nat(), ([a, b], cut) => {
        const half = b.filter((_, i) => i % 2 === cut % 2);
        expect(both(both(a, half), b)).toEqual(both(a, b));
      }),
    );
  });
});

describe('one id with two contents', () => {
  const take = { reading: AB, text: '10', unit: 'mm', value: 10 } as const;

  it('keeps what is here, sets the other aside, whichever side is asked', () => {
    const phone = begunPhone();
    const honest = phone.does('take.add', take);
    const forged = { ...honest, payload: { ...honest.payload, value: 999 } };
    const merged = merge(phone.entries, [forged]);
    expect(merged.setAside).toEqual([forged]);
    expect(merged.entries.find((e) => e.id === honest.id)).toEqual(honest);
    expect(merge([forged], [honest]).setAside).toEqual([honest]);
  });

  it('says nothing when only the order of the keys differs', () => {
    const phone = begunPhone();
    const made = phone.does('take.add', take);
    const turned = Object.fromEntries(Object.entries(made).reverse()) as Entry;
    expect(merge(phone.entries, [turned]).setAside).toEqual([]);
  });
});

describe('content that no packet carries as it stands', () => {
  const holding = (content: unknown): Entry => {
    const [opened] = begunPhone().entries;
    if (!opened) throw new Error('no entry');
    return { ...opened, id: id(1, 9), payload: { content } };
  };
  const setAside = (a: unknown, b: unknown): number => merge([holding(a)], [holding(b)]).setAside.length;
  const ring: { self?: unknown } = {};
  ring.self = ring;
  const turn: { self?: unknown } = {};
  turn.self = turn;

  it.each([
    ['half a character', '\ud800', '\ud800'],
    ['half a character and what a packet makes of it', 'a\udc00b', 'a\ufffdb'],
    ['no number', Number.NaN, Number.NaN],
    ['no number and what a packet makes of it', Number.NaN, null],
    ['an endless number', Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
    ['minus nothing', -0, 0],
    ['a field that is undefined', { a: 1, b: undefined }, { a: 1 }],
    ['other order deep within', [{ a: [{ b: 1, c: 2 }] }], [{ a: [{ c: 2, b: 1 }] }]],
    ['an undefined in a list', [undefined], [null]],
  ])('is the same: %s', (_, a, b) => {
    expect(setAside(a, b)).toBe(0);
    expect(setAside(b, a)).toBe(0);
  });

  it.each([
    ['half a character and another text', '\ud800', 'a'],
    ['no number and a number', Number.NaN, 0],
    ['a number and its text', 1, '1'],
    ['nothing and nothing said', { a: null }, {}],
    ['a list and a record', ['a'], { 0: 'a' }],
    ['a longer list', [1], [1, 2]],
    ['another field', { a: 1, b: undefined }, { b: 1 }],
    ['what every object has', { toString: undefined }, { hasOwnProperty: 1 }],
    ['things that are no JSON', new Map([[1, 2]]), new Map([[1, 3]])],
    ['large whole numbers of another kind', 1n, 1],
    ['rings', ring, turn],
  ])('differs: %s', (_, a, b) => {
    expect(setAside(a, b)).toBe(1);
    expect(setAside(b, a)).toBe(1);
  });

  it('agrees with plain JSON wherever that has words', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
        expect(setAside(a, JSON.parse(JSON.stringify(a)))).toBe(0);
        expect(setAside(a, b) === 0).toBe(canonicalize(a) === canonicalize(b));
      }),
    );
  });
});

describe('an erasure', () => {
  it('wins over the content from whichever side it comes, and cannot be erased itself', () => {
    const phone = begunPhone();
    const take = phone.does('take.add', { reading: AB, text: 'secret', unit: 'mm', value: 10 });
    const before = phone.copy();
    const erasure = phone.does('erase', { entries: [take.id], reason: 'asked' });
    phone.does('erase', { entries: [erasure.id], reason: 'to bring it back' });
    for (const entries of [both(before.entries, phone.entries), both(phone.entries, before.entries)]) {
      expect(entries.find((e) => e.id === take.id)?.payload).toEqual(ERASED);
      expect(JSON.stringify(entries)).not.toContain('secret');
      expect(fold(entries).readings[0]?.takes).toEqual([]);
    }
  });

  it('does not report the erased and the full version of an entry as two contents', () => {
    const phone = begunPhone();
    const take = phone.does('take.add', { reading: AB, text: 'x', unit: 'mm', value: 10 });
    const before = phone.copy();
    phone.does('erase', { entries: [take.id], reason: 'asked' });
    const erased = both(phone.entries, []);
    expect(merge(erased, before.entries).setAside).toEqual([]);
    expect(merge(before.entries, erased).setAside).toEqual([]);
  });
});
