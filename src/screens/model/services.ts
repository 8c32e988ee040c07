import { computed, signal } from '@preact/signals';
import type { Who } from '../../core/job/index.ts';
import { openStore, type Setting, type Store } from '../../device/store/index.ts';
import { speakIn } from '../../text/index.ts';
import { type Language, preferred } from '../../text/language.ts';
import { route } from './route.ts';

const opened = signal<Store | null>(null);

/** The store; only for code that runs after `startServices`. */
export function store(): Store {
  if (!opened.value) throw new Error('the store is not open yet');
  return opened.value;
}

/** Who holds this device. */
export const person = signal<Who>({ name: '', role: 'installer' });

/** Who acts: at the bench the shop, at the dock the person who holds the device. */
export const actor = computed<Who>(() => {
  const { at } = route.value;
  return at === 'inbox' || at === 'judge' || at === 'request'
    ? { name: person.value.name, role: 'bench' }
    : person.value;
});

export const units = signal<Setting<'units'>>({ system: 'imperial', fraction: 16 });
export const theme = signal<Setting<'theme'>>('system');
export const device = signal('');

/** Opens the store and reads what this device remembers. Throws StoreFailure. */
export async function startServices(): Promise<Store> {
  // The words the browser prefers are nearly always the right ones: they come while the store opens.
  const likely = speakIn(preferred());
  likely.catch(() => undefined);
  const ready = await openStore();
  const { settings } = ready;
  device.value = await ready.deviceId();
  person.value = (await settings.get('person')) ?? person.value;
  units.value = (await settings.get('units')) ?? units.value;
  showTheme((await settings.get('theme')) ?? 'system');
  await likely;
  await speakIn((await settings.get('language')) ?? preferred());
  opened.value = ready;
  return ready;
}

/** For saying that there is no store to ask for the language. */
export const speakAsPreferred = (): Promise<void> => speakIn(preferred());

/** Says everything in another language from now on. */
export async function chooseLanguage(choice: Language): Promise<void> {
  const { loadPieceWordsIn } = await import('../../text/guides.ts');
  await loadPieceWordsIn(choice);
  await speakIn(choice);
  await store().settings.set('language', choice);
}

function showTheme(choice: Setting<'theme'>): void {
  theme.value = choice;
  if (choice === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = choice;
}

export async function chooseTheme(choice: Setting<'theme'>): Promise<void> {
  showTheme(choice);
  await store().settings.set('theme', choice);
}

export async function choosePerson(who: Who): Promise<void> {
  person.value = who;
  await store().settings.set('person', who);
}

export async function chooseUnits(choice: Setting<'units'>): Promise<void> {
  units.value = choice;
  await store().settings.set('units', choice);
}
