import { sigmaOf } from '../../../src/core/check/index.ts';
import { declarePiece } from '../../../src/core/guide/index.ts';
import type { guides } from '../../../src/core/guide/pieces/index.ts';
import type { PieceDeclaration, ReadingKind, SheetRun, Side, Who } from '../../../src/core/job/index.ts';
import { apart, installer, Job, uuid } from './build.ts';

type Guide = (typeof guides)[number];
export type Place = readonly [number, number, number];

/** How far the fasteners of a run stand apart at most, mm; inside the usual limits. */
const GAP = 160;
/** A girth on a boat is a little longer than its chords; invented. */
const SAG = 1.01;

/** Normal deviates by Box and Muller from a fixed stream of numbers (Park and Miller's generator). */
export function deviates(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  const uniform = (): number => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
  for (let i = 0; i < 8; i++) uniform();
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** What a plain size is where a test says nothing, mm. */
const PLAIN = 150;
/** The axis of the boat's frame and the sign for each of its sides. */
const WAYS: Readonly<Record<Side, readonly [number, number]>> = {
  forward: [0, 1],
  aft: [0, -1],
  port: [1, 1],
  starboard: [1, -1],
  centre: [1, 1],
  above: [2, 1],
  below: [2, -1],
};

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Station of a place along a string and the way square from the string to it. */
function fromString(tip: Place, [from = [0, 0, 0], to = [1, 0, 0]]: readonly Place[]): { station: number; off: Place } {
  const way = minus(to, from);
  const share = dot(minus(tip, from), way) / dot(way, way);
  const foot: Place = [from[0] + way[0] * share, from[1] + way[1] * share, from[2] + way[2] * share];
  return { station: share * Math.hypot(...way), off: minus(tip, foot) };
}

/** Height over the plane through three places, or over the frame's own. */
function overPlane(tip: Place, [a, b, c]: readonly Place[]): number {
  if (!a || !b || !c) return tip[2];
  const normal = cross(minus(b, a), minus(c, a));
  return (dot(minus(tip, a), normal) / Math.hypot(...normal)) * Math.sign(normal[2] || 1);
}

interface Manner {
  who?: Who;
  system?: 'imperial' | 'metric';
  /** Where a point truly is; where the guide expects it, when nothing is said. */
  place?: (slot: string, nominal: Place) => Place;
  /** Deviates in standard deviations, one for each time the tape is read; an exact tape when nothing is said. */
  noise?: () => number;
  /** The text as typed instead of the true length, by slot. */
  typed?: Readonly<Record<string, string>>;
  /** mm added to what was read, by slot. */
  added?: Readonly<Record<string, number>>;
  /** Slots nobody has measured yet. */
  open?: readonly string[];
  /** mm, plain sizes by slot. */
  sizes?: Readonly<Record<string, number>>;
  /** Slots read a second time. */
  twice?: readonly string[];
  /** Nothing closes the edges, so nothing is measured along them. */
  bare?: boolean;
  /** Choices by the slot of their question; the first there is, when nothing is said. */
  answers?: Readonly<Record<string, string>>;
}

/** One piece measured as its guide asks: the job, the slots by name, the number of takes. */
export class Measured {
  readonly job: Job;
  readonly piece: PieceDeclaration;
  takes = 0;
  readonly #manner: Manner;
  readonly #choices = new Map<string, string>();
  /** As the answers stand: an edge passes only the points that are asked for. */
  readonly #runs: readonly SheetRun[];
  readonly #places: ReadonlyMap<string, Place>;

  constructor(guide: Guide, manner: Manner = {}) {
    this.#manner = manner;
    const { who = installer, system = 'imperial' } = manner;
    let count = 0;
    this.piece = declarePiece(guide, 'Piece', () => uuid(`guide ${count++}`));
    this.job = new Job({ who, system });
    this.job.add('piece.add', this.piece);
    this.#places = new Map(
      this.piece.points.map(({ id, slot, nominal }) => {
        const expected: Place = nominal ?? [0, 0, 0];
        return [id, manner.place?.(slot ?? '', expected) ?? expected];
      }),
    );
    this.#answer();
    this.#runs = this.job.sheet().runs;
    for (const { slot, when } of this.piece.readings)
      if (slot !== null && this.#holds(when) && !manner.open?.includes(slot)) {
        this.read(slot);
        if (manner.twice?.includes(slot)) this.read(slot);
      }
    this.#fasten();
    for (const { slot, when } of this.piece.shots) {
      if (!this.#holds(when)) continue;
      this.job.add('photo.answer', { piece: this.piece.id, slot, answer: 'could-not', reason: 'rain on the lens' });
    }
  }

  /** The id of the reading of a slot. */
  reading(slot: string): string {
    const found = this.#reading(slot);
    return found.id;
  }

  /** The id of the point of a slot. */
  point(slot: string): string {
    return this.piece.points.find((point) => point.slot === slot)?.id ?? '';
  }

  /** The slots or labels that a finding's subjects stand for. */
  names(ids: readonly { readonly id: string }[]): string[] {
    return ids.map(
      ({ id }) =>
        [...this.piece.readings, ...this.piece.points, ...this.piece.runs].find((one) => one.id === id)?.slot ?? id,
    );
  }

  /** Reads the tape once more; a text or an error given for the slot holds for every time it is read. */
  read(slot: string, more: Pick<Manner, 'typed' | 'added'> = {}): this {
    const { typed, added } = { ...this.#manner, ...more };
    const { id, kind } = this.#reading(slot);
    const text = typed?.[slot];
    if (text === undefined) this.#take(id, kind, this.length(slot) + (added?.[slot] ?? 0));
    else {
      const [whole = 0, top = 0, bottom = 1] = text.split(/[ /]/).map(Number);
      this.job.add('take.add', { reading: id, text, unit: 'in', value: (whole + top / bottom) * 25.4 });
      this.takes++;
    }
    return this;
  }

  /** The points on the other side of the boat, where there are; otherwise the same ones. */
  mirror(points: readonly string[]): string[] {
    const pairs = this.piece.pairs.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]);
    const other = new Map(pairs);
    return points.map((point) => other.get(point) ?? point);
  }

  /** Spread of one look at a length, by the app's own figures. */
  sigma(kind: ReadingKind, mm: number): number {
    return sigmaOf({ kind }, { value: mm, text: '1', unit: 'mm', sigma: null }, this.#manner.who ?? installer);
  }

  /** True length of a slot, mm. */
  length(slot: string): number {
    const { id, kind, points, toward, baseline = [] } = this.#reading(slot);
    const run = this.#runs.find(({ whole }) => whole === id);
    const along = (run?.points ?? points).map((point) => this.#place(point));
    const chords = along.slice(1).reduce((sum, place, i) => sum + apart(along[i] ?? place, place), 0);
    const [tip] = along;
    const base = baseline.map((point) => this.#place(point));
    if (kind === 'straight') return chords;
    if (kind === 'girth') return chords * SAG;
    if (kind === 'size') return this.#manner.sizes?.[slot] ?? PLAIN;
    if (!tip) throw new Error(`no point for ${slot}`);
    if (kind === 'height' && base.length !== 2) return overPlane(tip, base);
    const { station, off } = fromString(tip, base);
    if (kind === 'along') return station;
    const [axis, sign] = WAYS[toward ?? 'above'];
    // Over a string a height has no side.
    return kind === 'height' ? Math.hypot(...off) : Math.hypot(...off) * Math.sign(sign * (off[axis] ?? 0));
  }

  #reading(slot: string) {
    const found = this.piece.readings.find((reading) => reading.slot === slot);
    if (!found) throw new Error(`no reading ${slot}`);
    return found;
  }

  #place(point: string): Place {
    return this.#places.get(point) ?? [0, 0, 0];
  }

  #take(reading: string, kind: PieceDeclaration['readings'][number]['kind'], mm: number): void {
    const { noise } = this.#manner;
    this.job.add('take.add', { reading, ...this.job.typed(mm + (noise?.() ?? 0) * this.sigma(kind, mm)) });
    this.takes++;
  }

  /** Questions that are asked as the answers stand: what one decides comes after it. */
  #answer(): void {
    for (const { slot, choices, when } of this.piece.questions) {
      if (!this.#holds(when)) continue;
      const choice = this.#manner.answers?.[slot] ?? choices[0] ?? '';
      this.#choices.set(slot, choice);
      this.job.add('question.answer', { piece: this.piece.id, slot, choice, text: '' });
    }
  }

  #holds(when: PieceDeclaration['questions'][number]['when']): boolean {
    return when === undefined || when.is.includes(this.#choices.get(when.question) ?? '');
  }

  /** Evenly spaced fasteners, the first and the last at a hand's breadth from the ends at most. */
  #fasten(): void {
    for (const { id, slot, whole, when } of this.piece.runs) {
      if (!this.#holds(when)) continue;
      this.job.add('run.detail', { run: id, field: 'line', value: 'fastener-line' });
      if (this.#manner.bare) {
        const from = this.#runs.find((run) => run.id === id)?.points[0];
        this.job.add('stretch.set', { run: id, from, field: 'closes', value: 'nothing' });
        continue;
      }
      this.job.add('run.detail', { run: id, field: 'type', value: 'snap' });
      this.job.add('run.detail', { run: id, field: 'presence', value: 'there' });
      const length = this.length(this.piece.readings.find((reading) => reading.id === whole)?.slot ?? '');
      const gaps = Math.ceil((length - 60) / GAP);
      for (let rank = 0; rank <= gaps; rank++) {
        const [fastener, reading] = [uuid(`fastener ${slot} ${rank}`), uuid(`station ${slot} ${rank}`)];
        this.job.add('fastener.add', { fastener, run: id, reading, rank, type: 'snap', presence: 'there' });
        this.#take(reading, 'running', 30 + ((length - 60) * rank) / gaps);
      }
    }
  }
}
