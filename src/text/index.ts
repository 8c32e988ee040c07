import { signal } from '@preact/signals';
import type { en } from './en/index.ts';
import { isolating } from './isolated.ts';
import { type Language, language, spoken } from './language.ts';
import { loadRooms, roomsReady } from './rooms.ts';

/** What the first screens say. English is the shape the other languages have: a text that is missing in one fails the build. */
export type Catalogue = typeof en;

const loaders: Record<Language, () => Promise<Catalogue>> = {
  en: () => import('./en/index.ts').then((m) => m.en),
  es: () => import('./es/index.ts').then((m) => m.es),
};

const catalogues = signal<Partial<Record<Language, Catalogue>>>({});

/**
 * Says everything in this language from now on. Resolves when the first screens can be shown in it; what the others say
 * follows, and `roomsReady` waits for that.
 */
export async function speakIn(wished: Language): Promise<void> {
  const begun = Object.keys(catalogues.value).length > 0;
  if (begun && language.value === wished) return;
  await loadCatalogue(wished);
  language.value = wished;
  if (typeof document !== 'undefined') document.documentElement.lang = wished;
  loadRooms(wished);
}

async function loadCatalogue(wished: Language): Promise<void> {
  if (catalogues.value[wished]) return;
  const words = isolating(await loaders[wished]());
  catalogues.value = { ...catalogues.value, [wished]: words };
}

/** Brings the words of a language, all but the guides', for `saidIn`. Throws where they cannot come. */
export async function bringWords(wished: Language): Promise<void> {
  await loadCatalogue(wished);
  loadRooms(wished);
  await roomsReady();
}

/** The words in the person's language; only for code that runs after `speakIn`. */
export function say(): Catalogue {
  const words = catalogues.value[spoken()];
  if (!words) throw new Error('no language has been chosen yet');
  return words;
}
