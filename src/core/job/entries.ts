import * as z from 'zod/mini';
import { PieceDeclaration, PointDeclaration, ReadingDeclaration } from './declarations.ts';
import {
  FastenerType,
  Id,
  Line,
  LineMeasured,
  NoValue,
  Presence,
  Prose,
  Role,
  RunManner,
  Sha256,
  Slot,
  System,
  TakeUnit,
} from './words.ts';

const Fraction = z.union([z.literal(8), z.literal(16), z.literal(32)]);

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
  'piece.add': PieceDeclaration,
  'point.add': z.object({ piece: z.nullable(Id), point: PointDeclaration }),
  'reading.add': z.object({ piece: Id, reading: ReadingDeclaration }),
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
  'reading.answer': z.object({ reading: Id, answer: NoValue, reason: Line }),
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
  }),
  /** x, y: fractions of the picture's width and height from its top left. */
  'photo.mark': z.object({
    photo: Id,
    x: z.number().check(z.gte(0), z.lte(1)),
    y: z.number().check(z.gte(0), z.lte(1)),
    point: z.nullable(Id),
    text: Line,
  }),
  'photo.answer': z.object({ piece: Id, slot: Slot, answer: NoValue, reason: Line }),
  /** choice: one of the question's choices, 'none-here' or 'could-not-tell'. */
  'question.answer': z.object({ piece: Id, slot: Slot, choice: Slot, text: Line }),
  /** basis: the state the finding spoke of; when it changes, the acceptance lapses. */
  'finding.accept': z.object({ finding: Line, basis: Line, reason: Line }),
  'ask.again': z.object({
    piece: Id,
    note: Prose,
    items: z
      .array(z.object({ on: z.enum(['reading', 'shot', 'question', 'run']), id: z.string(), note: Line }))
      .check(z.minLength(1)),
  }),
  /** judged: the heads of the state that was judged. basis: what the judgement rested on. */
  'piece.clear': z.object({ piece: Id, judged: z.array(Id), basis: z.enum(['rules', 'engine']) }),
  'note.add': z.object({ on: z.nullable(z.string().check(z.maxLength(120))), text: Prose }),
  /** Takes one entry back; it stays in the logbook. May arrive before what it takes back. */
  undo: z.object({ entry: Id }),
  /** Withdraws the content of entries for good: the one thing that removes bytes, and it wins in every merge. */
  erase: z.object({ entries: z.array(Id).check(z.minLength(1)), reason: Line }),
} as const;

export type EntryKind = keyof typeof payloads;
export type Payload<K extends EntryKind> = z.infer<(typeof payloads)[K]>;

/** Kinds that never change the sheet, so never void a clearance. */
export const SILENT_KINDS: ReadonlySet<string> = new Set<EntryKind>(['piece.clear']);

export const Who = z.object({ name: Line, role: Role });
export type Who = z.infer<typeof Who>;

/**
 * One dated, immutable thing somebody did. at: the device's own clock, for people; order never rests on it.
 * seen: the ids of the latest entries (heads) the device knew. Unknown fields are kept.
 */
export const Entry = z.looseObject({
  id: Id,
  job: Id,
  at: z.iso.datetime({ offset: true }),
  who: Who,
  device: Id,
  seen: z.array(Id),
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
