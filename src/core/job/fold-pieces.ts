import type { When } from './declarations.ts';
import type { Payload } from './entries.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { SheetPiece, SheetPoint, SheetQuestion } from './sheet.ts';

/** What the pieces of a job amount to: declared whole, then changed by what was added and dropped. */
export interface Pieces {
  readonly ids: ReadonlySet<string>;
  readonly drops: Drops;
  readonly questions: readonly SheetQuestion[];
  /** Whether what is asked for under this condition is asked for as the questions of the piece stand. */
  holds(when: When | undefined, piece: string): boolean;
}

/** Points that left a piece, and the entry that says so; and those that nobody asks about as the questions stand. */
export class Drops {
  readonly #byPiece = new Map<string, Map<string, ReturnType<typeof signed> & { reason: string }>>();
  readonly #unasked: Unasked;

  constructor(gathered: Gathered, unasked: Unasked) {
    this.#unasked = unasked;
    const added = gathered.of('point.add');
    for (const { entry, payload } of gathered.of('point.drop')) {
      const back = added.some(
        (act) =>
          act.payload.point.id === payload.point &&
          act.payload.piece === payload.piece &&
          gathered.causality.saw(act.entry.id, entry.id),
      );
      if (back) continue;
      const points = this.#byPiece.get(payload.piece) ?? new Map();
      if (!points.has(payload.point)) points.set(payload.point, { reason: payload.reason, ...signed(entry) });
      this.#byPiece.set(payload.piece, points);
    }
  }

  of(piece: string, point: string): (ReturnType<typeof signed> & { reason: string }) | undefined {
    return this.#byPiece.get(piece)?.get(point);
  }

  /** Whether the point is in the piece as it stands. */
  keeps(piece: string, point: string): boolean {
    return this.of(piece, point) === undefined && !this.#unasked.get(piece)?.has(point);
  }

  /** Those of the points that are still in the piece. */
  kept<P extends readonly string[]>(piece: string, points: P): P[number][] {
    return points.filter((point) => this.keeps(piece, point));
  }
}

/** By piece: points with readings of their own, none of which is asked for or was read. */
type Unasked = ReadonlyMap<string, ReadonlySet<string>>;

function unaskedPoints(gathered: Gathered, holds: Pieces['holds']): Unasked {
  const dropped = new Set(gathered.of('reading.drop').map(({ payload }) => payload.reading));
  const read = new Set(gathered.of('take.add').map(({ payload }) => payload.reading));
  const declared = [
    ...gathered.of('piece.add').flatMap(({ payload: { id, readings } }) => readings.map((one) => ({ one, piece: id }))),
    ...gathered.of('reading.add').map(({ payload }) => ({ one: payload.reading, piece: payload.piece })),
  ].filter(({ one }) => !dropped.has(one.id));
  const [named, asked] = [new Map<string, Set<string>>(), new Map<string, Set<string>>()];
  for (const { one, piece } of declared) {
    const wanted = holds(one.when, piece) || read.has(one.id);
    for (const into of wanted ? [named, asked] : [named]) {
      const points = into.get(piece) ?? new Set();
      for (const point of [...one.points, ...(one.baseline ?? [])]) points.add(point);
      into.set(piece, points);
    }
  }
  return new Map(
    [...named].map(([piece, points]) => [piece, new Set([...points].filter((point) => !asked.get(piece)?.has(point)))]),
  );
}

export function gatherPieces(gathered: Gathered, registers: Registers): Pieces {
  const ids = new Set(gathered.of('piece.add').map(({ payload }) => payload.id));
  for (const { entry, payload } of gathered.of('point.drop')) if (!ids.has(payload.piece)) loose(gathered, entry);
  const questions = foldQuestions(gathered, registers);
  const choices = new Map(questions.map(({ piece, slot, choice }) => [`${piece} ${slot}`, choice]));
  const holds: Pieces['holds'] = (when, piece) => {
    if (!when) return true;
    const choice = choices.get(`${piece} ${when.question}`);
    return typeof choice === 'string' && when.is.includes(choice);
  };
  const asked = questions.flatMap((question): SheetQuestion[] => {
    if (holds(question.when, question.piece)) return [question];
    return question.choice === null ? [] : [{ ...question, needed: false }];
  });
  return { ids, drops: new Drops(gathered, unaskedPoints(gathered, holds)), questions: asked, holds };
}

