import { signal } from '@preact/signals';
import { type Install, watchInstall } from '../../device/install.ts';
import { onLaunchFiles } from '../../device/launch.ts';
import { guardLeaving } from '../../device/leave-guard.ts';
import { askToPersist } from '../../device/storage-state.ts';
import type { Store } from '../../device/store/index.ts';
import { type Updates, watchUpdates } from '../../device/update.ts';
import { go } from './route.ts';

export const install = signal<Install | null>(null);
export const updates = signal<Updates | null>(null);

/** Listens to what comes from outside the page: new versions, files handed over by the system, leaving, installing. shown: the first screen. */
export function startOutside(store: Store, shown: Promise<void>): void {
  install.value = watchInstall();
  // The worker fetches the whole app for the offline store: in a poor signal what the first screen waits for comes before it.
  void shown
    .then(() => watchUpdates())
    .then((watched) => {
      updates.value = watched;
    });
  guardLeaving(store.atRisk);
  void askToPersist();
  onLaunchFiles((files) => void takeInAll(files));
}

async function takeInAll(files: readonly File[]): Promise<void> {
  const { takeIn } = await import('./take-in.ts');
  for (const file of files) {
    const taken = await takeIn(file, file.name);
    go(taken.ok ? { at: 'judge', job: taken.job } : { at: 'inbox' });
  }
}
