import { valueSpoken as english, type SpokenValue } from './en/spoken.ts';
import { inLanguage } from './rooms.ts';

export type { SpokenValue };

/** How a value is said aloud, in the language of `language`; apart from the other words, since few want it. */
export const valueSpoken = (value: SpokenValue): string => inLanguage('valueSpoken', english)(value);
