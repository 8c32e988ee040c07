import { signal } from '@preact/signals';
import type { PieceKind } from '../core/job/index.ts';
import type { PieceWords, PointWords } from './en/guides/piece-words.ts';
import { type Language, language, spoken } from './language.ts';

export type { PieceWords, PointWords };

/** Kinds with a guide; a free piece and a table have no words of their own. */
type Guided = Exclude<PieceKind, 'free' | 'table'>;

/** The words of each guide travel apart from the app's first load; they are read when a job with such a piece opens. */
const loaders: Record<Language, Record<Guided, () => Promise<PieceWords>>> = {
  en: {
    'tension-shade': () => import('./en/guides/tension-shade.ts').then((m) => m.tensionShade),
    'cockpit-cover': () => import('./en/guides/cockpit-cover.ts').then((m) => m.cockpitCover),
    'drop-curtain': () => import('./en/guides/drop-curtain.ts').then((m) => m.dropCurtain),
    'mooring-cover': () => import('./en/guides/mooring-cover.ts').then((m) => m.mooringCover),
    'enclosure-panel': () => import('./en/guides/enclosure-panel.ts').then((m) => m.enclosurePanel),
    'folding-top': () => import('./en/guides/folding-top.ts').then((m) => m.foldingTop),
    'box-cover': () => import('./en/guides/box-cover.ts').then((m) => m.boxCover),
    cushion: () => import('./en/guides/cushion.ts').then((m) => m.cushion),
    'open-bow': () => import('./en/guides/open-bow.ts').then((m) => m.openBow),
  },
  es: {
    'tension-shade': () => import('./es/guides/tension-shade.ts').then((m) => m.tensionShade),
    'cockpit-cover': () => import('./es/guides/cockpit-cover.ts').then((m) => m.cockpitCover),
    'drop-curtain': () => import('./es/guides/drop-curtain.ts').then((m) => m.dropCurtain),
    'mooring-cover': () => import('./es/guides/mooring-cover.ts').then((m) => m.mooringCover),
    'enclosure-panel': () => import('./es/guides/enclosure-panel.ts').then((m) => m.enclosurePanel),
    'folding-top': () => import('./es/guides/folding-top.ts').then((m) => m.foldingTop),
    'box-cover': () => import('./es/guides/box-cover.ts').then((m) => m.boxCover),
    cushion: () => import('./es/guides/cushion.ts').then((m) => m.cushion),
    'open-bow': () => import('./es/guides/open-bow.ts').then((m) => m.openBow),
  },
};

const loaded = signal<ReadonlyMap<string, PieceWords>>(new Map());
const keyOf = (tongue: Language, kind: PieceKind): string => `${tongue} ${kind}`;
const isGuided = (kind: PieceKind): kind is Guided => kind in loaders.en;

/** Reads the words of these kinds. Without them screens fall back on labels, so a failure is no reason to stop. */
export async function loadPieceWords(kinds: Iterable<PieceKind>, tongue: Language = language.value): Promise<void> {
  await Promise.all(
    [...new Set(kinds)].filter(isGuided).map(async (kind) => {
      if (loaded.value.has(keyOf(tongue, kind))) return;
      const words = await loaders[tongue][kind]().catch(() => undefined);
      if (words) loaded.value = new Map(loaded.value).set(keyOf(tongue, kind), words);
    }),
  );
}

/** The same words in another language, before it is chosen. */
export async function loadPieceWordsIn(tongue: Language): Promise<void> {
  const known = [...loaded.value.keys()].map((key) => key.split(' ')[1] as PieceKind);
  await loadPieceWords(known, tongue);
}

/** The words of a guide; undefined for a piece without one, or before they were read. */
export const pieceWords = (kind: PieceKind | undefined): PieceWords | undefined =>
  kind === undefined ? undefined : loaded.value.get(keyOf(spoken(), kind));
