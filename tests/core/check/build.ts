import type { CheckOptions, Finding, RuleKey } from '../../../src/core/check/index.ts';
import { check } from '../../../src/core/check/index.ts';
import {
  type Entry,
  fold,
  type Payload,
  type PieceDeclaration,
  type PointRole,
  type ReadingKind,
  type Sheet,
  type Side,
  type Who,
} from '../../../src/core/job/index.ts';
import { formatLength, parseLength } from '../../../src/core/length/index.ts';

export const installer: Who = { name: 'Ina', role: 'installer' };
export const owner: Who = { name: 'Owen', role: 'owner' };

/** A stable UUID for a name, so that the same job built twice has the same ids. FNV-1a, twice with other starts. */
export function uuid(name: string): string {
  const hash = (start: number): string => {
    let value = start;
    for (const char of name) value = Math.imul(value ^ (char.codePointAt(0) ?? 0), 0x01000193) >>> 0;
    return value.toString(16).padStart(8, '0');
  };
  const [a, b, c] = [hash(0x811c9dc5), hash(0x9747b28c), hash(0x1b873593)];
  return `${a}-${b.slice(0, 4)}-7${b.slice(4, 7)}-8${c.slice(0, 3)}-${c}${b.slice(4)}`;
}

export interface ReadingSpec {
  name: string;
  kind?: ReadingKind;
  points?: string[];
  via?: string[];
  baseline?: string[];
  run?: string;
  sequence?: number;
  needed?: boolean;
}

export interface PieceSpec {
  name?: string;
  flat?: boolean;
  points?: Record<string, [number, number, number] | null>;
  /** Corners on no side, when nothing is said. */
  sides?: Record<string, Side[]>;
  roles?: Record<string, PointRole>;
  /** A text such as 'A-B' is a needed straight between A and B. */
  readings?: (string | ReadingSpec)[];
  runs?: { name: string; points: string[]; whole?: string; needed?: boolean }[];
  shots?: { slot: string; points: string[]; needed?: boolean }[];
  questions?: { slot: string; needed?: boolean; choices?: string[] }[];
  boxes?: [string, string, string, string][];
  pairs?: [string, string][];
  walk?: string[];
}

interface JobOptions {
  system?: 'imperial' | 'metric';
  fraction?: 8 | 16 | 32;
  who?: Who;
}

export const pointId = (name: string): string => uuid(`point ${name}`);
export const readingId = (name: string): string => uuid(`reading ${name}`);
export const thingId = (label: string): string => uuid(`thing ${label}`);
export const runId = (name: string): string => uuid(`run ${name}`);
export const pieceId = (name = 'piece'): string => uuid(`piece ${name}`);

function declared(spec: PieceSpec): PieceDeclaration {
  const readings = (spec.readings ?? []).map(
    (given): ReadingSpec => (typeof given === 'string' ? { name: given } : given),
  );
  return {
    id: pieceId(spec.name),
    kind: 'table',
    name: spec.name ?? 'piece',
    flat: spec.flat ?? false,
    points: Object.entries(spec.points ?? {}).map(([label, nominal]) => ({
      id: pointId(label),
      label,
      slot: null,
      role: spec.roles?.[label] ?? 'corner',
      sides: spec.sides?.[label] ?? [],
      nominal,
    })),
    readings: readings.map(({ name, kind, points, via, baseline, run, sequence, needed }) => ({
      id: readingId(name),
      slot: name,
      kind: kind ?? 'straight',
      points: (points ?? (kind === 'running' ? [] : name.split('-'))).map(pointId),
      needed: needed ?? true,
      ...(via ? { via: via.map(pointId) } : {}),
      ...(baseline ? { baseline: baseline.map(pointId) } : {}),
      ...(run ? { run: runId(run) } : {}),
      ...(sequence === undefined ? {} : { sequence }),
    })),
    runs: (spec.runs ?? []).map(({ name, points, whole, needed }) => ({
      id: runId(name),
      slot: name,
      points: points.map(pointId),
      whole: whole === undefined ? null : readingId(whole),
      needed: needed ?? true,
    })),
    shots: (spec.shots ?? []).map(({ slot, points, needed }) => ({
      slot,
      points: points.map(pointId),
      needed: needed ?? true,
    })),
    questions: (spec.questions ?? []).map(({ slot, needed, choices }) => ({
      slot,
      choices: choices ?? ['yes', 'no'],
      needed: needed ?? true,
    })),
    boxes: (spec.boxes ?? []).map(([a, b, c, d]) => [pointId(a), pointId(b), pointId(c), pointId(d)]),
    pairs: (spec.pairs ?? []).map(([port, starboard]) => [pointId(port), pointId(starboard)]),
    walk: spec.walk ?? [
      ...readings.map((reading) => reading.name),
      ...(spec.runs ?? []).map((run) => run.name),
      ...(spec.shots ?? []).map((shot) => shot.slot),
      ...(spec.questions ?? []).map((question) => question.slot),
    ],
  };
}

/** Rules that speak of what the engine computed. Tests of the others build fragments, which are rarely fixed and checked. */
const ENGINE_RULES: ReadonlySet<string> = new Set([
  'reading-doubted',
  'point-floats',
  'two-shapes',
  'reading-unchecked',
  'point-loose',
  'slip-unseen',
  'shape-unknown',
]);

/** Writes a job's logbook entry after entry, as one device would. Lengths are given in mm and typed in the job's system. */
export class Job {
  readonly entries: Entry[] = [];
  readonly #options: Required<JobOptions>;

  constructor(options: JobOptions = {}) {
    this.#options = { system: 'metric', fraction: 16, who: installer, ...options };
    const { system, fraction } = this.#options;
    this.add('job.open', { name: 'Test', system, fraction });
  }

