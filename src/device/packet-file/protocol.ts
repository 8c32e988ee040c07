import type { PacketFileReading } from './read.ts';
import type { LeftOut, PacketFileParts } from './write.ts';

/** What the page says: first one thing to do, then a photo each time it is asked for one. */
export type ToWorker =
  | { readonly say: 'read'; readonly file: Blob }
  | { readonly say: 'make'; readonly parts: PacketFileParts }
  | { readonly say: 'photo'; readonly photo: { readonly bytes: Blob | ArrayBuffer | null } | 'unreadable' };

/** The worker's last word. */
export type Done =
  | { readonly say: 'read'; readonly reading: PacketFileReading }
  | { readonly say: 'made'; readonly file: Blob; readonly leftOut: readonly LeftOut[] };

export type FromWorker =
  | Done
  | { readonly say: 'started' }
  | { readonly say: 'failed' }
  | { readonly say: 'progress'; readonly fraction: number }
  | { readonly say: 'photo'; readonly sha256: string };
