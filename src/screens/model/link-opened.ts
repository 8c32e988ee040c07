import { speakIn } from '../../text/index.ts';
import { type Language, language, languageAmong } from '../../text/language.ts';
import { roomsReady } from '../../text/rooms.ts';
import { chooseLanguage, store } from './services.ts';

/** Whether a job has any entry on this device. */
export const isHere = async (job: string): Promise<boolean> => (await store().readJob(job)).entries.length > 0;

/** The language a shop asks for, where nobody has chosen one on this device: the shop knows whom it asks. */
async function wished(wish: string): Promise<Language | null> {
  const known = languageAmong([wish]);
  if (wish.toLowerCase().split('-')[0] !== known) return null;
  return (await store().settings.get('language')) === null ? known : null;
}

/**
 * Speaks as a link asks from the moment it is opened; what was spoken before, null where nothing changed. It is kept with
 * the job that is begun, and can be changed under This device.
 */
export async function speakAsAsked(wish: string): Promise<Language | null> {
  const before = language.value;
  const asked = await wished(wish);
  if (asked === null || asked === before) return null;
  await speakIn(asked);
  await roomsReady('links');
  return before;
}

/** The language a shop asked for stays with the device, where nobody has chosen one. */
export async function keepAsAsked(wish: string): Promise<void> {
  const asked = await wished(wish);
  if (asked !== null) await chooseLanguage(asked);
}
