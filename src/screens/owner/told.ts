import { signal } from '@preact/signals';
import type { Step } from '../../core/guide/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { store } from '../model/services.ts';

/** Jobs whose first page was read on this device, and pieces whose marks were offered; null until that is known. */
export const told = signal<readonly string[] | null>(null);

/** More jobs than any owner has. */
const KEPT = 200;

export async function readTold(): Promise<void> {
  told.value ??=
    (await store()
      .settings.get('owner.told')
      .catch(() => null)) ?? [];
}

/** what: a job or a piece, by its id. */
export async function tell(what: string): Promise<void> {
  const before = (told.value ?? []).filter((id) => id !== what);
  told.value = [...before, what].slice(-KEPT);
  await store()
    .settings.set('owner.told', [...told.value])
    .catch(() => undefined);
}

/** Marks come before the first measurement or picture of a piece, once; who has begun already has done without. */
export function wantsMarks(sheet: Sheet, piece: string, step: Step): boolean {
  if (step.on !== 'reading' && step.on !== 'shot') return false;
  if (told.value?.includes(piece)) return false;
  const readings = sheet.readings.filter((reading) => reading.piece === piece);
  const begun = readings.some(({ takes, answer }) => takes.length > 0 || answer !== null);
  return !begun && !sheet.photos.some((photo) => photo.piece === piece);
}
