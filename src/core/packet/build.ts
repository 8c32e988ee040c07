import type { Finding } from '../check/index.ts';
import { type Entry, fold, isErased, payloads, type Sheet } from '../job/index.ts';
import { FORMAT, type Made, type Packet, type PacketPhoto, VERSION } from './document.ts';
import { sealOf } from './seal.ts';

export interface PacketParts {
  /** The logbook of one job, in any order. */
  entries: readonly Entry[];
  made: Made;
  /** The pictures this device knows of; those that the logbook does not name, or whose entry was erased, stay behind. */
  photos: readonly Pick<PacketPhoto, 'sha256' | 'mime' | 'size'>[];
  check: (sheet: Sheet) => Finding[];
}

/**
 * The sealed packet of a job, without the photos' bytes.
 * Half characters and numbers JSON has no word for are replaced (U+FFFD, null), so that a slip in one text never keeps
 * a whole job from travelling.
 * @throws RangeError when there is no entry or the entries belong to more than one job
 */
export function buildPacket({ entries, made, photos, check }: PacketParts): Packet {
  const job = entries[0]?.job;
  if (job === undefined) throw new RangeError('A packet needs at least one entry');
  if (entries.some((entry) => entry.job !== job)) throw new RangeError('A packet holds one job');
  const logbook = [...new Map(entries.map((entry) => [entry.id, plain(entry)])).values()].sort(byId);
  const sheet = fold(logbook);
  const named = namedPhotos(logbook);
  const known = new Map(photos.map(({ sha256, mime, size }) => [sha256, { sha256, mime, size }]));
  const unsealed = {
    format: FORMAT,
    version: { ...VERSION },
    job,
    made: plain(made),
    logbook,
    sheet: plain(sheet),
    findings: plain(check(sheet)),
    photos: [...known.values()]
      .filter((photo) => named.has(photo.sha256))
      .sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1)),
  } as const;
  const { format, version, ...rest } = unsealed;
  return { format, version, seal: sealOf(unsealed), ...rest };
}

const byId = (a: Entry, b: Entry): number => (a.id < b.id ? -1 : 1);

/** Hashes of the pictures a logbook speaks of, taken back or not, unless their content was erased. */
export function namedPhotos(logbook: readonly Entry[]): ReadonlySet<string> {
  const named = new Set<string>();
  for (const entry of logbook) {
    if (entry.kind !== 'photo.add' || isErased(entry)) continue;
    const parsed = payloads['photo.add'].safeParse(entry.payload);
    if (parsed.success) named.add(parsed.data.sha256);
  }
  return named;
}

/** A copy that is plain JSON: what is undefined is left out. */
function plain<T>(value: T): T {
  const text = JSON.stringify(value);
  // JSON.stringify writes half a character as an escape; looking for one is far cheaper than looking at every text.
  const suspect = /\\ud[89a-f]/.test(text);
  return JSON.parse(suspect ? JSON.stringify(value, (_, part: unknown) => whole(part)) : text) as T;
}

const whole = (part: unknown): unknown => (typeof part === 'string' ? part.replace(/\p{Surrogate}/gu, '\ufffd') : part);