/** The pieces with their walks: what was added later stands after the step it names, or at the end. */
export function foldPieces(gathered: Gathered, drops: Drops): SheetPiece[] {
  const pieces = new Map<string, SheetPiece>();
  for (const { entry, payload } of gathered.of('piece.add')) {
    if (pieces.has(payload.id)) continue;
    const { id, kind, name, flat, boxes, pairs, walk, cautions = [] } = payload;
    const whole = (points: readonly string[]): boolean => drops.kept(id, points).length === points.length;
    const left = { boxes: boxes.filter(whole), pairs: pairs.filter(whole) };
    pieces.set(id, { id, kind, name, flat, ...left, walk: [...walk], cautions, ...signed(entry) });
  }
  const later = [
    ...gathered.of('reading.add').map(({ entry, payload }) => ({ entry, payload, step: payload.reading })),
    ...gathered.of('run.add').map(({ entry, payload }) => ({ entry, payload, step: payload.run })),
    ...gathered.of('shot.add').map(({ entry, payload }) => ({ entry, payload, step: { ...payload.shot, id: null } })),
  ];
  const rank = new Map(gathered.ordered.map((entry, index) => [entry.id, index]));
  later.sort((a, b) => (rank.get(a.entry.id) ?? 0) - (rank.get(b.entry.id) ?? 0));
  const last = new Map<string, string>();
  for (const { payload, step } of later) {
    const walk = pieces.get(payload.piece)?.walk;
    const key = step.slot ?? step.id;
    // Stations along an edge are taken at the edge's own step.
    if (!walk || key === null || walk.includes(key) || ('sequence' in step && step.run !== undefined)) continue;
    const { after } = payload;
    const place = after === undefined ? -1 : walk.indexOf(last.get(`${payload.piece} ${after}`) ?? after);
    if (place < 0) walk.push(key);
    else walk.splice(place + 1, 0, key);
    // Several that follow the same step keep the order in which they were added.
    if (after !== undefined) last.set(`${payload.piece} ${after}`, key);
  }
  return [...pieces.values()];
}

export function foldPoints(gathered: Gathered, { ids, drops }: Pieces): SheetPoint[] {
  const points = new Map<string, SheetPoint>();
  const add = (point: Payload<'point.add'>['point'], piece: string | null): void => {
    const joins = piece !== null && drops.keeps(piece, point.id) ? [piece] : [];
    const known = points.get(point.id);
    if (!known) points.set(point.id, { ...point, pieces: joins, replacedBy: null });
    else known.pieces.push(...joins.filter((id) => !known.pieces.includes(id)));
  };
  for (const { payload } of gathered.of('piece.add')) for (const point of payload.points) add(point, payload.id);
  for (const { entry, payload } of gathered.of('point.add')) {
    if (payload.piece && !ids.has(payload.piece)) loose(gathered, entry);
    else add(payload.point, payload.piece);
  }
  for (const point of points.values()) {
    const old = point.replaces === undefined ? undefined : points.get(point.replaces);
    if (old && old.id !== point.id) old.replacedBy ??= point.id;
  }
  relabel(gathered, points);
  return [...points.values()];
}

/** A label is frozen once the point was measured or marked on a picture by somebody the new label had heard of. */
function relabel(gathered: Gathered, points: ReadonlyMap<string, SheetPoint>): void {
  const acts = gathered.of('point.label');
  if (acts.length === 0) return;
  const uses = usesOfPoints(gathered);
  for (const { entry, payload } of acts) {
    const point = points.get(payload.point);
    if (!point) loose(gathered, entry);
    else if (!(uses.get(payload.point) ?? []).some((use) => gathered.causality.saw(entry.id, use)))
      point.label = payload.label;
  }
}

/** Entries that measured a point or marked it on a picture. */
function usesOfPoints(gathered: Gathered): ReadonlyMap<string, string[]> {
  const uses = new Map<string, string[]>();
  const add = (point: string, entry: string): void => {
    uses.set(point, [...(uses.get(point) ?? []), entry]);
  };
  const readings = new Map(
    [
      ...gathered.of('piece.add').flatMap(({ payload }) => payload.readings),
      ...gathered.of('reading.add').map(({ payload }) => payload.reading),
    ].map((reading) => [reading.id, [...reading.points, ...(reading.baseline ?? [])]]),
  );
  for (const { entry, payload } of gathered.of('take.add'))
    for (const point of readings.get(payload.reading) ?? []) add(point, entry.id);
  for (const { entry, payload } of gathered.of('photo.mark')) if (payload.point) add(payload.point, entry.id);
  return uses;
}

function foldQuestions(gathered: Gathered, registers: Registers): SheetQuestion[] {
  const texts = new Map<string, string>();
  for (const { entry, payload } of gathered.of('question.answer')) {
    registers.set(`question:${payload.piece}:${payload.slot}`, entry, payload.choice);
    texts.set(entry.id, payload.text);
  }
  return gathered.of('piece.add').flatMap(({ payload }) =>
    payload.questions.map((question) => {
      const about = { on: 'question', piece: payload.id, subject: question.slot };
      const answer = registers.get(`question:${payload.id}:${question.slot}`, about);
      return {
        ...question,
        piece: payload.id,
        choice: answer?.value ?? null,
        text: answer ? (texts.get(answer.entry.id) ?? '') : '',
      };
    }),
  );
}
