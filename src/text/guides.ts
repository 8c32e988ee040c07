import type { PieceKind } from '../core/job/index.ts';
import type { PieceWords, PointWords } from './en/guides/piece-words.ts';

export type { PieceWords, PointWords };

/** The words of each guide travel apart from the app's first load; they are read when a job with such a piece opens. */
const loaders: Partial<Record<PieceKind, () => Promise<PieceWords>>> = {
  'tension-shade': () => import('./en/guides/tension-shade.ts').then((m) => m.tensionShade),
  'cockpit-cover': () => import('./en/guides/cockpit-cover.ts').then((m) => m.cockpitCover),
  'drop-curtain': () => import('./en/guides/drop-curtain.ts').then((m) => m.dropCurtain),
  'mooring-cover': () => import('./en/guides/mooring-cover.ts').then((m) => m.mooringCover),
  'enclosure-panel': () => import('./en/guides/enclosure-panel.ts').then((m) => m.enclosurePanel),
  'folding-top': () => import('./en/guides/folding-top.ts').then((m) => m.foldingTop),
  'box-cover': () => import('./en/guides/box-cover.ts').then((m) => m.boxCover),
  cushion: () => import('./en/guides/cushion.ts').then((m) => m.cushion),
  'open-bow': () => import('./en/guides/open-bow.ts').then((m) => m.openBow),
};

const loaded = new Map<PieceKind, PieceWords>();

/** Reads the words of these kinds. Without them screens fall back on labels, so a failure is no reason to stop. */
export async function loadPieceWords(kinds: Iterable<PieceKind>): Promise<void> {
  await Promise.all(
    [...new Set(kinds)].map(async (kind) => {
      if (loaded.has(kind)) return;
      const words = await loaders[kind]?.().catch(() => undefined);
      if (words) loaded.set(kind, words);
    }),
  );
}

/** The words of a guide; undefined for a piece without one, or before they were read. */
export const pieceWords = (kind: PieceKind | undefined): PieceWords | undefined =>
  kind === undefined ? undefined : loaded.get(kind);
