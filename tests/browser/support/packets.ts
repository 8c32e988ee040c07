import { createHash } from 'node:crypto';
import { declarePiece } from '../../../src/core/guide/index.ts';
import { guideOf } from '../../../src/core/guide/pieces/index.ts';
import type { PieceDeclaration, PieceKind } from '../../../src/core/job/index.ts';
import { parseLength } from '../../../src/core/length/index.ts';
import { buildPacket } from '../../../src/core/packet/index.ts';
import { MADE, noFindings, Scribe } from '../../core/packet/sample.ts';
import type { PieceTruth } from './dock.ts';

export interface Picture {
  slot: string;
  jpeg: Buffer;
}

export interface MadePacket {
  job: string;
  piece: PieceDeclaration;
  /** Of the readings, by their step. */
  ids: ReadonlyMap<string, string>;
  file: { name: string; mimeType: string; buffer: Buffer };
}

/** Nothing else shows a slip in these; a careful installer reads them twice. */
const TWICE: ReadonlySet<string> = new Set(['h-G']);

/** A piece as an installer would have sent it, without anybody tapping it in; with the pictures given, every point marked. */
export function packetOf(truth: PieceTruth, pictures: readonly Picture[] = []): MadePacket {
  const scribe = new Scribe();
  scribe.add('job.open', { name: '', system: 'imperial', fraction: 16 });
  scribe.add('job.detail', { field: 'customer', value: 'R. Sample' });
  scribe.add('job.detail', { field: 'boat', value: 'Perla' });
  const piece = declared(truth.kind, scribe.newId);
  scribe.add('piece.add', piece);
  const ids = new Map(piece.readings.flatMap(({ slot, id }) => (slot ? [[slot, id] as const] : [])));
  for (const [slot, text] of Object.entries(truth.readings))
    for (const reading of Array<string>(TWICE.has(slot) ? 2 : 1).fill(ids.get(slot) ?? '')) take(scribe, reading, text);
  for (const [slot, choice] of Object.entries(truth.answers))
    scribe.add('question.answer', { piece: piece.id, slot, choice, text: '' });
  fasten(scribe, piece, truth.fasteners);
  for (const picture of pictures) photograph(scribe, piece, picture);
  const photos = pictures.map(({ jpeg }) => ({ ...bytesOf(jpeg), data: jpeg.toString('base64') }));
  const packet = buildPacket({ entries: scribe.entries, made: MADE, photos, check: noFindings });
  const sent = { ...packet, photos: packet.photos.map((one) => photos.find(({ sha256 }) => sha256 === one.sha256)) };
  const buffer = Buffer.from(JSON.stringify(sent));
  return { job: scribe.job, piece, ids, file: { name: 'packet.json', mimeType: 'application/json', buffer } };
}

function declared(kind: PieceKind, newId: () => string): PieceDeclaration {
  const guide = guideOf(kind);
  if (!guide) throw new Error(`no guide for ${kind}`);
  return declarePiece(guide, '', newId);
}

function take(scribe: Scribe, reading: string, text: string): void {
  const read = parseLength(text, 'in');
  if (!read.ok) throw new Error(`${text} is no length`);
  scribe.add('take.add', { reading, text, unit: read.unit, value: read.mm });
}

function fasten(scribe: Scribe, { runs: [run] }: PieceDeclaration, places: readonly string[]): void {
  if (!run) return;
  scribe.add('run.detail', { run: run.id, field: 'presence', value: 'there' });
  scribe.add('run.detail', { run: run.id, field: 'line', value: 'fastener-line' });
  scribe.add('run.detail', { run: run.id, field: 'type', value: 'snap' });
  for (const [i, place] of places.entries()) {
    const reading = scribe.newId();
    const about = { fastener: scribe.newId(), run: run.id, reading, rank: i + 1 };
    scribe.add('fastener.add', { ...about, type: 'snap', presence: 'there' });
    take(scribe, reading, place);
  }
}

const bytesOf = (jpeg: Buffer) => ({
  sha256: createHash('sha256').update(jpeg).digest('hex'),
  mime: 'image/jpeg',
  size: jpeg.length,
});

function photograph(scribe: Scribe, piece: PieceDeclaration, { slot, jpeg }: Picture): void {
  const photo = scribe.newId();
  const size = { width: 1200, height: 900 };
  scribe.add('photo.add', { photo, ...bytesOf(jpeg), ...size, piece: piece.id, slot, placeKept: false });
  const points = piece.shots.find((shot) => shot.slot === slot)?.points ?? [];
  for (const [i, point] of points.entries())
    scribe.add('photo.mark', { photo, x: 0.25 + 0.2 * i, y: 0.4, point, text: '' });
}
