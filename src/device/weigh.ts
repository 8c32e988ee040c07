import { isErased } from '../core/job/index.ts';
import type { Store } from './store/index.ts';

/** What is stored. records: everything but pictures, as long as it would be in a file; bytes. */
export interface Weight {
  jobs: number;
  records: number;
  photos: number;
  photoBytes: number;
}

/** Weighs all that is kept without reading the pictures that entries tell the size of. */
export async function weigh(store: Pick<Store, 'everything' | 'photosHere' | 'getPhoto'>): Promise<Weight> {
  const here = await store.photosHere();
  const sizes = new Map<string, number>();
  const weight: Weight = { jobs: 0, records: 0, photos: here.size, photoBytes: 0 };
  for await (const kept of store.everything()) {
    if (kept.is === 'photo' || kept.is === 'lost') break;
    if (kept.is === 'setting') weight.records += lengthOf(kept.value);
    else if (kept.is === 'stray') weight.records += lengthOf(kept.raw);
    else if (kept.is === 'job') {
      weight.jobs += 1;
      for (const one of [...kept.job.entries, ...kept.job.damaged]) weight.records += lengthOf(one);
      for (const entry of kept.job.entries) {
        const { sha256, size } = entry.payload;
        if (!isErased(entry) && typeof sha256 === 'string' && typeof size === 'number') sizes.set(sha256, size);
      }
    }
  }
  for (const sha256 of here) weight.photoBytes += sizes.get(sha256) ?? (await store.getPhoto(sha256))?.size ?? 0;
  return weight;
}

function lengthOf(value: unknown): number {
  try {
    return JSON.stringify(value)?.length ?? 0;
  } catch {
    return 0;
  }
}
