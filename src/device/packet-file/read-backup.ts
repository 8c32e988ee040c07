import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { Entry, picturesOf } from '../../core/job/index.ts';
import { decodeBase64Text, sha256Hex } from '../../core/packet/index.ts';
import { type Counts, EndLine, FORMAT, Header, JobLine, lineOf, PhotoLine, SettingLine, VERSION } from './backup.ts';
import { breathe } from './breathe.ts';
import { readLines } from './lines.ts';

/** Where something lies in the file, in bytes. */
export interface Place {
  from: number;
  to: number;
}

export interface JobFound extends Place {
  id: string;
  /** Parsed where it is put back. */
  facts: unknown;
  entries: number;
  damaged: number;
  /** The pictures its entries name, here or not. */
  photos: string[];
}

export interface PhotoFound extends Place {
  sha256: string;
  size: number;
}

/** What a backup holds. Nothing of it was stored; jobs and pictures are still in the file. */
export interface BackupFound {
  made: Header['made'];
  counts: Counts;
  settings: { key: string; value: unknown }[];
  jobs: JobFound[];
  strays: unknown[];
  photos: PhotoFound[];
  /** Lines of a later version that were passed over. */
  unknown: number;
}

/**
 * Why a file was refused. foreign: no backup. newer: made by a later version. cut-off: it ends before its end.
 * damaged: its content is not what its seal says, or cannot be read. unreadable: the file went away meanwhile.
 */
export type BackupRefusal = 'foreign' | 'newer' | 'cut-off' | 'damaged' | 'unreadable';
export type BackupReading = { ok: true; found: BackupFound } | { ok: false; why: BackupRefusal };

class Refused extends Error {
  readonly why: BackupRefusal;
  constructor(why: BackupRefusal) {
    super(why);
    this.why = why;
  }
}

/**
 * Reads a backup from its first byte to its last, every line parsed, every picture held against its hash, the seal
 * checked; keeps only where things lie. Never throws, and nothing is given back of a file that is not whole.
 */
export async function readBackup(
  file: Blob,
  onProgress: (fraction: number) => void = () => undefined,
): Promise<BackupReading> {
  const reader = new BackupReader();
  try {
    if (!(await looksLikeBackup(file))) return { ok: false, why: 'foreign' };
    for await (const { bytes, from, to } of readLines(file)) {
      reader.line(bytes, { from, to });
      onProgress(to / file.size);
      if (bytes.length > LONG_LINE) await breathe();
    }
    return { ok: true, found: reader.end() };
  } catch (error) {
    return { ok: false, why: error instanceof Refused ? error.why : 'unreadable' };
  }
}

const LONG_LINE = 1 << 16;

/** Told by its first bytes, whatever it is called. */
export async function looksLikeBackup(file: Blob): Promise<boolean> {
  const start = await file.slice(0, 64).text();
  return start.startsWith(`{"format":"${FORMAT}"`);
}

