import { signal } from '@preact/signals';
import type { Setting, Store } from '../../device/store/index.ts';
import { store } from './services.ts';

/** How this device takes readings: which hand, which unit, and how it answers. */
const usual = {
  'pad.hand': 'right' as Setting<'pad.hand'>,
  'pad.unit': 'mm' as Setting<'pad.unit'>,
  vibrate: true,
  'read-back': false,
};
type PadSettings = typeof usual;

export const padSettings = signal<PadSettings>(usual);

export async function readPadSettings({ settings }: Store): Promise<void> {
  const [hand, unit, vibrate, readBack] = await Promise.all([
    settings.get('pad.hand'),
    settings.get('pad.unit'),
    settings.get('vibrate'),
    settings.get('read-back'),
  ]);
  padSettings.value = {
    'pad.hand': hand ?? usual['pad.hand'],
    'pad.unit': unit ?? usual['pad.unit'],
    vibrate: vibrate ?? usual.vibrate,
    'read-back': readBack ?? usual['read-back'],
  };
}

/** Takes effect at once; a disk that does not keep it is said elsewhere. */
export async function choosePad<K extends keyof PadSettings>(key: K, value: PadSettings[K]): Promise<void> {
  padSettings.value = { ...padSettings.value, [key]: value };
  await store()
    .settings.set(key, value as Setting<K>)
    .catch(() => undefined);
}
