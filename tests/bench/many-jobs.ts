/** A shop's year of jobs, all invented: measured, half measured, asked again, cleared, voided, put away. */
import { declarePiece } from '../../src/core/guide/index.ts';
import { guides } from '../../src/core/guide/pieces/index.ts';
import type { Entry, EntryKind, Payload, PieceDeclaration, Role } from '../../src/core/job/index.ts';

/** What one job is to look like. sent: a copy of this very state was made. older: of a state before. */
export interface InventedJob {
  id: string;
  entries: Entry[];
  archived: boolean;
  copy: 'none' | 'older' | 'same';
}

const CUSTOMERS = [
  'Abelone Fjørd',
  'Müller & Söhne',
  'O. Brindle',
  'Zoë Q. Lindqvarn',
  'T. Ormsby-Thrale',
  'Ingvild Ærø',
];
const BOATS = ['Perla', 'Wind Rose', 'Mörkö', 'Second Wind', 'Étoile filante', 'Grey Heron', 'Tilda', 'Ålesjø'];
const DAY = 86_400_000;
const LATEST = Date.parse('2026-06-30T16:00:00Z');

/** The same list for the same count, every time. */
export function manyJobs(count: number, size: 'usual' | 'small' = 'usual'): InventedJob[] {
  return Array.from({ length: count }, (_, index) => inventJob(index, size));
}

function inventJob(index: number, size: 'usual' | 'small'): InventedJob {
  const logbook = new Logbook(index);
  const customer = index % 17 === 16 ? '' : `${CUSTOMERS[index % CUSTOMERS.length]} ${index + 1}`;
  const boat = index % 13 === 12 ? '' : `${BOATS[(index * 7) % BOATS.length]} ${Math.floor(index / 8) + 1}`;
  logbook.add('job.open', {
    name: index % 5 === 0 ? '' : [customer, boat].filter(Boolean).join(' – '),
    system: index % 3 === 0 ? 'metric' : 'imperial',
    fraction: 16,
  });
  if (customer) logbook.add('job.detail', { field: 'customer', value: customer });
  if (boat) logbook.add('job.detail', { field: 'boat', value: boat });
  const pieces = size === 'small' ? [] : logbook.pieces(index % 4 === 0 ? 2 : 1);
  const how = index % 10;
  for (const piece of pieces) logbook.measure(piece, how < 2 ? 0.4 : 1);
  const last = pieces.at(-1);
  const heads = [logbook.last];
  if (last && (how === 2 || how === 3)) logbook.ask(last);
  if (how >= 5) for (const piece of pieces) logbook.clear(piece);
  if (how === 5) logbook.add('note.add', { on: null, text: 'The owner has moved the cleats.' });
  return {
    id: logbook.job,
    entries: logbook.entries,
    archived: index % 6 === 5 && how > 6,
    copy: how === 0 || heads.length === 0 ? 'none' : how === 1 || how === 4 ? 'older' : 'same',
  };
}

/** Writes a job as a device does: each entry has seen the one before. */
class Logbook {
  readonly job: string;
  readonly entries: Entry[] = [];
  readonly #index: number;
  #made = 0;

  constructor(index: number) {
    this.#index = index;
    this.job = this.newId();
  }

  get last(): string {
    return this.entries.at(-1)?.id ?? '';
  }

  readonly newId = (): string => {
    this.#made += 1;
    const job = this.#index.toString(16).padStart(6, '0');
    return `0193${job.slice(0, 4)}-${job.slice(4)}00-7000-8000-${this.#made.toString(16).padStart(12, '0')}`;
  };

  add<K extends EntryKind>(kind: K, payload: Payload<K>, role: Role = 'installer'): void {
    const { last } = this;
    this.entries.push({
      id: this.newId(),
      job: this.job,
      at: new Date(LATEST - this.#index * (DAY / 5) + this.entries.length * 20_000).toISOString(),
      who: { name: role === 'bench' ? 'Bench' : 'Sam', role },
      device: '01930000-0000-7000-8000-00000000d001',
      seen: last === '' ? [] : [last],
      kind,
      payload: { ...payload },
    });
  }

  pieces(count: number): PieceDeclaration[] {
    return Array.from({ length: count }, (_, nth) => {
      const guide = guides[(this.#index + nth) % guides.length];
      if (!guide) throw new Error('There is no guide.');
      const piece = declarePiece(guide, guide.kind.replace('-', ' '), this.newId);
      this.add('piece.add', piece);
      return piece;
    });
  }

  /** part: how much of the walk is done. */
  measure(piece: PieceDeclaration, part: number): void {
    const done = new Set(piece.walk.slice(0, Math.ceil(piece.walk.length * part)));
    const isDone = ({ slot }: { slot: string | null }): boolean => slot !== null && done.has(slot);
    for (const reading of piece.readings.filter(isDone))
      this.add('take.add', { reading: reading.id, text: '1000', unit: 'mm', value: 1000 + (this.#made % 7) });
    for (const { slot, choices } of piece.questions.filter(isDone))
      this.add('question.answer', { piece: piece.id, slot, choice: choices[0] ?? 'none-here', text: '' });
    for (const { slot } of piece.shots.filter(isDone))
      this.add('photo.answer', { piece: piece.id, slot, answer: 'could-not', reason: 'Too dark' });
    for (const run of piece.runs.filter(isDone)) {
      this.add('run.detail', { run: run.id, field: 'presence', value: 'planned' });
      this.add('run.detail', { run: run.id, field: 'planned-count', value: '12' });
    }
  }

  ask(piece: PieceDeclaration): void {
    const items = piece.readings.slice(0, 2).map(({ id }) => ({ on: 'reading' as const, id, note: '' }));
    this.add('ask.again', { piece: piece.id, note: 'Which edge?', items }, 'bench');
  }

  clear(piece: PieceDeclaration): void {
    this.add('piece.clear', { piece: piece.id, judged: [this.last], basis: 'rules' }, 'bench');
  }
}