class BackupReader {
  readonly #hasher = sha256.create();
  readonly #found: Omit<BackupFound, 'made' | 'counts'> = {
    settings: [],
    jobs: [],
    strays: [],
    photos: [],
    unknown: 0,
  };
  readonly #counts: Counts = { jobs: 0, entries: 0, damaged: 0, photos: 0, settings: 0 };
  readonly #ids = new Set<string>();
  readonly #decoder = new TextDecoder('utf-8', { fatal: true });
  #header: Header | null = null;
  #job: JobFound | null = null;
  #ended = false;

  line(bytes: Uint8Array, place: Place): void {
    const text = this.#textOf(bytes);
    if (this.#ended) {
      if (text.trim() !== '') throw new Refused('damaged');
      return;
    }
    const line = lineOf(text);
    if (line === null) throw new Refused(bytes.at(-1) === LINE_FEED ? 'damaged' : 'cut-off');
    if (!this.#header) this.#header = headerOf(line.value);
    else if (line.key !== 'end') this.#take(line.key, line.value, place);
    else {
      this.#close(line.value);
      return;
    }
    this.#hasher.update(bytes);
  }

  end(): BackupFound {
    if (!this.#header || !this.#ended) throw new Refused('cut-off');
    return { made: this.#header.made, counts: this.#counts, ...this.#found };
  }

  #textOf(bytes: Uint8Array): string {
    try {
      return this.#decoder.decode(bytes);
    } catch {
      throw new Refused('damaged');
    }
  }

  #close(value: unknown): void {
    const end = EndLine.safeParse(value);
    if (!end.success || end.data.seal !== bytesToHex(this.#hasher.digest())) throw new Refused('damaged');
    const keys = Object.keys(this.#counts) as (keyof Counts)[];
    if (keys.some((key) => end.data.counts[key] !== this.#counts[key])) throw new Refused('damaged');
    this.#ended = true;
  }

  #take(key: string, value: unknown, place: Place): void {
    if (key === 'entry' || key === 'damaged') {
      this.#takeRecord(key, value, place);
      return;
    }
    this.#job = null;
    if (key === 'setting') {
      const setting = parsed(SettingLine, value);
      this.#found.settings.push({ key: setting.key, value: setting.value });
      this.#counts.settings += 1;
    } else if (key === 'job') this.#takeJob(value, place);
    else if (key === 'stray') {
      this.#found.strays.push(value);
      this.#counts.damaged += 1;
    } else if (key === 'photo') this.#takePhoto(value, place);
    else if ((this.#header?.version.minor ?? 0) > VERSION.minor) this.#found.unknown += 1;
    else throw new Refused('damaged');
  }

  #takeJob(value: unknown, { from, to }: Place): void {
    const { id, ...facts } = parsed(JobLine, value);
    if (this.#ids.has(id)) throw new Refused('damaged');
    this.#ids.add(id);
    this.#job = { id, facts, from, to, entries: 0, damaged: 0, photos: [] };
    this.#found.jobs.push(this.#job);
    this.#counts.jobs += 1;
  }

  #takeRecord(key: 'entry' | 'damaged', value: unknown, { to }: Place): void {
    const job = this.#job;
    if (!job) throw new Refused('damaged');
    if (key === 'entry' && parsed(Entry, value).job !== job.id) throw new Refused('damaged');
    job[key === 'entry' ? 'entries' : 'damaged'] += 1;
    this.#counts[key === 'entry' ? 'entries' : 'damaged'] += 1;
    job.to = to;
    for (const hash of picturesOf([value])) if (!job.photos.includes(hash)) job.photos.push(hash);
  }

  #takePhoto(value: unknown, place: Place): void {
    if (photoOf(value) === null) throw new Refused('damaged');
    const { sha256: hash, size } = parsed(PhotoLine, value);
    this.#found.photos.push({ sha256: hash, size, ...place });
    this.#counts.photos += 1;
  }
}

const LINE_FEED = 0x0a;

function headerOf(value: unknown): Header {
  const header = Header.safeParse(value);
  if (header.success) return header.data;
  const major = Reflect.get(Object(Reflect.get(Object(value), 'version')), 'major');
  throw new Refused(Number.isSafeInteger(major) && Number(major) > VERSION.major ? 'newer' : 'damaged');
}

function parsed<T>(
  shape: { safeParse(value: unknown): { success: true; data: T } | { success: false } },
  value: unknown,
) {
  const read = shape.safeParse(value);
  if (!read.success) throw new Refused('damaged');
  return read.data;
}

/** A picture out of its line; null where its bytes are not what the line says of them. */
function photoOf(value: unknown): { sha256: string; mime: string; size: number; bytes: ArrayBuffer } | null {
  const line = PhotoLine.safeParse(value);
  if (!line.success) return null;
  const { sha256: hash, mime, size, data, whole } = line.data;
  const bytes = decodeBase64Text(data);
  if (bytes === null || bytes.length !== size || (sha256Hex(bytes) === hash) !== whole) return null;
  return { sha256: hash, mime, size, bytes: bytes.buffer };
}

/** One picture of a backup that was read before; null when the file is not what it was. */
export async function photoOutOf(file: Blob, { from, to }: Place): Promise<ReturnType<typeof photoOf>> {
  const line = lineOf(await file.slice(from, to).text());
  return line?.key === 'photo' ? photoOf(line.value) : null;
}

/** One job of a backup that was read before; null when the file is not what it was. */
export async function jobOutOf(
  file: Blob,
  { id, facts, from, to }: JobFound,
): Promise<{ id: string; entries: Entry[]; damaged: unknown[]; facts: JobFound['facts'] } | null> {
  const entries: Entry[] = [];
  const damaged: unknown[] = [];
  const [, ...lines] = (await file.slice(from, to).text()).split('\n').filter((text) => text !== '');
  for (const text of lines) {
    const line = lineOf(text);
    const entry = Entry.safeParse(line?.value);
    if (line?.key === 'damaged') damaged.push(line.value);
    else if (line?.key === 'entry' && entry.success && entry.data.job === id) entries.push(entry.data);
    else return null;
  }
  return { id, entries, damaged, facts };
}
