import { signal } from '@preact/signals';
import { isolating } from './isolated.ts';
import { type Language, spoken } from './language.ts';
import type { Rooms } from './room-words.ts';

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

const readied = new WeakMap<object, unknown>();

/** A room's words in the person's language; in English until they have come. */
export function inLanguage<K extends keyof Rooms>(room: K, english: Rooms[K]): Rooms[K] {
  const words = loaded.value[spoken()]?.[room] ?? english;
  const known = readied.get(words) ?? isolating(words);
  readied.set(words, known);
  return known as Rooms[K];
}
