import { createHash } from 'node:crypto';
import { check } from '../../src/core/check/index.ts';
import { declarePiece } from '../../src/core/guide/index.ts';
import { guides } from '../../src/core/guide/pieces/index.ts';
import type { Entry, EntryKind, Payload } from '../../src/core/job/index.ts';
import { buildPacket } from '../../src/core/packet/index.ts';
import { writePacketFile } from '../../src/device/packet-file/index.ts';

const ORIGIN: readonly [number, number, number] = [0, 0, 0];
const WHO = { name: 'Sam', role: 'installer' } as const;
const AT = '2026-05-04T09:00:00+00:00';
const id = (n: number): string => `01930000-0000-7000-8000-${n.toString(16).padStart(12, '0')}`;

export const JOB = id(1);
const DEVICE = id(2);

interface Picture {
  sha256: string;
  mime: string;
  size: number;
}

/** A packet file of one job: its pieces measured over and over, and every picture named once. */
export async function packetFile(pictures: readonly Uint8Array[], count: number): Promise<Blob> {
  const bytes = new Map(pictures.map((jpeg) => [createHash('sha256').update(jpeg).digest('hex'), jpeg]));
  const photos = [...bytes].map(([sha256, jpeg]) => ({ sha256, mime: 'image/jpeg', size: jpeg.length }));
  const made = { at: AT, device: DEVICE, by: WHO };
  const packet = buildPacket({ entries: entriesOf(photos, count), made, photos, check: (sheet) => check(sheet) });
  return writePacketFile(packet, async (sha256) => new Blob([Uint8Array.from(bytes.get(sha256) ?? [])]));
}

function entriesOf(photos: readonly Picture[], count: number): Entry[] {
  const entries: Entry[] = [];
  let last = 2;
  const newId = (): string => {
    last += 1;
    return id(last);
  };
  const add = <K extends EntryKind>(kind: K, payload: Payload<K>): void => {
    const before = entries.at(-1)?.id;
    const seen = before === undefined ? [] : [before];
    entries.push({ id: newId(), job: JOB, at: AT, who: WHO, device: DEVICE, seen, kind, payload: { ...payload } });
  };
  add('job.open', { name: 'Many photos', system: 'metric', fraction: 16 });
  const pieces = Array.from({ length: 8 }, (_, index) => {
    const guide = guides[index % guides.length];
    if (!guide) throw new Error('There is no guide.');
    const piece = declarePiece(guide, `Piece ${index + 1}`, newId);
    add('piece.add', piece);
    return piece;
  });
  for (const [index, photo] of photos.entries()) {
    const piece = pieces[index % pieces.length];
    if (!piece) throw new Error('There is no piece.');
    const more = { width: 1600, height: 1200, piece: piece.id, slot: null, placeKept: false };
    add('photo.add', { photo: newId(), ...photo, ...more });
  }
  const takes = pieces.flatMap(({ points, readings }) => {
    const at = new Map(points.map((point) => [point.id, point.nominal ?? ORIGIN]));
    return readings.map(({ id: reading, kind, points: ends }) => {
      const [a, b] = ends.map((end) => at.get(end) ?? ORIGIN);
      const value = a && b ? Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) : (a?.[2] ?? 0);
      return { reading, value: Math.round(kind === 'girth' ? value * 3 : value) };
    });
  });
  for (let i = 0; entries.length < count; i += 1) {
    const { reading, value } = takes[i % takes.length] ?? { reading: '', value: 0 };
    add('take.add', { reading, text: `${value}`, unit: 'mm', value });
  }
  return entries;
}
