import { valueSpoken as en } from './en/spoken.ts';

export type { SpokenValue } from './en/spoken.ts';

/** The language of what is spoken, for choosing a voice. */
export const LANGUAGE = 'en';

/** How a value is said aloud; apart from the other words, since few want it. */
export const valueSpoken = en;
