import { signal } from '@preact/signals';

/** The languages the app speaks, by BCP 47. Permanent keys: they are stored, and travel in links. */
export const LANGUAGES = ['en', 'es'] as const;
export type Language = (typeof LANGUAGES)[number];

/** The language everything is said in; `speakIn` changes it once its words are there. */
export const language = signal<Language>('en');

/** The first language of these that the app speaks; English where it speaks none. */
export function languageAmong(wished: readonly string[]): Language {
  for (const tag of wished) {
    const spoken = LANGUAGES.find((one) => one === tag.toLowerCase().split('-')[0]);
    if (spoken) return spoken;
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
