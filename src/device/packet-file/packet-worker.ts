/** Reads or makes one packet file beside the page, then is done with. */
import type { FromWorker, ToWorker } from './protocol.ts';
import { readPacketFile } from './read.ts';
import { type LeftOut, makePacketFile, type PacketFileParts } from './write.ts';

type PhotoSaid = Extract<ToWorker, { say: 'photo' }>['photo'];

/** Who waits for the photo that was asked for: they are asked for one after the other. */
let waiting: ((photo: PhotoSaid) => void) | null = null;

const tell = (message: FromWorker, transfer: Transferable[] = []): void => postMessage(message, { transfer });
const onProgress = (fraction: number): void => tell({ say: 'progress', fraction });

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if (data.say === 'photo') waiting?.(data.photo);
  else {
    const work = data.say === 'read' ? read(data.file) : make(data.parts);
    work.catch(() => tell({ say: 'failed' }));
  }
});
tell({ say: 'started' });

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

async function photoBytes(sha256: string): Promise<Blob | ArrayBuffer | null> {
  const photo = await new Promise<PhotoSaid>((resolve) => {
    waiting = resolve;
    tell({ say: 'photo', sha256 });
  });
  if (photo === 'unreadable') throw new Error(photo);
  return photo.bytes;
}
