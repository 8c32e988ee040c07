import * as z from 'zod/mini';
import {
  PieceDeclaration,
  PointDeclaration,
  ReadingDeclaration,
  RunDeclaration,
  ShotDeclaration,
} from './declarations.ts';
import { ShopRules } from './shop-rules.ts';
import {
  Closure,
  FastenerType,
  Id,
  Into,
  Language,
  Line,
  LineMeasured,
  Measurer,
  NoValue,
  ObstructionKind,
  Position,
  PracticePaper,
  PracticeSide,
  Presence,
  Prose,
  Pull,
  ReferenceKind,
  Role,
  RunManner,
  Setter,
  Sha256,
  Slot,
  System,
  TakeUnit,
  Treatment,
} from './words.ts';

/** One reading of the paper. text: as typed. value: mm. */
export const PracticeReading = z.object({ of: PracticeSide, text: Line, unit: TakeUnit, value: z.number() });
export type PracticeReading = z.infer<typeof PracticeReading>;

const Fraction = z.union([z.literal(8), z.literal(16), z.literal(32)]);

/** Ids in a row: a finding about a long edge rests on many takes. */
const Subjects = z.string().check(z.maxLength(40_000));

/**
 * Every kind of thing somebody can do, and what it carries. Kinds are permanent: a meaning never changes, a new
 * meaning is a new kind. Unknown kinds are carried untouched.
 */
