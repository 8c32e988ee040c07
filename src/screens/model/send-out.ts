import { heads } from '../../core/job/index.ts';
import { packetFileName } from '../../core/packet/index.ts';
import { now } from '../../device/clock.ts';
import { makePacketFile } from '../../device/packet-file/index.ts';
import { type ShareOutcome, saveFile, shareFile } from '../../device/share.ts';
import { rememberCopy } from './jobs.ts';
import { type OpenJob, openJob } from './open-job.ts';
import { actor, device, store } from './services.ts';

/** A packet ready to be handed over by a fresh tap: built before, since sharing may not wait. */
export interface ReadyPacket {
  blob: Blob;
  name: string;
  heads: string[];
  missingPhotos: number;
}

export async function preparePacket(job: OpenJob): Promise<ReadyPacket> {
  let missingPhotos = 0;
  const made = { at: now(), device: device.value, by: actor.value };
  const parts = { entries: job.entries, made, photos: job.sheet.photos };
  const blob = await makePacketFile(parts, async (sha256) => (await store().getPhoto(sha256))?.bytes ?? null, {
    onLeftOut: () => {
      missingPhotos += 1;
    },
  });
  return { blob, name: packetFileName(job.sheet, made), heads: heads(job.entries), missingPhotos };
}

/** Hands the packet over; remembers that a copy exists, so that the list can say what is not sent yet. */
export async function handOver(job: string, packet: ReadyPacket, how: 'share' | 'download'): Promise<ShareOutcome> {
  const { blob, name } = packet;
  const outcome = how === 'share' ? await shareFile(blob, name) : saveFile(blob, name);
  if (outcome === 'shared' || outcome === 'downloaded') {
    await rememberCopy(job, { heads: packet.heads, at: now(), how: outcome }).catch(() => undefined);
  }
  return outcome;
}

/** A copy of the open job as a download, for the moment when the disk fails. */
export async function saveCopyNow(): Promise<void> {
  const job = openJob.value;
  if (!job) return;
  await handOver(job.id, await preparePacket(job), 'download');
}
