import { signal } from '@preact/signals';
import type { Entry } from '../../core/job/index.ts';
import { store } from './services.ts';
import { tellGrown } from './tabs.ts';

/** A job this page still holds whole while the device does not have it any more: another tab deleted it. */
export interface GoneJob {
  id: string;
  entries: readonly Entry[];
  title: string;
}

export const gone = signal<readonly GoneJob[]>([]);

export function noteGone(job: GoneJob): void {
  gone.value = [...without(job.id), job];
}

const without = (id: string): GoneJob[] => gone.value.filter((job) => job.id !== id);

/** Puts everything this page holds of it back on the device, what was entered since among it. */
export async function bringBack({ id, entries }: GoneJob): Promise<void> {
  await store().importEntries(id, entries, []);
  gone.value = without(id);
  tellGrown(id);
}

/** The job is back because another tab, or a packet, brought it: what waits here joins it. */
export async function noteBack(id: string): Promise<void> {
  if (!gone.value.some((job) => job.id === id)) return;
  await store().retry();
  gone.value = without(id);
}

/** Deletes what this page holds of it too. */
export async function letGo({ id }: Pick<GoneJob, 'id'>): Promise<void> {
  await store().deleteJob(id);
  gone.value = without(id);
}
