import { type Entry, isErased, type Payload, payloads } from './entries.ts';
import { inForceCheck } from './gather.ts';

/** A picture that was taken back and can come back. undos: the entries that keep it out; taking those back brings it in. */
export interface RemovedPhoto {
  entry: Entry;
  payload: Payload<'photo.add'>;
  undos: string[];
}

/** Pictures that were taken back and whose content is still there. */
export function removedPhotos(entries: readonly Entry[]): RemovedPhoto[] {
  const inForce = inForceCheck(entries);
  const undosOf = new Map<string, string[]>();
  for (const entry of entries) {
    const parsed = entry.kind === 'undo' && inForce(entry.id) ? payloads.undo.safeParse(entry.payload) : null;
    if (parsed?.success) undosOf.set(parsed.data.entry, [...(undosOf.get(parsed.data.entry) ?? []), entry.id]);
  }
  return entries.flatMap((entry) => {
    const undos = undosOf.get(entry.id);
    if (entry.kind !== 'photo.add' || isErased(entry) || !undos) return [];
    const parsed = payloads['photo.add'].safeParse(entry.payload);
    return parsed.success ? [{ entry, payload: parsed.data, undos }] : [];
  });
}
