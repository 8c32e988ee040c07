import type { PieceKind } from '../../job/index.ts';
import type { Guide } from '../guide.ts';
import { boxCover } from './box-cover/guide.ts';
import { cockpitCover } from './cockpit-cover/guide.ts';
import { cushion } from './cushion/guide.ts';
import { dropCurtain } from './drop-curtain/guide.ts';
import { enclosurePanel } from './enclosure-panel/guide.ts';
import { foldingTop } from './folding-top/guide.ts';
import { mooringCover } from './mooring-cover/guide.ts';
import { openBow } from './open-bow/guide.ts';
import { tensionShade } from './tension-shade/guide.ts';

/** The pieces that can be measured, in the order they are offered: the most asked-for first. */
export const guides: readonly Guide[] = [
  tensionShade,
  openBow,
  cockpitCover,
  dropCurtain,
  mooringCover,
  enclosurePanel,
  foldingTop,
  boxCover,
  cushion,
];

/** The guide of a kind; undefined for pieces that came as a table. */
export function guideOf(kind: PieceKind): Guide | undefined {
  return guides.find((guide) => guide.kind === kind);
}