export const payloads = {
  'job.open': z.object({ name: Line, system: System, fraction: Fraction, demo: z.optional(z.boolean()) }),
  /** One detail of the job; the later one counts, concurrent ones are a doubt. */
  'job.detail': z.object({
    field: z.enum(['name', 'customer', 'contact', 'boat', 'place', 'note']),
    value: Prose,
  }),
  /** Who asks for the job and how to reach them; the latest counts. language: what the shop thinks the measurer reads. */
  'job.request': z.object({ shop: Line, contact: Line, note: Prose, language: Language, measurer: Measurer }),
  'piece.add': PieceDeclaration,
  /** The shop's own limits and habits, as they were when the job was begun or changed since. */
  'job.shop': ShopRules,
  /** A point that is here already joins the piece: pieces on one boat share marks. */
  'point.add': z.object({ piece: z.nullable(Id), point: PointDeclaration }),
  /** The point leaves the piece, and what was read at it is set aside; it stays in the logbook. */
  'point.drop': z.object({ piece: Id, point: Id, reason: Line }),
  /** Without effect once somebody who knew had measured the point or marked it on a picture. */
  'point.label': z.object({ point: Id, label: z.string().check(z.minLength(1), z.maxLength(40)) }),
  /** after: the step of the walk it follows, by slot or id; at the end of the walk where it names none. */
  'reading.add': z.object({ piece: Id, reading: ReadingDeclaration, after: z.optional(Slot) }),
  /** Not asked for any more; its takes are kept aside. */
  'reading.drop': z.object({ reading: Id, reason: Line }),
  /** What a sister boat measured: later takes are compared with it, and it is never a take. value: mm or radians. */
  'reading.expect': z.object({ reading: Id, value: z.number(), text: Line, from: Line }),
  /**
   * The tape was read once. text: as typed. value: millimetres, or radians for a lean.
   * sigma: the standard deviation where the person states one, in the value's unit.
   */
  'take.add': z.object({
    reading: Id,
    text: Line,
    unit: TakeUnit,
    value: z.number(),
    sigma: z.optional(z.number().check(z.gt(0))),
  }),
  'take.strike': z.object({ take: Id, reason: Line }),
  /**
   * The shop goes by another value than was read, since a slip was named. basis: the takes that counted then (sorted ids);
   * once another counts it lapses. The takes stay. slip: what the slip is thought to be. value: mm or radians.
   */
  'reading.suppose': z.object({ reading: Id, value: z.number(), text: Line, slip: Slot, basis: Subjects }),
  'reading.answer': z.object({ reading: Id, answer: NoValue, reason: Line }),
  'run.add': z.object({ piece: Id, run: RunDeclaration, after: z.optional(Slot) }),
  /** The points of an edge in another order, or with one more or less. whole: the reading of its full length from now on. */
  'run.points': z.object({ run: Id, points: z.array(Id).check(z.minLength(2)), whole: z.optional(Id) }),
  /**
   * One fact about the stretch of an edge that begins at a point and goes on to where the next one begins.
   * begins: whether a stretch begins here at all (the first of a run always does). spacing: mm between planned fasteners.
   */
  'stretch.set': z.union([
    z.object({ run: Id, from: Id, field: z.literal('begins'), value: z.enum(['yes', 'no']) }),
    z.object({ run: Id, from: Id, field: z.literal('closes'), value: Closure }),
    z.object({ run: Id, from: Id, field: z.literal('presence'), value: Presence }),
    z.object({ run: Id, from: Id, field: z.literal('into'), value: Into }),
    z.object({ run: Id, from: Id, field: z.literal('setter'), value: Setter }),
    z.object({ run: Id, from: Id, field: z.literal('pulls'), value: Pull }),
    z.object({ run: Id, from: Id, field: z.literal('count'), value: z.string().check(z.regex(/^[0-9]{1,3}$/)) }),
    z.object({
      run: Id,
      from: Id,
      field: z.literal('spacing'),
      value: z.string().check(z.regex(/^[0-9]{1,5}(\.[0-9]{1,3})?$/)),
    }),
  ]),
  /** rank orders the fasteners along the run; its place is the takes of `reading`. */
  'fastener.add': z.object({
    fastener: Id,
    run: Id,
    reading: Id,
    rank: z.number(),
    type: FastenerType,
    presence: Presence,
  }),
  'run.detail': z.union([
    z.object({ run: Id, field: z.literal('manner'), value: RunManner }),
    z.object({ run: Id, field: z.literal('line'), value: LineMeasured }),
    z.object({ run: Id, field: z.literal('type'), value: FastenerType }),
    z.object({ run: Id, field: z.literal('presence'), value: Presence }),
    z.object({ run: Id, field: z.literal('planned-count'), value: z.string().check(z.regex(/^[0-9]{1,3}$/)) }),
  ]),
  /** The whole edge: not on this boat, or there and not to be measured; until somebody who knew tells more of it. */
  'run.answer': z.object({ run: Id, answer: NoValue, reason: Line }),
  /**
   * slot: the picture that was asked for. Without one it was taken at a reading or an edge (reading, run: which), or freely;
   * readers that do not know these two show it as a picture besides.
   */
  'photo.add': z.object({
    photo: Id,
    sha256: Sha256,
    mime: z.string().check(z.regex(/^image\/[a-z0-9.+-]{1,40}$/)),
    size: z.int().check(z.gt(0)),
    width: z.int().check(z.gt(0)),
    height: z.int().check(z.gt(0)),
    piece: Id,
    slot: z.nullable(Slot),
    placeKept: z.boolean(),
    reading: z.optional(Id),
    run: z.optional(Id),
  }),
  /** x, y: fractions of the picture's width and height from its top left. */
  'photo.mark': z.object({
    photo: Id,
    x: z.number().check(z.gte(0), z.lte(1)),
    y: z.number().check(z.gte(0), z.lte(1)),
    point: z.nullable(Id),
    text: Line,
  }),
  /**
   * A line drawn on a picture: an edge of the cloth (run: which), or something of known size, from one end of its longer
   * side to the other. path: fractions of width and height from the top left.
   * length: mm, where the reference is a tape or another thing.
   */
  'photo.line': z.object({
    photo: Id,
    path: z
      .array(
        z.object({
          x: z.number().check(z.gte(0), z.lte(1)),
          y: z.number().check(z.gte(0), z.lte(1)),
        }),
      )
      .check(z.minLength(2), z.maxLength(200)),
    of: z.enum(['edge', 'reference', 'other']),
    run: z.nullable(Id),
    reference: z.nullable(ReferenceKind),
    length: z.nullable(z.number().check(z.gt(0))),
    text: Line,
  }),
  'shot.add': z.object({ piece: Id, shot: ShotDeclaration, after: z.optional(Slot) }),
  'photo.answer': z.object({ piece: Id, slot: Slot, answer: NoValue, reason: Line }),
  /** choice: one of the question's choices, 'none-here' or 'could-not-tell'. */
  'question.answer': z.object({ piece: Id, slot: Slot, choice: Slot, text: Line }),
  /** A thing in the way of the cloth. point: its middle, measured like any other; its sizes are readings of kind `size`. */
  'obstruction.add': z.object({
    obstruction: Id,
    piece: Id,
    kind: ObstructionKind,
    label: z.string().check(z.minLength(1), z.maxLength(40)),
    point: z.nullable(Id),
  }),
  /** needed: a cleat that holds the boat, a light that must be seen. */
  'obstruction.set': z.union([
    z.object({ obstruction: Id, field: z.literal('treatment'), value: Treatment }),
    z.object({ obstruction: Id, field: z.literal('needed'), value: z.enum(['yes', 'no']) }),
    z.object({ obstruction: Id, field: z.literal('note'), value: Line }),
    /** Where somebody pointed: a start for drawing and for telling two places apart, never evidence. */
    z.object({ obstruction: Id, field: z.literal('near'), value: Position }),
  ]),
  'obstruction.drop': z.object({ obstruction: Id, reason: Line }),
  /** basis: the state the finding spoke of; when it changes, the acceptance lapses. */
  'finding.accept': z.object({ finding: Subjects, basis: Subjects, reason: Line }),
  'ask.again': z.object({
    piece: Id,
    note: Prose,
    items: z
      .array(z.object({ on: z.enum(['reading', 'shot', 'question', 'run']), id: z.string(), note: Line }))
      .check(z.minLength(1)),
  }),
  /** judged: the heads of the state that was judged. basis: what the judgement rested on. */
  'piece.clear': z.object({ piece: Id, judged: z.array(Id), basis: z.enum(['rules', 'engine']) }),
  /**
   * A sheet of paper was taped to try hand and tape: every reading, in the order they were taken. It may only widen how
   * far this person's takes are trusted.
   */
  'practice.done': z.object({
    paper: PracticePaper,
    readings: z.array(PracticeReading).check(z.minLength(1), z.maxLength(40)),
  }),
  /**
   * What was found when the finished piece hung on the boat: never part of what it was cut from. where: what it concerns;
   * null: the piece. change: mm by which something was or should be made longer (shorter: negative); text: as typed.
   * from: the sister boat it was learned on, where it was carried over from there.
   */
  'fitting.note': z.object({
    piece: Id,
    where: z.nullable(z.object({ on: z.enum(['point', 'run', 'reading']), id: Id })),
    change: z.nullable(z.number()),
    text: Line,
    why: Prose,
    from: z.optional(Line),
  }),
  'note.add': z.object({ on: z.nullable(z.string().check(z.maxLength(120))), text: Prose }),
  /** Takes one entry back; it stays in the logbook. May arrive before what it takes back. */
  undo: z.object({ entry: Id }),
  /** Withdraws the content of entries for good: the one thing that removes bytes, and it wins in every merge. */
  erase: z.object({ entries: z.array(Id).check(z.minLength(1)), reason: Line }),
} as const;

