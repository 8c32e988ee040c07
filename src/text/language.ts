import { signal } from '@preact/signals';

/** The languages the app speaks, by BCP 47. Permanent keys: they are stored, and travel in links. */
export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The language everything is said in; `speakIn` changes it once its words are there. */
export const language = signal<Language>('en');

let aside: Language | null = null;

/** What this says is said in another language, for somebody else to read; `bringWords` brings its words first. */
export function saidIn<T>(other: Language, work: () => T): T {
  const before = aside;
  aside = other;
  try {
    return work();
  } finally {
    aside = before;
  }
}

/** The language of what is being said. */
export const spoken = (): Language => aside ?? language.value;

/** The first language of these that the app speaks; English where it speaks none. */
export function languageAmong(wished: readonly string[]): Language {
  for (const tag of wished) {
    const known = LANGUAGES.find((one) => one === tag.toLowerCase().split('-')[0]);
    if (known) return known;
  }
  return 'en';
}

/** What the browser says the person reads; nothing where there is no browser. */
const wished = (): readonly string[] =>
  typeof navigator === 'undefined' ? [] : (navigator.languages ?? [navigator.language]);

/** The language of the browser, as far as the app speaks it. */
export const preferred = (): Language => languageAmong(wished());

/** Numbers and dates as this person writes them: the language of the words, with the region the browser gives for it. */
export function locale(): string {
  return wished().find((tag) => tag.toLowerCase().split('-')[0] === language.value) ?? language.value;
}
