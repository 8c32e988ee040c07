import { check as checkSheet, type Finding } from '../check/index.ts';
import { Entry, fold, type Sheet } from '../job/index.ts';
import { decodeBase64Text } from './base64.ts';
import { namedPhotos } from './build.ts';
import { differences } from './compare.ts';
import { Envelope, FORMAT, type Packet, type PacketPhoto, VERSION } from './document.ts';
import { faultOfShape } from './plain.ts';
import { sealOf, sha256Hex } from './seal.ts';

/**
 * Why a packet was not taken.
 * not-json: no JSON at all. foreign: JSON, but no packet of ours. newer: a major version this reader does not know.
 * damaged: a packet whose content is broken or was changed. empty: a packet without entries. two-jobs: entries of
 * another job than the packet's. unreadable: too deep or too large to be read here.
 */
export type PacketRefusalCode = 'not-json' | 'foreign' | 'newer' | 'damaged' | 'empty' | 'two-jobs' | 'unreadable';

export interface PacketRefusal {
  ok: false;
  why: PacketRefusalCode;
  /** at: the path of the first fault, '' for the whole. id: the entry or photo it is about. */
  detail: { at: string; id?: string; version?: string };
}

/** What a reader found that does not keep the packet out. */
export type PacketNote =
  | { code: 'newer-minor'; minor: number }
  | { code: 'sheet-differs'; at: string[] }
  | { code: 'findings-differ'; at: string[] }
  | { code: 'photo-not-named'; sha256: string };

export type PacketReading = { ok: true; packet: Packet; notes: PacketNote[] } | PacketRefusal;

export interface ReadOptions {
  /** The shop's own check; the default limits where none is given. */
  check: (sheet: Sheet) => Finding[];
}

const MOST_PATHS = 20;

const refuse = (why: PacketRefusalCode, at: string, more: Omit<PacketRefusal['detail'], 'at'> = {}): PacketRefusal => ({
  ok: false,
  why,
  detail: { at, ...more },
});

/**
 * Reads a packet from its text or from parsed JSON. Never throws, whatever it is given.
 * The seal is computed again and every photo inside is checked against its hash: nothing altered comes through.
 * The packet's sheet and findings are this reader's own, computed from the logbook; where they differ from what the
 * packet said by more than rounding, a note says so. Unknown fields of the document and of entries are kept.
 */
export function readPacket(
  value: unknown,
  options: ReadOptions = { check: (sheet) => checkSheet(sheet) },
): PacketReading {
  try {
    if (typeof value !== 'string') return readDocument(value, options);
    const parsed = parseJson(value);
    return parsed.ok ? readDocument(parsed.value, options) : parsed;
  } catch {
    return refuse('unreadable', '');
  }
}

/** A packet that was cut off on its way is told from a file that never was one. */
function parseJson(text: string): { ok: true; value: unknown } | PacketRefusal {
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch {
    return json.trimStart().startsWith('{') && json.slice(0, 400).includes(`"${FORMAT}"`)
      ? refuse('damaged', '')
      : refuse('not-json', '');
  }
}

function readDocument(value: unknown, options: ReadOptions): PacketReading {
  if (!isRecord(value) || value.format !== FORMAT) return refuse('foreign', '');
  const shape = faultOfShape(value);
  if (shape) return refuse(shape.why, shape.at);
  const refusal = versionFault(value.version) ?? logbookFault(value);
  if (refusal) return refusal;
  const parsed = Envelope.safeParse(value);
  if (!parsed.success) return refuse('damaged', parsed.error.issues[0]?.path.join('/') ?? '');
  if (sealOr(value) !== value.seal) return refuse('damaged', 'seal');
  const { photos, logbook } = parsed.data;
  const broken = photos.findIndex((photo) => !photoIsWhole(photo));
  if (broken >= 0) return refuse('damaged', `photos/${broken}/data`, { id: photos[broken]?.sha256 ?? '' });
  const sorted = logbook.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const sheet = fold(sorted);
  const findings = options.check(sheet);
  const notes = notesOf(value, parsed.data, sheet, findings);
  return { ok: true, packet: { ...parsed.data, logbook: sorted, sheet, findings }, notes };
}

function versionFault(version: unknown): PacketRefusal | null {
  const { major, minor } = isRecord(version) ? version : {};
  if (!Number.isSafeInteger(major) || !Number.isSafeInteger(minor)) return refuse('damaged', 'version');
  if (Number(major) > VERSION.major) return refuse('newer', 'version', { version: `${major}.${minor}` });
  return Number(major) < VERSION.major ? refuse('damaged', 'version') : null;
}

/** Entries are looked at one by one, so that the refusal can name the one that is broken. */
function logbookFault({ logbook, job }: Record<string, unknown>): PacketRefusal | null {
  if (!Array.isArray(logbook)) return refuse('damaged', 'logbook');
  if (logbook.length === 0) return refuse('empty', 'logbook');
  const seen = new Set<string>();
  for (const [index, item] of logbook.entries()) {
    const id = isRecord(item) && typeof item.id === 'string' ? { id: item.id } : {};
    const entry = Entry.safeParse(item);
    if (!entry.success) {
      const path = entry.error.issues[0]?.path ?? [];
      return refuse('damaged', ['logbook', index, ...path].join('/'), id);
    }
    if (seen.has(entry.data.id)) return refuse('damaged', `logbook/${index}/id`, id);
    if (entry.data.job !== job) return refuse('two-jobs', `logbook/${index}/job`, id);
    seen.add(entry.data.id);
  }
  return null;
}

function sealOr(document: Record<string, unknown>): string | null {
  try {
    return sealOf(document);
  } catch {
    return null;
  }
}

function photoIsWhole({ data, size, sha256 }: PacketPhoto): boolean {
  if (data === undefined) return true;
  const bytes = decodeBase64Text(data);
  return bytes !== null && bytes.length === size && sha256Hex(bytes) === sha256;
}

function notesOf(
  said: Record<string, unknown>,
  envelope: { version: { minor: number }; photos: readonly PacketPhoto[]; logbook: readonly Entry[] },
  sheet: Sheet,
  findings: readonly Finding[],
): PacketNote[] {
  const { minor } = envelope.version;
  const newer = minor > VERSION.minor;
  const options = { beyond: newer, before: minor < VERSION.minor, limit: MOST_PATHS };
  const notes: PacketNote[] = newer ? [{ code: 'newer-minor', minor }] : [];
  const inSheet = differences(said.sheet, sheet, options);
  if (inSheet.length > 0) notes.push({ code: 'sheet-differs', at: inSheet });
  const inFindings = differences(said.findings, findings, options);
  if (inFindings.length > 0) notes.push({ code: 'findings-differ', at: inFindings });
  const named = namedPhotos(envelope.logbook);
  for (const { sha256 } of envelope.photos) if (!named.has(sha256)) notes.push({ code: 'photo-not-named', sha256 });
  return notes;
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