export type EntryKind = keyof typeof payloads;
export type Payload<K extends EntryKind> = z.infer<(typeof payloads)[K]>;

/** Kinds that never change what a piece is cut from, so never void a clearance. */
export const SILENT_KINDS: ReadonlySet<string> = new Set<EntryKind>(['piece.clear', 'fitting.note']);

export const Who = z.object({ name: Line, role: Role });
export type Who = z.infer<typeof Who>;

/**
 * One dated, immutable thing somebody did. at: the device's own clock, for people; order never rests on it.
 * seen: the ids of the latest entries (heads) the device knew. batch: the first of the entries made by one act, where it made
 * several; they are taken back together. Unknown fields are kept.
 */
export const Entry = z.looseObject({
  id: Id,
  job: Id,
  at: z.iso.datetime({ offset: true }),
  who: Who,
  device: Id,
  seen: z.array(Id),
  batch: z.optional(Id),
  kind: z.string().check(z.minLength(1), z.maxLength(60)),
  payload: z.record(z.string(), z.unknown()),
});
export type Entry = z.infer<typeof Entry>;

export function isKnownKind(kind: string): kind is EntryKind {
  return Object.hasOwn(payloads, kind);
}

/** What an erased entry's payload looks like: the content is gone, the fact that something was there is not. */
export const ERASED: Readonly<Record<string, unknown>> = Object.freeze({ erased: true });
export const isErased = (entry: Entry): boolean =>
  entry.payload.erased === true && Object.keys(entry.payload).length === 1;
