import { type Entry, isErased, type Payload, payloads } from './entries.ts';
import { inForceCheck } from './gather.ts';
import { causalOrder } from './order.ts';

type DetailField = Payload<'job.detail'>['field'];

/**
 * Everything an erasure must name so that a picture is gone whole: each entry of this job that brought the same bytes, taken back
 * or not, and every mark, line and note on them.
 */
export function entriesOfPhoto(entries: readonly Entry[], photo: string): string[] {
  const added = entries.flatMap((entry) => {
    const parsed =
      entry.kind === 'photo.add' && !isErased(entry) ? payloads['photo.add'].safeParse(entry.payload) : null;
    return parsed?.success ? [{ id: entry.id, photo: parsed.data.photo, sha256: parsed.data.sha256 }] : [];
  });
  const hashes = new Set(added.filter((one) => one.photo === photo).map((one) => one.sha256));
  const same = added.filter((one) => hashes.has(one.sha256));
  const photos = new Set(same.map((one) => one.photo));
  const upon = entries.filter(({ kind, payload }) => {
    if (kind === 'photo.mark' || kind === 'photo.line') return photos.has(String(payload.photo));
    return kind === 'note.add' && photos.has(String(payload.on));
  });
  return [...same.map((one) => one.id), ...upon.map((entry) => entry.id)];
}

/** entries: what to erase. reopen: what to open the job with anew, where its name held what is withdrawn. */
export interface DetailWithdrawal {
  entries: string[];
  reopen: Payload<'job.open'> | null;
}

/**
 * What an erasure must name so that some details of a job are gone, earlier values too. A job is usually named after its customer:
 * names that hold a withdrawn value go as well, and `name` takes their place.
 */
export function withdrawDetails(
  entries: readonly Entry[],
  fields: ReadonlySet<DetailField>,
  name: string,
): DetailWithdrawal {
  const details = entries.flatMap((entry) => {
    const parsed = entry.kind === 'job.detail' ? payloads['job.detail'].safeParse(entry.payload) : null;
    return parsed?.success ? [{ id: entry.id, ...parsed.data }] : [];
  });
  const going = details.filter(({ field }) => fields.has(field));
  const values = going.map(({ value }) => value.trim().toLowerCase()).filter((value) => value !== '');
  const tells = (text: string): boolean => values.some((value) => text.toLowerCase().includes(value));
  const names = details.filter(({ field, value }) => field === 'name' && !fields.has('name') && tells(value));
  const inForce = inForceCheck(entries);
  const openings = causalOrder(entries).flatMap((entry) => {
    const parsed = entry.kind === 'job.open' ? payloads['job.open'].safeParse(entry.payload) : null;
    return parsed?.success ? [{ id: entry.id, payload: parsed.data }] : [];
  });
  const told = openings.filter(({ payload }) => tells(payload.name));
  const first = openings.find(({ id }) => inForce(id));
  return {
    entries: [...going, ...names, ...told].map(({ id }) => id),
    reopen: first && told.includes(first) ? { ...first.payload, name } : null,
  };
}
