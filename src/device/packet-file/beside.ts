import type { Done, FromWorker, ToWorker } from './protocol.ts';
import { type PacketFileReading, type ReadFileOptions, readPacketFile } from './read.ts';
import { type GetPhotoBytes, makePacketFile, type PacketFileParts, type WriteOptions } from './write.ts';

/** A worker that has not begun after so many milliseconds never will. */
const PATIENCE = 10_000;

/**
 * `readPacketFile` in a worker, so that the page goes on meanwhile; on the page where there is no worker, or where the
 * options cannot travel to one.
 */
export async function readPacketFileBeside(file: Blob, options: ReadFileOptions = {}): Promise<PacketFileReading> {
  const { onProgress, ...fixed } = options;
  const done =
    Object.keys(fixed).length === 0 ? await besidePage({ say: 'read', file }, noPhoto, onProgress ?? ignore) : null;
  return done?.say === 'read' ? done.reading : readPacketFile(file, options);
}

/** `makePacketFile` in a worker; on the page where there is none. */
export async function makePacketFileBeside(
  parts: PacketFileParts,
  getPhotoBytes: GetPhotoBytes,
  options: WriteOptions = {},
): Promise<Blob> {
  const done = await besidePage({ say: 'make', parts }, getPhotoBytes, options.onProgress ?? ignore);
  if (done?.say !== 'made') return makePacketFile(parts, getPhotoBytes, options);
  for (const left of done.leftOut) options.onLeftOut?.(...left);
  return done.file;
}

const ignore = (): void => undefined;
const noPhoto: GetPhotoBytes = () => Promise.resolve(null);

/** Null when no worker can be had, or it broke: then the same is to be done on the page, which says what is wrong. */
function besidePage(
  task: ToWorker,
  getPhotoBytes: GetPhotoBytes,
  onProgress: (fraction: number) => void,
): Promise<Done | null> {
  return new Promise((resolve) => {
    const worker = startWorker();
    if (!worker) return resolve(null);
    const end = (done: Done | null): void => {
      clearTimeout(timer);
      worker.terminate();
      resolve(done);
    };
    const timer = setTimeout(end, PATIENCE, null);
    worker.addEventListener('error', () => end(null));
    worker.addEventListener('messageerror', () => end(null));
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      clearTimeout(timer);
      if (data.say === 'read' || data.say === 'made') end(data);
      else if (data.say === 'failed') end(null);
      else if (data.say === 'progress') onProgress(data.fraction);
      else if (data.say === 'photo') void handPhoto(worker, data.sha256, getPhotoBytes);
    });
    try {
      tell(worker, task);
    } catch {
      // Something in it cannot travel.
      end(null);
    }
  });
}

const tell = (worker: Worker, message: ToWorker): void => worker.postMessage(message);

function startWorker(): Worker | null {
  try {
    return new Worker(new URL('./packet-worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null;
  }
}

/** Handed over as a copy: where the disk fails, these bytes may be the only ones there are. */
async function handPhoto(worker: Worker, sha256: string, getPhotoBytes: GetPhotoBytes): Promise<void> {
  try {
    tell(worker, { say: 'photo', photo: { bytes: await getPhotoBytes(sha256) } });
  } catch {
    tell(worker, { say: 'photo', photo: 'unreadable' });
  }
}
