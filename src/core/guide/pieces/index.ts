import type { PieceKind } from '../../job/index.ts';
import type { Guide } from '../guide.ts';
import { openBow } from './open-bow/guide.ts';
import { tensionShade } from './tension-shade/guide.ts';

/** The pieces that can be measured, in the order they are offered: the most asked-for first. */
export const guides: readonly Guide[] = [tensionShade, openBow];

/** The guide of a kind; undefined for pieces that came as a table. */
export function guideOf(kind: PieceKind): Guide | undefined {
  return guides.find((guide) => guide.kind === kind);
}