  add(kind: string, payload: object, more: Partial<Entry> = {}): string {
    const before = this.entries.at(-1);
    const id = uuid(`entry ${this.entries.length}`);
    this.entries.push({
      id,
      job: uuid('job'),
      at: `2026-05-04T10:00:00.${String(this.entries.length % 1000).padStart(3, '0')}Z`,
      who: this.#options.who,
      device: uuid('device'),
      seen: before ? [before.id] : [],
      kind,
      payload: { ...payload },
      ...more,
    });
    return id;
  }

  piece(spec: PieceSpec): this {
    this.add('piece.add', declared(spec));
    return this;
  }

  /** The text a person would type for a length, to the nearest mark of the job's tape. */
  typed(mm: number): Pick<Payload<'take.add'>, 'text' | 'unit' | 'value'> {
    const metric = this.#options.system === 'metric';
    const text = metric
      ? formatLength(mm, { system: 'metric', unit: 'mm' })
      : formatLength(mm, { system: 'imperial', denominator: this.#options.fraction, feet: 'over-foot' });
    const read = parseLength(text, metric ? 'mm' : 'in');
    if (!read.ok) throw new Error(`cannot read back ${text}`);
    return { text, unit: read.unit, value: read.mm };
  }

  take(reading: string, mm: number, more: Partial<Payload<'take.add'>> = {}): string {
    return this.add('take.add', { reading: readingId(reading), ...this.typed(mm), ...more });
  }

  takes(values: Record<string, number>): this {
    for (const [reading, mm] of Object.entries(values)) this.take(reading, mm);
    return this;
  }

  /** A reading as typed, in a unit that may be the wrong one. */
  type(reading: string, text: string, unit: 'mm' | 'cm' | 'm' | 'in' | 'ft'): this {
    const read = parseLength(text, unit);
    if (!read.ok) throw new Error(`cannot read ${text}`);
    this.add('take.add', { reading: readingId(reading), text, unit: read.unit, value: read.mm });
    return this;
  }

  /** Fasteners at the given places (mm): one reading each. */
  fasteners(run: string, places: readonly (number | null)[], more: Partial<Payload<'fastener.add'>> = {}): this {
    for (const [index, place] of places.entries()) {
      const name = `${run} ${index}`;
      const reading = readingId(name);
      const payload = { fastener: uuid(`fastener ${name}`), run: runId(run), reading, rank: index };
      this.add('fastener.add', { ...payload, type: 'snap', presence: 'there', ...more });
      if (place !== null) this.take(name, place);
    }
    return this;
  }

  runDetails(run: string, details: Record<string, string>): this {
    for (const [field, value] of Object.entries(details)) this.add('run.detail', { run: runId(run), field, value });
    return this;
  }

  /** Facts about the stretch of a run that begins at a point. */
  stretch(run: string, from: string, facts: Record<string, string>): this {
    for (const [field, value] of Object.entries(facts))
      this.add('stretch.set', { run: runId(run), from: pointId(from), field, value });
    return this;
  }

  /** Answers to questions of the piece, by slot. */
  answers(choices: Record<string, string>): this {
    for (const [slot, choice] of Object.entries(choices))
      this.add('question.answer', { piece: pieceId(), slot, choice, text: '' });
    return this;
  }

  /** A thing in the way, with what is said of it; its middle is the point of its label where it is placed. */
  thing(kind: string, label: string, facts: Record<string, string> = {}, placed = false): this {
    const obstruction = thingId(label);
    this.add('obstruction.add', { obstruction, piece: pieceId(), kind, label, point: placed ? pointId(label) : null });
    for (const [field, value] of Object.entries(facts)) this.add('obstruction.set', { obstruction, field, value });
    return this;
  }

  /** Its middle, where somebody pointed, taped from points of the piece. */
  placeThing(label: string, pointed: [number, number, number] | null, tapes: Record<string, number>): this {
    const point = { id: pointId(label), label, slot: null, role: 'obstruction', sides: [], nominal: pointed };
    this.add('point.add', { piece: pieceId(), point });
    for (const [from, mm] of Object.entries(tapes)) {
      const name = `${from}-${label}`;
      const reading = { id: readingId(name), slot: null, kind: 'straight', points: [pointId(from), point.id] };
      this.add('reading.add', { piece: pieceId(), reading: { ...reading, needed: false } });
      this.take(name, mm);
    }
    return this;
  }

  sizeThing(label: string, sizes: Record<string, number>): this {
    for (const [of, mm] of Object.entries(sizes)) {
      const name = `${label} ${of}`;
      const reading = { id: readingId(name), slot: null, kind: 'size', points: [], of, obstruction: thingId(label) };
      this.add('reading.add', { piece: pieceId(), reading: { ...reading, needed: false } });
      this.take(name, mm);
    }
    return this;
  }

  sheet(): Sheet {
    return fold(this.entries);
  }

  /** What the consistency rules say; what the engine says is asked for with `all`. */
  findings(options?: Partial<CheckOptions>): Finding[] {
    return this.all(options).filter(({ rule }) => !ENGINE_RULES.has(rule));
  }

  all(options?: Partial<CheckOptions>): Finding[] {
    return check(this.sheet(), options);
  }

  of(rule: RuleKey, options?: Partial<CheckOptions>): Finding[] {
    return this.findings(options).filter((finding) => finding.rule === rule);
  }
}

type Place = readonly [number, number, number];
export const apart = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

/** Every straight among the points, by name. */
export function distances(points: Readonly<Record<string, Place>>): Record<string, number> {
  const named = Object.entries(points);
  return Object.fromEntries(
    named.flatMap(([a, from], index) =>
      named.slice(index + 1).map(([b, to]) => [`${a}-${b}`, apart(from, to)] as const),
    ),
  );
}
