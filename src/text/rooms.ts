import { signal } from '@preact/signals';
import { isolating } from './isolated.ts';
import { type Language, spoken } from './language.ts';
import type { Rooms } from './room-words.ts';

interface Loaders {
  /** What is said of a link from a shop: whoever opens one has nothing else yet, and may have a poor signal. */
  links: () => Promise<Pick<Rooms, 'links'>>;
  all: () => Promise<Rooms>;
}

/** English travels with the screens that say it; the rooms of another language come together, once it is chosen. */
const loaders: Partial<Record<Language, Loaders>> = {
  es: {
    links: () => import('./es/links.ts'),
    all: () => import('./es/rooms.ts').then((m) => m.rooms),
  },
};

const loaded = signal<Partial<Record<Language, Partial<Rooms>>>>({});
const coming: Record<keyof Loaders, Promise<void>> = { links: Promise.resolve(), all: Promise.resolve() };

export function loadRooms(wished: Language): void {
  const load = loaders[wished];
  if (!load || loaded.value[wished]?.bench) return;
  const take = (rooms: Partial<Rooms>): void => {
    loaded.value = { ...loaded.value, [wished]: { ...loaded.value[wished], ...rooms } };
  };
  const missing = (): undefined => undefined;
  coming.links = load.links().then(({ links }) => take({ links }), missing);
  // The many after the few, not beside them.
  coming.all = coming.links.then(load.all).then(take, missing);
}

/** Resolves when the words of all rooms, or of links alone, have come or cannot come; then English stands in. */
export const roomsReady = (which: keyof Loaders = 'all'): Promise<void> => coming[which];

const readied = new WeakMap<object, unknown>();

/** A room's words in the person's language; in English until they have come. */
export function inLanguage<K extends keyof Rooms>(room: K, english: Rooms[K]): Rooms[K] {
  const words = loaded.value[spoken()]?.[room] ?? english;
  const known = readied.get(words) ?? isolating(words);
  readied.set(words, known);
  return known as Rooms[K];
}
