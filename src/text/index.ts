import { signal } from '@preact/signals';
import type { en } from './en/index.ts';
import { isolating } from './isolated.ts';
import { type Language, language } from './language.ts';
import { loadRooms } from './rooms.ts';

/** What the first screens say. English is the shape the other languages have: a text that is missing in one fails the build. */
export type Catalogue = typeof en;

const loaders: Record<Language, () => Promise<Catalogue>> = {
  en: () => import('./en/index.ts').then((m) => m.en),
  es: () => import('./es/index.ts').then((m) => m.es),
};

const catalogue = signal<Catalogue | null>(null);

/**
 * Says everything in this language from now on. Resolves when the first screens can be shown in it; what the others say
 * follows, and `roomsReady` waits for that.
 */
export async function speakIn(wished: Language): Promise<void> {
  if (catalogue.value !== null && language.value === wished) return;
  const words = isolating(await loaders[wished]());
  catalogue.value = words;
  language.value = wished;
  if (typeof document !== 'undefined') document.documentElement.lang = wished;
  loadRooms(wished);
}

/** The words in the person's language; only for code that runs after `speakIn`. */
export function say(): Catalogue {
  if (!catalogue.value) throw new Error('no language has been chosen yet');
  return catalogue.value;
}
