import { createHash } from 'node:crypto';
import type { Finding } from '../../../src/core/check/index.ts';
import type { Entry, EntryKind, Payload, PieceDeclaration, Sheet } from '../../../src/core/job/index.ts';
import { buildPacket, type Packet, type TableContext } from '../../../src/core/packet/index.ts';

/** A UUID of version 7 shape that counts up: the same in every run. */
export function counter(start = 0): () => string {
  let count = start;
  return () => {
    count += 1;
    return `01930000-0000-7000-8000-${count.toString(16).padStart(12, '0')}`;
  };
}

export const WHO = { name: 'A. Hand', role: 'installer' } as const;
export const DEVICE = '01930000-0000-7000-8000-ffffffffffff';
const AT = '2026-11-25T09:30:00.000Z';
export const MADE = { at: '2026-11-25T17:00:00.000+01:00', device: DEVICE, by: WHO };
export const PICTURES = [new Uint8Array([1, 2, 3, 4, 5]), new Uint8Array([9, 8, 7])];
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
export const PHOTOS = PICTURES.map((bytes) => ({ sha256: hashOf(bytes), mime: 'image/jpeg', size: bytes.length }));

/** Writes entries one after the other, each having seen the one before. */
export class Scribe {
  readonly entries: Entry[] = [];
  readonly newId: () => string;
  readonly job: string;

  constructor(newId: () => string = counter()) {
    this.newId = newId;
    this.job = newId();
  }

  add<K extends EntryKind>(kind: K, payload: Payload<K>): string {
    const before = this.entries.at(-1)?.id;
    const id = this.newId();
    const seen = before === undefined ? [] : [before];
    this.entries.push({ id, job: this.job, at: AT, who: WHO, device: DEVICE, seen, kind, payload: { ...payload } });
    return id;
  }
}

export function triangle(newId: () => string): PieceDeclaration {
  const points = ['A', 'B', 'C'].map((label) => ({
    id: newId(),
    label,
    slot: null,
    role: 'corner' as const,
    sides: [],
    nominal: null,
  }));
  const [a = '', b = '', c = ''] = points.map((point) => point.id);
  const readings = [
    [a, b],
    [b, c],
    [c, a],
  ].map((ends) => ({ id: newId(), slot: null, kind: 'straight' as const, points: ends, needed: true }));
  const id = newId();
  return {
    id,
    kind: 'table',
    name: 'Locker lid',
    flat: true,
    points,
    readings,
    runs: [],
    shots: [],
    questions: [],
    boxes: [],
    pairs: [],
    walk: [],
  };
}

/** A small job of our own making: a 3-4-5 triangle with two takes of one side and two pictures. */
export function sampleJob(newId: () => string = counter()): Scribe {
  const scribe = new Scribe(newId);
  scribe.add('job.open', { name: 'Lid', system: 'metric', fraction: 16 });
  scribe.add('job.detail', { field: 'customer', value: 'Invented Customer' });
  scribe.add('job.detail', { field: 'boat', value: 'Grey Heron' });
  const piece = triangle(newId);
  scribe.add('piece.add', piece);
  for (const [index, value] of [300, 400, 500].entries()) {
    const reading = piece.readings[index]?.id ?? '';
    scribe.add('take.add', { reading, text: `${value}`, unit: 'mm', value });
    if (index === 0) scribe.add('take.add', { reading, text: '300.4', unit: 'mm', value: 300.4 });
  }
  for (const photo of PHOTOS)
    scribe.add('photo.add', {
      photo: newId(),
      ...photo,
      width: 4,
      height: 3,
      piece: piece.id,
      slot: null,
      placeKept: false,
    });
  return scribe;
}

export const noFindings = (_: Sheet): Finding[] => [];

/** As it comes out of a file. */
export const asSent = (packet: Packet): Packet => JSON.parse(JSON.stringify(packet)) as Packet;

export function samplePacket(check: (sheet: Sheet) => Finding[] = noFindings, withData = true): Packet {
  const packet = buildPacket({ entries: sampleJob().entries, made: MADE, photos: PHOTOS, check });
  if (!withData) return asSent(packet);
  const photos = packet.photos.map((photo) => {
    const bytes = PICTURES.find((picture) => hashOf(picture) === photo.sha256) ?? new Uint8Array();
    return { ...photo, data: Buffer.from(bytes).toString('base64') };
  });
  return asSent({ ...packet, photos });
}

/** The same job with one side read ten times too long: the real check has something to say. */
export function slippedPacket(check: (sheet: Sheet) => Finding[]): Packet {
  const scribe = sampleJob();
  const piece = scribe.entries.find((entry) => entry.kind === 'piece.add')?.payload as PieceDeclaration | undefined;
  scribe.add('take.add', { reading: piece?.readings[2]?.id ?? '', text: '5000', unit: 'mm', value: 5000 });
  return asSent(buildPacket({ entries: scribe.entries, made: MADE, photos: PHOTOS, check }));
}

/** What a table does not say itself, the same in every run. */
export const tableContext = (more: Partial<TableContext> = {}): TableContext => ({
  name: 'Job',
  piece: 'Piece',
  units: 'mm',
  who: WHO,
  device: DEVICE,
  newId: counter(),
  now: () => AT,
  keepGood: false,
  ...more,
});
