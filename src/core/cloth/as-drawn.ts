import {
  type Entry,
  type EntryKind,
  FACT_KINDS,
  fold,
  type Payload,
  type PieceDeclaration,
  type ReadingDeclaration,
  type Sheet,
  type Side,
} from '../job/index.ts';
import { type Place, sketchPiece } from './sketch-piece.ts';

export interface DrawnOptions extends Pick<Sheet, 'system' | 'fraction'> {
  readonly newId: () => string;
  /** ISO 8601. */
  readonly at: string;
}

/** A job in which a piece was declared and nothing was done: to draw it and to say what it asks. */
export function blankJob(piece: PieceDeclaration, options: DrawnOptions): Entry[] {
  const { system, fraction } = options;
  const writer = new Writer(options);
  writer.write('job.open', { name: '', system, fraction });
  writer.write('piece.add', piece);
  return writer.entries;
}

/** What is answered to questions, by slot. */
export type Answers = ReadonlyMap<string, string>;

/**
 * The same job with every reading that is asked after these answers as it would be on the layout the piece is drawn by.
 * What it is good for is to ask which readings nothing else would check; the numbers are nobody's. A kind that has no number
 * on a drawing stays open.
 */
export function measuredAsDrawn(piece: PieceDeclaration, options: DrawnOptions, answers: Answers = new Map()): Entry[] {
  const writer = new Writer(options, blankJob(piece, options));
  for (const [slot, choice] of answers) writer.write('question.answer', { piece: piece.id, slot, choice, text: '' });
  const sheet = fold(writer.entries);
  const { places } = sketchPiece(sheet, piece.id);
  for (const reading of sheet.readings) {
    const value = FACT_KINDS.has(reading.kind) ? null : drawnValue(reading, piece, places);
    if (value === null || !Number.isFinite(value)) continue;
    writer.write('take.add', { reading: reading.id, text: String(value), unit: 'mm', value });
  }
  return writer.entries;
}

/**
 * Ways in which a piece may come to be asked: what is answered already, for the rest the first choice of each question that
 * readings or edges depend on, and then each of its other choices in turn. Every reading is asked in one of them.
 */
export function waysToAsk(piece: PieceDeclaration, answered: Answers): Answers[] {
  const decisive = new Set([...piece.readings, ...piece.runs].flatMap(({ when }) => when?.question ?? []));
  const open = piece.questions.filter(({ slot }) => decisive.has(slot) && !answered.has(slot));
  const usual = new Map([...answered, ...open.map(({ slot, choices }) => [slot, choices[0] ?? ''] as const)]);
  const others = open.flatMap(({ slot, choices }) =>
    choices.slice(1).map((choice) => new Map([...usual, [slot, choice]])),
  );
  return [usual, ...others];
}

class Writer {
  readonly entries: Entry[];
  readonly #options: DrawnOptions;
  readonly #device: string;
  readonly #job: string;

  constructor(options: DrawnOptions, from: readonly Entry[] = []) {
    this.entries = [...from];
    this.#options = options;
    this.#device = from[0]?.device ?? options.newId();
    this.#job = from[0]?.job ?? options.newId();
  }

  write<K extends EntryKind>(kind: K, payload: Payload<K>): void {
    const { newId, at } = this.#options;
    const before = this.entries.at(-1);
    this.entries.push({
      id: newId(),
      job: this.#job,
      at,
      who: { name: '', role: 'installer' },
      device: this.#device,
      seen: before ? [before.id] : [],
      kind,
      payload: { ...payload },
    });
  }
}

/** A plain size of anything, mm. */
const SOME_SIZE = 100;

function drawnValue(
  reading: ReadingDeclaration,
  piece: PieceDeclaration,
  places: ReadonlyMap<string, Place>,
): number | null {
  const { kind, points, via = [], baseline = [] } = reading;
  const at = (ids: readonly string[]): Place[] =>
    ids.flatMap((id) => {
      const place = places.get(id);
      return place ? [place] : [];
    });
  const [first, ...rest] = at(points);
  if (kind === 'size') return SOME_SIZE;
  if (!first) return null;
  const base = at(baseline);
  switch (kind) {
    case 'straight':
      return lengthOf(at(points));
    case 'girth': {
      const whole = piece.runs.find((run) => run.whole === reading.id)?.points;
      return lengthOf(at(whole ?? [...points.slice(0, 1), ...via, ...points.slice(1)]));
    }
    case 'running':
      return rest.length > 0 ? lengthOf(at(alongRun(reading, piece))) : null;
    case 'height':
      return heightOver(first, base);
    case 'along':
      return base.length === 2 ? alongLine(first, base).station : first[0];
    case 'out':
      return base.length === 2 ? offsetFrom(first, base, reading.toward) : Math.abs(first[1]);
    default:
      return null;
  }
}

function alongRun({ run, points }: ReadingDeclaration, piece: PieceDeclaration): readonly string[] {
  const on = piece.runs.find(({ id }) => id === run)?.points ?? points;
  const [from, to] = [on.indexOf(points[0] ?? ''), on.indexOf(points.at(-1) ?? '')];
  return from >= 0 && to > from ? on.slice(from, to + 1) : points;
}

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Place): number => Math.sqrt(dot(a, a));

const lengthOf = (path: readonly Place[]): number =>
  path.slice(1).reduce((sum, place, index) => sum + size(minus(place, path[index] ?? place)), 0);

function alongLine(place: Place, [from, to]: readonly Place[]): { station: number; distance: number } {
  if (!from || !to) return { station: 0, distance: 0 };
  const [line, out] = [minus(to, from), minus(place, from)];
  const station = dot(out, line) / (size(line) || 1);
  return { station, distance: Math.sqrt(Math.max(0, dot(out, out) - station * station)) };
}

const TOWARD: Partial<Record<Side, Place>> = {
  forward: [1, 0, 0],
  aft: [-1, 0, 0],
  port: [0, 1, 0],
  starboard: [0, -1, 0],
  above: [0, 0, 1],
  below: [0, 0, -1],
};

/** Square to a string; signed where it is said towards which side it counts. */
function offsetFrom(place: Place, base: readonly Place[], toward: Side | undefined): number {
  const { station, distance } = alongLine(place, base);
  const [from, to] = base;
  const way = toward === undefined ? undefined : TOWARD[toward];
  if (!from || !to || !way) return distance;
  const line = minus(to, from);
  const along = station / (size(line) || 1);
  const foot: Place = [from[0] + along * line[0], from[1] + along * line[1], from[2] + along * line[2]];
  return dot(minus(place, foot), way) < 0 ? -distance : distance;
}

/** Over the deck, from a string between two points, or square to the plane through three. */
function heightOver(place: Place, base: readonly Place[]): number {
  const [a, b, c] = base;
  if (!a) return place[2];
  if (!b || !c) return alongLine(place, base).distance;
  const normal = cross(minus(b, a), minus(c, a));
  return Math.abs(dot(minus(place, a), normal)) / (size(normal) || 1);
}
