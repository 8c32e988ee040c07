/** Reads or makes one packet file or one backup beside the page, then is done with. */
import type { Kept } from '../store/index.ts';
import type { FromWorker, ToWorker } from './protocol.ts';
import { readPacketFile } from './read.ts';
import { readBackup } from './read-backup.ts';
import { type LeftOut, makePacketFile, type PacketFileParts } from './write.ts';
import { writeBackup } from './write-backup.ts';

type Answer = Extract<ToWorker, { say: 'photo' | 'kept' }>;
type PhotoSaid = Extract<ToWorker, { say: 'photo' }>['photo'];

/** Who waits for what was asked for: things are asked for one after the other. */
let waiting: ((answer: Answer) => void) | null = null;

const tell = (message: FromWorker, transfer: Transferable[] = []): void => postMessage(message, { transfer });
const onProgress = (fraction: number): void => tell({ say: 'progress', fraction });

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if (data.say === 'photo' || data.say === 'kept') waiting?.(data);
  else work(data).catch(() => tell({ say: 'failed' }));
});
tell({ say: 'started' });

async function work(task: Exclude<ToWorker, Answer>): Promise<void> {
  switch (task.say) {
    case 'read':
      return await read(task.file);
    case 'make':
      return await make(task.parts);
    case 'read-backup':
      return tell({ say: 'backup-read', reading: await readBackup(task.file, rarely(onProgress)) });
    case 'make-backup':
      return tell({ say: 'backup-made', backup: await writeBackup(task.made, kept, rarely(onProgress)) });
  }
}

async function read(file: Blob): Promise<void> {
  const reading = await readPacketFile(file, { onProgress });
  const photos = reading.ok && reading.kind === 'packet' ? reading.photos : [];
  tell(
    { say: 'read', reading },
    photos.map(({ bytes }) => bytes),
  );
}

async function make(parts: PacketFileParts): Promise<void> {
  const leftOut: LeftOut[] = [];
  const onLeftOut = (...left: LeftOut): void => void leftOut.push(left);
  tell({ say: 'made', file: await makePacketFile(parts, photoBytes, { onProgress, onLeftOut }), leftOut });
}

function ask(message: Extract<FromWorker, { say: 'photo' | 'more' }>): Promise<Answer> {
  return new Promise((resolve) => {
    waiting = resolve;
    tell(message);
  });
}

async function photoBytes(sha256: string): Promise<Blob | ArrayBuffer | null> {
  const answer = await ask({ say: 'photo', sha256 });
  const photo: PhotoSaid = answer.say === 'photo' ? answer.photo : 'unreadable';
  if (photo === 'unreadable') throw new Error(photo);
  return photo.bytes;
}

async function kept(): Promise<Kept | null> {
  const answer = await ask({ say: 'more' });
  if (answer.say !== 'kept' || answer.kept === 'unreadable') throw new Error('unreadable');
  return answer.kept;
}

/** A backup has thousands of lines; a page needs to hear a hundred times how far it is. */
function rarely(told: (fraction: number) => void): (fraction: number) => void {
  let last = 0;
  return (fraction) => {
    if (fraction < last + 0.01) return;
    last = fraction;
    told(fraction);
  };
}
