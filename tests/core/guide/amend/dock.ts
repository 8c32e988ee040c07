import { adjust, nextTapes } from '../../../../src/core/adjust/index.ts';
import { type Finding, judge } from '../../../../src/core/check/index.ts';
import { declarePiece } from '../../../../src/core/guide/index.ts';
import { guideOf } from '../../../../src/core/guide/pieces/index.ts';
import {
  type Deed,
  type Entry,
  type EntryKind,
  fold,
  type Payload,
  type PieceDeclaration,
  type Sheet,
  type SheetPoint,
  type SheetReading,
} from '../../../../src/core/job/index.ts';
import { id, Phone } from '../../job/support.ts';

export type Place = readonly [number, number, number];

/** A girth on a boat is a little longer than its chords; invented. */
const SAG = 1.01;

/** Ids as a device would make them, one after the other. */
function makeIds(space: number): () => string {
  let n = 0;
  return () => {
    n += 1;
    return id(n, space);
  };
}

export const WHY = { reason: 'another point lies between' };

/** A person measuring pieces whose points truly lie somewhere, with a tape that reads to the millimetre. */
export class Dock {
  readonly phone = new Phone();
  readonly newId = makeIds(50);
  readonly places = new Map<string, Place>();

  constructor() {
    this.phone.does('job.open', { name: '', system: 'metric', fraction: 16 });
  }

  #folded: { entries: number; sheet: Sheet } | null = null;

  get sheet(): Sheet {
    const entries = this.phone.entries.length;
    if (this.#folded?.entries !== entries) this.#folded = { entries, sheet: fold(this.phone.entries) };
    return this.#folded.sheet;
  }

  piece(declared: PieceDeclaration): string {
    this.phone.does('piece.add', declared);
    for (const { id: of, nominal } of declared.points)
      if (nominal && !this.places.has(of)) this.places.set(of, nominal);
    return declared.id;
  }

  bow(): string {
    const guide = guideOf('open-bow');
    if (!guide) throw new Error('no guide');
    const piece = this.piece(declarePiece(guide, 'Bow', this.newId));
    this.phone.does('question.answer', { piece, slot: 'glass', choice: 'up-glass', text: '' });
    return piece;
  }

  does(deeds: readonly Deed[]): Entry[] {
    return deeds.map(({ kind, payload }) => {
      if (kind === 'point.add') this.#place((payload as Payload<'point.add'>).point);
      return this.phone.does(kind as EntryKind, payload as never);
    });
  }

  /** A point that was added lies half way at first, a little outside; a mark that was moved, elsewhere. */
  #place(point: Payload<'point.add'>['point']): void {
    const old = point.replaces === undefined ? undefined : this.places.get(point.replaces);
    const at = old ? ([old[0] + 60, old[1] - 90, old[2]] as const) : point.nominal;
    if (at && !this.places.has(point.id)) this.places.set(point.id, [at[0] + 15, at[1] * 1.05, at[2]]);
  }

  point(label: string): SheetPoint {
    const found = this.sheet.points.find((point) => point.label === label && point.pieces.length > 0);
    if (!found) throw new Error(`no point ${label}`);
    return found;
  }

  /** Labels of the edge, in order. */
  edge(run = 0): string {
    const { sheet } = this;
    return (sheet.runs[run]?.points ?? [])
      .map((point) => sheet.points.find(({ id: of }) => of === point)?.label ?? '?')
      .join(' ');
  }

  run(at = 0): string {
    return this.sheet.runs[at]?.id ?? '';
  }

  /** Readings by the labels of their ends, as the walk has them. */
  name({ kind, points, baseline }: SheetReading): string {
    const { sheet } = this;
    const label = (point: string): string => sheet.points.find(({ id: of }) => of === point)?.label ?? '?';
    const on = baseline ? ` over ${baseline.map(label).join('-')}` : '';
    return `${kind === 'straight' ? '' : `${kind} `}${points.map(label).join('-')}${on}`;
  }

  reading(name: string): SheetReading {
    const found = this.sheet.readings.find((reading) => this.name(reading) === name);
    if (!found) throw new Error(`no reading ${name}`);
    return found;
  }

  /** What is asked for and not read yet, by name, in walking order. */
  open(piece = this.sheet.pieces[0]?.id): string[] {
    const { sheet } = this;
    const walk = sheet.pieces.find(({ id: of }) => of === piece)?.walk ?? [];
    return walk.flatMap((key) => {
      const reading = sheet.readings.find((one) => one.piece === piece && (one.slot ?? one.id) === key);
      return reading?.state === 'open' ? [this.name(reading)] : [];
    });
  }

  /** Reads the tape at one reading. */
  read(reading: SheetReading): Entry {
    const value = Math.round(this.length(reading));
    return this.phone.does('take.add', { reading: reading.id, text: String(value), unit: 'mm', value });
  }

  readNamed(...names: string[]): void {
    for (const name of names) this.read(this.reading(name));
  }

  /** Everything that is needed; heights, and lengths along which no fasteners are, which nothing else checks, twice. */
  readAll(): void {
    for (const reading of this.sheet.readings) {
      if (reading.state !== 'open' || !reading.needed) continue;
      this.read(reading);
      if (reading.kind === 'height' || reading.kind === 'girth') this.read(reading);
    }
  }

  length(reading: SheetReading): number {
    const { kind, points, baseline = [] } = reading;
    const run = this.sheet.runs.find(({ whole }) => whole === reading.id);
    const at = (point: string): Place => this.places.get(point) ?? [0, 0, 0];
    const along = (run?.points ?? points).map(at);
    const chords = along.slice(1).reduce((sum, place, i) => sum + apart(along[i] ?? place, place), 0);
    if (kind === 'straight') return chords;
    if (kind === 'girth') return chords * SAG;
    const [tip] = along;
    const foot = baseline.map((point) => at(point)[2]);
    if (kind === 'height' && tip) return tip[2] - foot.reduce((sum, z) => sum + z, 0) / Math.max(1, foot.length);
    throw new Error(`no true value for a ${kind}`);
  }

  findings(): Finding[] {
    return judge(this.sheet).findings;
  }

  /** What the engine says of the shape; what is missing is said by other rules. */
  stops(): string[] {
    return this.findings()
      .filter(({ severity, rule }) => severity === 'stop' && !rule.startsWith('missing-'))
      .map(({ rule, subjects }) => `${rule} ${subjects.map(({ id: of }) => this.#subject(of)).join(' ')}`);
  }

  /** Ends of the tapes the engine would take next, by label; everything asked for counts as answered. */
  advice(): string[][] {
    const { sheet } = this;
    const label = (of: string): string => sheet.points.find(({ id: point }) => point === of)?.label ?? '?';
    const network = [...judge(sheet).pieces.values()][0]?.network;
    if (!network) throw new Error('nothing is measured');
    return nextTapes(network, adjust(network)).ranked.map(({ from, to }) => [label(from), label(to)]);
  }

  #subject(of: string): string {
    const { sheet } = this;
    const reading = sheet.readings.find((one) => one.id === of);
    return reading ? this.name(reading) : (sheet.points.find((one) => one.id === of)?.label ?? of);
  }
}

const apart = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
