import type { Kept } from '../store/index.ts';
import type { Header } from './backup.ts';
import type { Done, FromWorker, ToWorker } from './protocol.ts';
import { type PacketFileReading, type ReadFileOptions, readPacketFile } from './read.ts';
import { type BackupReading, readBackup } from './read-backup.ts';
import { type GetPhotoBytes, makePacketFile, type PacketFileParts, type WriteOptions } from './write.ts';
import { type BackupFile, writeBackup } from './write-backup.ts';

/** A worker that has not begun after so many milliseconds never will. */
const PATIENCE = 10_000;

type OnProgress = (fraction: number) => void;
const ignore = (): void => undefined;

/**
 * `readPacketFile` in a worker, so that the page goes on meanwhile; on the page where there is no worker, or where the
 * options cannot travel to one.
 */
export async function readPacketFileBeside(file: Blob, options: ReadFileOptions = {}): Promise<PacketFileReading> {
  const { onProgress, ...fixed } = options;
  const done = Object.keys(fixed).length === 0 ? await besidePage({ say: 'read', file }, { onProgress }) : null;
  return done?.say === 'read' ? done.reading : readPacketFile(file, options);
}

/** `makePacketFile` in a worker; on the page where there is none. */
export async function makePacketFileBeside(
  parts: PacketFileParts,
  getPhotoBytes: GetPhotoBytes,
  options: WriteOptions = {},
): Promise<Blob> {
  const { onProgress } = options;
  const done = await besidePage({ say: 'make', parts }, { photo: getPhotoBytes, onProgress });
  if (done?.say !== 'made') return makePacketFile(parts, getPhotoBytes, options);
  for (const left of done.leftOut) options.onLeftOut?.(...left);
  return done.file;
}

/** `readBackup` in a worker; on the page where there is none. */
export async function readBackupBeside(file: Blob, onProgress: OnProgress = ignore): Promise<BackupReading> {
  const done = await besidePage({ say: 'read-backup', file }, { onProgress });
  return done?.say === 'backup-read' ? done.reading : readBackup(file, onProgress);
}

/** `writeBackup` in a worker; on the page where there is none. everything: called anew for each attempt. */
export async function makeBackupBeside(
  made: Header['made'],
  everything: () => AsyncIterable<Kept>,
  onProgress: OnProgress = ignore,
): Promise<BackupFile> {
  const more = (): (() => Promise<Kept | null>) => {
    const walk = everything()[Symbol.asyncIterator]();
    return async () => {
      const step = await walk.next();
      return step.done === true ? null : step.value;
    };
  };
  const done = await besidePage({ say: 'make-backup', made }, { more: more(), onProgress });
  return done?.say === 'backup-made' ? done.backup : writeBackup(made, more(), onProgress);
}

/** What the worker may ask the page for, and tell it. */
interface Answers {
  photo?: GetPhotoBytes;
  more?: () => Promise<Kept | null>;
  onProgress: OnProgress | undefined;
}

/** Null when no worker can be had, or it broke: then the same is to be done on the page, which says what is wrong. */
function besidePage(task: ToWorker, { photo, more, onProgress = ignore }: Answers): Promise<Done | null> {
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
      if (data.say === 'failed') end(null);
      else if (data.say === 'progress') onProgress(data.fraction);
      else if (data.say === 'photo') void handPhoto(worker, data.sha256, photo);
      else if (data.say === 'more') void handKept(worker, more);
      else if (data.say !== 'started') end(data);
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
async function handPhoto(worker: Worker, sha256: string, getPhotoBytes?: GetPhotoBytes): Promise<void> {
  try {
    tell(worker, { say: 'photo', photo: { bytes: (await getPhotoBytes?.(sha256)) ?? null } });
  } catch {
    tell(worker, { say: 'photo', photo: 'unreadable' });
  }
}

async function handKept(worker: Worker, more?: () => Promise<Kept | null>): Promise<void> {
  try {
    tell(worker, { say: 'kept', kept: (await more?.()) ?? null });
  } catch {
    tell(worker, { say: 'kept', kept: 'unreadable' });
  }
}
