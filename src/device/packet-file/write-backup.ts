import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { encodeBase64 } from '../../core/packet/index.ts';
import type { Kept, StoredPhoto } from '../store/index.ts';
import { type Counts, FORMAT, type Header, VERSION } from './backup.ts';
import { breathe } from './breathe.ts';

/** The next thing that is kept; null when there is no more. */
export type NextKept = () => Promise<Kept | null>;

export interface BackupFile {
  readonly file: Blob;
  readonly counts: Counts;
  /** Pictures whose record cannot be read, and records no text can hold: these could not go along. */
  readonly lost: number;
}

/** A multiple of three, so that base64 pads only at the end: 1 MiB of text. */
const CHUNK = 3 * 256 * 1024;
/** Settings that belong to one device and would be wrong on another. */
const OWN: ReadonlySet<string> = new Set(['device', 'place', 'install.dismissed']);

/**
 * Everything that is kept as one backup file, asked for thing by thing and handed to a Blob at once: neither the heap
 * holds the store nor anything stands still. The counts come last, since they are known only then.
 */
export async function writeBackup(
  made: Header['made'],
  next: NextKept,
  onProgress: (fraction: number) => void = () => undefined,
): Promise<BackupFile> {
  const writer = new LineWriter();
  const counts: Counts = { jobs: 0, entries: 0, damaged: 0, photos: 0, settings: 0 };
  let [all, lost] = [0, 0];
  writer.line({ format: FORMAT, version: VERSION, made });
  for (let kept = await next(); kept !== null; kept = await next()) {
    if (kept.is === 'counts') all = kept.jobs + kept.photos;
    else if (kept.is === 'lost') lost += 1;
    else if (kept.is === 'photo') {
      await writePhoto(writer, kept.photo);
      counts.photos += 1;
    } else lost += writeRecords(writer, kept, counts);
    onProgress(Math.min(1, (counts.jobs + counts.photos) / Math.max(1, all)));
    await breathe();
  }
  const seal = writer.seal();
  writer.line({ end: { counts, seal } });
  return { file: writer.file(), counts, lost };
}

/** How many could not be written. */
function writeRecords(
  writer: LineWriter,
  kept: Extract<Kept, { is: 'setting' | 'job' | 'stray' }>,
  counts: Counts,
): number {
  if (kept.is === 'setting') {
    if (OWN.has(kept.key)) return 0;
    writer.line({ setting: { key: kept.key, value: kept.value } });
    counts.settings += 1;
    return 0;
  }
  if (kept.is === 'stray') return writeAsItIs(writer, [kept.raw], 'stray', counts);
  const { id, entries, damaged, facts } = kept.job;
  writer.line({ job: { id, archived: facts.archived, lastCopy: facts.lastCopy } });
  for (const entry of entries) writer.line({ entry });
  counts.jobs += 1;
  counts.entries += entries.length;
  return writeAsItIs(writer, damaged, 'damaged', counts);
}

/** A record that cannot be read may hold what no text can: a ring, say. */
function writeAsItIs(writer: LineWriter, raws: readonly unknown[], key: 'damaged' | 'stray', counts: Counts): number {
  let lost = 0;
  for (const raw of raws) {
    try {
      writer.line({ [key]: raw });
      counts.damaged += 1;
    } catch {
      lost += 1;
    }
  }
  return lost;
}

async function writePhoto(writer: LineWriter, { bytes, ...photo }: StoredPhoto): Promise<void> {
  const hasher = sha256.create();
  writer.text(`{"photo":${JSON.stringify(photo).slice(0, -1)},"data":"`);
  for (let at = 0; at < bytes.byteLength; at += CHUNK) {
    const chunk = new Uint8Array(bytes, at, Math.min(CHUNK, bytes.byteLength - at));
    hasher.update(chunk);
    writer.bytes(encodeBase64(chunk));
    await breathe();
  }
  writer.text(`","whole":${bytesToHex(hasher.digest()) === photo.sha256}}}\n`);
}

/** So much is gathered before it is handed to a Blob, which may put it on the disk. */
const LARGEST_PART = 1 << 20;

class LineWriter {
  readonly #hasher = sha256.create();
  readonly #parts: Blob[] = [];
  #gathered: Uint8Array<ArrayBuffer>[] = [];
  #size = 0;

  line(value: unknown): void {
    this.text(`${JSON.stringify(value)}\n`);
  }

  text(text: string): void {
    this.bytes(utf8ToBytes(text) as Uint8Array<ArrayBuffer>);
  }

  bytes(bytes: Uint8Array<ArrayBuffer>): void {
    this.#hasher.update(bytes);
    this.#gathered.push(bytes);
    this.#size += bytes.length;
    if (this.#size >= LARGEST_PART) this.#handOver();
  }

  /** Of all that was written so far. */
  seal(): string {
    return bytesToHex(this.#hasher.clone().digest());
  }

  file(): Blob {
    this.#handOver();
    return new Blob(this.#parts, { type: 'application/json' });
  }

  #handOver(): void {
    if (this.#gathered.length > 0) this.#parts.push(new Blob(this.#gathered));
    this.#gathered = [];
    this.#size = 0;
  }
}
