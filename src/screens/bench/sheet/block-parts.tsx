import type { JSX } from 'preact';
import type { Block } from '../../paper/blocks.tsx';

/** A block that stands anywhere. */
export const plain = (key: string, show: () => JSX.Element): Block => ({ key, columns: null, keep: false, show });

/** A heading that stands over what follows it; nothing where nothing does. */
export function under(key: string, title: string, blocks: readonly Block[]): Block[] {
  if (blocks.length === 0) return [];
  return [{ ...plain(key, () => <h2 class="sheet-heading">{title}</h2>), keep: true }, ...blocks];
}
