/**
 * What is to be put on pages, in order; heights in any one unit.
 * head: height of the column heads that stand above the first of such items, anew on every page; 0 for none.
 * keep: a heading, which never stands last on a page.
 */
export interface Item {
  readonly height: number;
  readonly head: number;
  readonly keep: boolean;
}

/** Which items go on which page, by index: as many as fit. What is taller than a page has one of its own. */
export function paginate(items: readonly Item[], room: number): number[][] {
  const pages: number[][] = [];
  let page: number[] = [];
  let used = 0;
  const turn = (): void => {
    if (page.length === 0) return;
    const kept = trailingKept(page, items);
    // A page of nothing but headings cannot hand them on for ever.
    const stay = kept.length < page.length ? page.slice(0, page.length - kept.length) : page;
    pages.push(stay);
    page = stay === page ? [] : kept;
    used = page.reduce((sum, index, at) => sum + heightOf(items, index, page[at - 1]), 0);
  };
  for (const index of items.keys()) {
    if (used + heightOf(items, index, page.at(-1)) > room) turn();
    used += heightOf(items, index, page.at(-1));
    page.push(index);
  }
  if (page.length > 0) pages.push(page);
  return pages;
}

/** An item's own height, with its column heads where the one before it on the page has none. */
function heightOf(items: readonly Item[], index: number, before: number | undefined): number {
  const item = items[index];
  if (!item) return 0;
  const headed = before !== undefined && (items[before]?.head ?? 0) > 0;
  return item.height + (headed ? 0 : item.head);
}

function trailingKept(page: readonly number[], items: readonly Item[]): number[] {
  let from = page.length;
  while (from > 0 && items[page[from - 1] ?? -1]?.keep) from -= 1;
  return page.slice(from);
}
