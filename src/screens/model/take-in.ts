import { now, uuid } from '../../device/clock.ts';
import { readPacketFile } from '../../device/packet-file/index.ts';
import { StoreFailure } from '../../device/store/index.ts';
import { say } from '../../text/index.ts';
import { loadJob, openJob } from './open-job.ts';
import { actor, device, store, units } from './services.ts';

/** What became of a file: taken in, or refused with the reason; then nothing stored was touched. */
export type TakenIn = { ok: true; job: string; lines: string[] } | { ok: false; lines: string[] };

/** Takes a packet or a readings table into this device: by its content, whatever its name. */
export async function takeIn(file: Blob, name: string): Promise<TakenIn> {
  const words = say().dock.takeIn;
  const read = await readPacketFile(file, {
    table: {
      name,
      piece: say().general.pieceKinds.table,
      units: units.value.system === 'metric' ? 'mm' : 'in',
      who: actor.value,
      device: device.value,
      newId: uuid,
      now,
      keepGood: false,
    },
  });
  if (!read.ok) {
    const lines = [words.refused, words.why[read.why] ?? words.why.foreign ?? ''];
    if (read.rows.length > 0) lines.push(words.rows(read.rows.join(', ')));
    return { ok: false, lines };
  }
  try {
    const imported = await store().importEntries(read.job, read.entries, read.photos);
    if (openJob.value?.id === read.job) await loadJob(read.job);
    const lines = [words.added(imported.added, read.name)];
    if (imported.setAside.length > 0) lines.push(words.setAside(imported.setAside.length));
    if (read.missing.length > 0) lines.push(words.missingPhotos(read.missing.length));
    return { ok: true, job: read.job, lines };
  } catch (error) {
    const code = error instanceof StoreFailure ? error.code : 'unknown';
    return { ok: false, lines: [words.refused, say().store.failures[code]] };
  }
}
