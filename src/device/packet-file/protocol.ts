import type { Kept } from '../store/index.ts';
import type { Header } from './backup.ts';
import type { PacketFileReading } from './read.ts';
import type { BackupReading } from './read-backup.ts';
import type { LeftOut, PacketFileParts } from './write.ts';
import type { BackupFile } from './write-backup.ts';

/** What the page says: first one thing to do, then a photo, or the next thing that is kept, each time it is asked for one. */
export type ToWorker =
  | { readonly say: 'read'; readonly file: Blob }
  | { readonly say: 'make'; readonly parts: PacketFileParts }
  | { readonly say: 'read-backup'; readonly file: Blob }
  | { readonly say: 'make-backup'; readonly made: Header['made'] }
  | { readonly say: 'kept'; readonly kept: Kept | null | 'unreadable' }
  | { readonly say: 'photo'; readonly photo: { readonly bytes: Blob | ArrayBuffer | null } | 'unreadable' };

/** The worker's last word. */
export type Done =
  | { readonly say: 'read'; readonly reading: PacketFileReading }
  | { readonly say: 'backup-read'; readonly reading: BackupReading }
  | { readonly say: 'backup-made'; readonly backup: BackupFile }
  | { readonly say: 'made'; readonly file: Blob; readonly leftOut: readonly LeftOut[] };

export type FromWorker =
  | Done
  | { readonly say: 'started' }
  | { readonly say: 'failed' }
  | { readonly say: 'progress'; readonly fraction: number }
  | { readonly say: 'more' }
  | { readonly say: 'photo'; readonly sha256: string };
