import { signal } from '@preact/signals';
import { store } from '../model/services.ts';

/** Jobs whose first page was read on this device; null until that is known. */
export const told = signal<readonly string[] | null>(null);

/** More jobs than any owner has. */
const KEPT = 200;

export async function readTold(): Promise<void> {
  told.value ??=
    (await store()
      .settings.get('owner.told')
      .catch(() => null)) ?? [];
}

export async function tell(job: string): Promise<void> {
  const before = (told.value ?? []).filter((id) => id !== job);
  told.value = [...before, job].slice(-KEPT);
  await store()
    .settings.set('owner.told', [...told.value])
    .catch(() => undefined);
}
