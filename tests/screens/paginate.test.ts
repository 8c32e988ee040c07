import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Item, paginate } from '../../src/screens/paper/paginate.ts';

const item = (height: number, more: Partial<Item> = {}): Item => ({ height, head: 0, keep: false, ...more });
const items = fc.array(
  fc.record({ height: fc.integer({ min: 1, max: 40 }), head: fc.constantFrom(0, 5), keep: fc.boolean() }),
  { maxLength: 60 },
);

/** How high a page is, its column heads counted as they are printed. */
function heightOf(page: readonly number[], list: readonly Item[]): number {
  return page.reduce((sum, index, at) => {
    const [one, before] = [list[index], list[page[at - 1] ?? -1]];
    return sum + (one?.height ?? 0) + (before?.head ? 0 : (one?.head ?? 0));
  }, 0);
}

describe('pages', () => {
  it('hold everything once, in its order', () => {
    fc.assert(
      fc.property(items, (list) => {
        expect(paginate(list, 50).flat()).toEqual([...list.keys()]);
      }),
    );
  });

  it('are never empty, and never higher than the room but for one thing that is higher itself', () => {
    fc.assert(
      fc.property(items, (list) => {
        for (const page of paginate(list, 50)) {
          expect(page.length).toBeGreaterThan(0);
          const alone = page.filter((index) => !list[index]?.keep);
          if (heightOf(page, list) > 50) expect(alone.length).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it('begin their column heads anew', () => {
    const list = Array.from({ length: 10 }, () => item(10, { head: 5 }));
    expect(paginate(list, 50)).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9],
    ]);
  });

  it('never end on a heading', () => {
    expect(paginate([item(30), item(10, { keep: true }), item(30)], 50)).toEqual([[0], [1, 2]]);
    expect(paginate([item(30), item(5, { keep: true }), item(5, { keep: true }), item(30)], 50)).toEqual([
      [0],
      [1, 2, 3],
    ]);
  });

  it('are none for nothing', () => {
    expect(paginate([], 50)).toEqual([]);
  });
});
