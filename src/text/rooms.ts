import { signal } from '@preact/signals';
import type { bench } from './en/bench.ts';
import type { benchLinks } from './en/bench-links.ts';
import type { benchSheet } from './en/bench-sheet.ts';
import type { details } from './en/details.ts';
import type { dockEdges } from './en/dock-edges.ts';
import type { dockThings } from './en/dock-things.ts';
import type { drawing, tiles } from './en/drawing.ts';
import type { findings } from './en/findings.ts';
import type { fitting } from './en/fitting.ts';
import type { glossary } from './en/glossary.ts';
import type { jobs } from './en/jobs.ts';
import type { keep } from './en/keep.ts';
import type { lessons } from './en/lessons.ts';
import type { links } from './en/links.ts';
import type { owner } from './en/owner.ts';
import type { photos } from './en/photos.ts';
import type { receipt } from './en/receipt.ts';
import type { shop } from './en/shop.ts';
import type { slips } from './en/slips.ts';
import type { SpokenValue } from './en/spoken.ts';
import type { takeIn } from './en/take-in.ts';
import type { walk } from './en/walk.ts';
import type { withdraw } from './en/withdraw.ts';
import { type Language, language } from './language.ts';

/** The words that come after the first screens, by room. */
export interface Rooms {
  bench: typeof bench;
  benchLinks: typeof benchLinks;
  benchSheet: typeof benchSheet;
  details: typeof details;
  dockEdges: typeof dockEdges;
  dockThings: typeof dockThings;
  drawing: typeof drawing;
  findings: typeof findings;
  fitting: typeof fitting;
  glossary: typeof glossary;
  jobs: typeof jobs;
  keep: typeof keep;
  lessons: typeof lessons;
  links: typeof links;
  owner: typeof owner;
  photos: typeof photos;
  receipt: typeof receipt;
  shop: typeof shop;
  slips: typeof slips;
  takeIn: typeof takeIn;
  tiles: typeof tiles;
  valueSpoken: (value: SpokenValue) => string;
  walk: typeof walk;
  withdraw: typeof withdraw;
}

/** English travels with the screens that say it; the rooms of another language come together, once it is chosen. */
const loaders: Partial<Record<Language, () => Promise<Rooms>>> = {
  es: () => import('./es/rooms.ts').then((m) => m.rooms),
};

const loaded = signal<Partial<Record<Language, Rooms>>>({});
let coming: Promise<void> = Promise.resolve();

export function loadRooms(wished: Language): void {
  const load = loaders[wished];
  if (!load || loaded.value[wished]) return;
  coming = load().then(
    (rooms) => {
      loaded.value = { ...loaded.value, [wished]: rooms };
    },
    () => undefined,
  );
}

/** Resolves when the words of all rooms have come, or cannot come; then English stands in. */
export const roomsReady = (): Promise<void> => coming;

/** A room's words in the person's language; in English until they have come. */
export const inLanguage = <K extends keyof Rooms>(room: K, english: Rooms[K]): Rooms[K] =>
  loaded.value[language.value]?.[room] ?? english;
