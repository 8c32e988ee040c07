import { Causality, fold } from '../../core/job/index.ts';
import type { LastCopy } from '../../device/store/index.ts';
import { store } from './services.ts';

/** What deleting a job from this device takes away. more: entries beside readings and photos. since: those no copy has. */
export interface Loss {
  readings: number;
  photos: number;
  more: number;
  lastCopy: LastCopy | null;
  since: number;
}

/** Read from the disk, not from the list: what is counted is what there is. */
export async function lossOf(job: string, lastCopy: LastCopy | null): Promise<Loss> {
  const { entries, damaged } = await store().readJob(job);
  const sheet = fold(entries);
  const { here } = await store().photoIds(job);
  const readings = sheet.readings.filter(({ takes }) => takes.length > 0).length;
  const told = new Set(['take.add', 'photo.add']);
  const sent = lastCopy ? new Causality(entries).past(lastCopy.heads) : new Set();
  return {
    readings,
    photos: here.length,
    more: entries.filter(({ kind }) => !told.has(kind)).length + damaged.length,
    lastCopy,
    since: entries.filter(({ id }) => !sent.has(id)).length,
  };
}
