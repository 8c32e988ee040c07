import { signal } from '@preact/signals';
import { type Language, language } from './language.ts';
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

/** A room's words in the person's language; in English until they have come. */
export const inLanguage = <K extends keyof Rooms>(room: K, english: Rooms[K]): Rooms[K] =>
  loaded.value[language.value]?.[room] ?? english;
