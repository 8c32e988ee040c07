import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import {
  decodeBase64,
  looksLikeTable,
  type Packet,
  type PacketNote,
  type PacketPhoto,
  type PacketRefusal,
  type ReadOptions,
  readPacket,
} from '../../core/packet/index.ts';
import { breathe } from './breathe.ts';
import { type Lifted, PhotoScanner } from './scan.ts';

/** A picture out of a packet, checked against its hash. */
export interface PhotoBytes {
  sha256: string;
  mime: string;
  size: number;
  bytes: ArrayBuffer;
}

/**
 * What a file turned out to be. packet: its photos are in `photos`, those that travel beside it are named in `missing`.
 * table: a readings table, for `readTable`.
 */
export type PacketFileReading =
  | { ok: true; kind: 'packet'; packet: Packet; notes: PacketNote[]; photos: PhotoBytes[]; missing: string[] }
  | { ok: true; kind: 'table'; text: string }
  | PacketRefusal;

export interface ReadFileOptions {
  /** From 0 to 1. */
  onProgress?: (fraction: number) => void;
  /** The shop's own check. */
  check?: ReadOptions['check'];
  /** Bytes taken at a time, a multiple of four. */
  chunk?: number;
}

const CHUNK = 1 << 20;
/** Without its photos no packet comes near this; a table even less. */
const LARGEST_REST = 64 << 20;

const refuse = (why: PacketRefusal['why'], at: string, id?: string): PacketRefusal => ({
  ok: false,
  why,
  detail: id === undefined ? { at } : { at, id },
});

/**
 * Reads a packet or a readings table, told by its content and not by its name. Photos are taken out of the file one
 * after the other, so that their base64 is never in memory at once. Never throws: a file that goes away while it is
 * read is `unreadable`. Nothing is given back unless every photo inside is whole.
 */
export async function readPacketFile(file: Blob, options: ReadFileOptions = {}): Promise<PacketFileReading> {
  try {
    return (await beginsLikeJson(file)) ? await readJson(file, options) : await readText(file);
  } catch {
    return refuse('unreadable', '');
  }
}

async function beginsLikeJson(file: Blob): Promise<boolean> {
  const start = new TextDecoder().decode(await file.slice(0, 4096).arrayBuffer());
  return /^\s*[{[]/.test(start);
}

async function readText(file: Blob): Promise<PacketFileReading> {
  if (file.size > LARGEST_REST) return refuse('not-json', '');
  const text = decodeText(new Uint8Array(await file.arrayBuffer()));
  return looksLikeTable(text) ? { ok: true, kind: 'table', text } : refuse('not-json', '');
}

/** Spreadsheets also write UTF-16 with a mark, and the Windows code page without one. */
function decodeText(bytes: Uint8Array<ArrayBuffer>): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

async function readJson(file: Blob, options: ReadFileOptions): Promise<PacketFileReading> {
  const step = options.chunk ?? CHUNK;
  const scanner = new PhotoScanner();
  for (let at = 0; at < file.size; at += step) {
    scanner.push(new Uint8Array(await file.slice(at, at + step).arrayBuffer()), at);
    if (scanner.restBytes > LARGEST_REST) return refuse('unreadable', '');
    options.onProgress?.(at / file.size / 2);
    await breathe();
  }
  const document = parseRest(scanner);
  const { check } = options;
  const reading = check ? readPacket(document, { check }) : readPacket(document);
  if (!reading.ok) return reading;
  const { packet, notes } = reading;
  const photos: PhotoBytes[] = [];
  for (const [index, { data, ...photo }] of packet.photos.entries()) {
    const place = scanner.lifted.get(index) ?? data;
    if (place === undefined) continue;
    const bytes = await photoBytes(file, place, photo, step);
    if (!bytes) return refuse('damaged', `photos/${index}/data`, photo.sha256);
    photos.push({ sha256: photo.sha256, mime: photo.mime, size: photo.size, bytes });
    options.onProgress?.((1 + (index + 1) / packet.photos.length) / 2);
  }
  options.onProgress?.(1);
  const inside = new Set(photos.map((photo) => photo.sha256));
  const wanted = new Set([...packet.photos, ...packet.sheet.photos].map((photo) => photo.sha256));
  const missing = [...wanted].filter((hash) => !inside.has(hash)).sort();
  const bare = packet.photos.map(({ data: _, ...photo }) => photo);
  return { ok: true, kind: 'packet', packet: { ...packet, photos: bare }, notes, photos, missing };
}

/** The document with the lifted data gone; the text where it is not JSON, so that the reader says what it is. */
function parseRest(scanner: PhotoScanner): unknown {
  const decoder = new TextDecoder();
  const text = scanner.rest.map((part) => decoder.decode(part, { stream: true })).join('') + decoder.decode();
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch {
    return text;
  }
  const photos = (document as { photos?: unknown } | null)?.photos;
  if (Array.isArray(photos)) {
    for (const index of scanner.lifted.keys()) {
      const photo: unknown = photos[index];
      // A lifted place holds an empty string; anything else there is a file made to deceive, and stays to be refused.
      if (typeof photo === 'object' && photo !== null && 'data' in photo && photo.data === '') delete photo.data;
    }
  }
  return document;
}

async function photoBytes(
  file: Blob,
  place: Lifted | string,
  photo: Pick<PacketPhoto, 'sha256' | 'size'>,
  step: number,
): Promise<ArrayBuffer | null> {
  const source = typeof place === 'string' ? new Blob([place]) : await base64Of(file, place);
  if (source === null || Math.ceil(photo.size / 3) * 4 !== source.size) return null;
  const bytes = new Uint8Array(photo.size);
  const hasher = sha256.create();
  let filled = 0;
  for (let at = 0; at < source.size; at += step) {
    const text = new Uint8Array(await source.slice(at, at + step).arrayBuffer());
    const part = decodeBase64(text);
    const isLast = at + step >= source.size;
    if (part === null || (!isLast && part.length * 4 !== text.length * 3)) return null;
    if (filled + part.length > bytes.length) return null;
    bytes.set(part, filled);
    hasher.update(part);
    filled += part.length;
    await breathe();
  }
  return filled === photo.size && bytesToHex(hasher.digest()) === photo.sha256 ? bytes.buffer : null;
}

/** Base64 as it lies in the file; where it was written with escapes (`\/` is legal JSON), without them. */
async function base64Of(file: Blob, { from, to, escaped }: Lifted): Promise<Blob | null> {
  const lying = file.slice(from, to);
  if (!escaped) return lying;
  try {
    return new Blob([String(JSON.parse(`"${await lying.text()}"`))]);
  } catch {
    return null;
  }
}
