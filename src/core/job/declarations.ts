import * as z from 'zod/mini';
import { Id, Line, PieceKind, PointRole, Position, ReadingKind, Side, SizeOf, Slot } from './words.ts';

/** Asked for only where this question of the piece was answered with one of these choices. */
export const When = z.object({ question: Slot, is: z.array(Slot).check(z.minLength(1)) });
export type When = z.infer<typeof When>;

/**
 * A place on the boat. `nominal` is where the guide expects it: a start for drawing, never evidence.
 * replaces: the mark this one stands for since that was moved. note: what it is, where no guide says so.
 */
export const PointDeclaration = z.object({
  id: Id,
  label: z.string().check(z.minLength(1), z.maxLength(40)),
  slot: z.nullable(Slot),
  role: PointRole,
  sides: z.array(Side),
  nominal: z.nullable(Position),
  replaces: z.optional(Id),
  note: z.optional(Line),
});
export type PointDeclaration = z.infer<typeof PointDeclaration>;

/**
 * A dimension asked for.
 * points: the two ends (straight, girth), the one point (height, along, out, lean, known), in order.
 * via: the points a girth passes, in order. baseline: the two ends of the string that along and out refer to,
 * or the points that declare the plane of a height. needed: the cloth depends on it.
 * of, obstruction: what a `size` is of, and of which thing in the way where it is of one.
 */
export const ReadingDeclaration = z.object({
  id: Id,
  slot: z.nullable(Slot),
  kind: ReadingKind,
  points: z.array(Id),
  via: z.optional(z.array(Id)),
  baseline: z.optional(z.array(Id)),
  run: z.optional(Id),
  sequence: z.optional(z.int()),
  toward: z.optional(Side),
  needed: z.boolean(),
  note: z.optional(Line),
  of: z.optional(SizeOf),
  obstruction: z.optional(Id),
  when: z.optional(When),
});
export type ReadingDeclaration = z.infer<typeof ReadingDeclaration>;

/**
 * An ordered edge; `whole` is the reading of its full length, the check on its fasteners. note: its name, where no guide
 * has one.
 */
export const RunDeclaration = z.object({
  id: Id,
  slot: z.nullable(Slot),
  points: z.array(Id).check(z.minLength(2)),
  whole: z.nullable(Id),
  needed: z.boolean(),
  note: z.optional(Line),
  when: z.optional(When),
});
export type RunDeclaration = z.infer<typeof RunDeclaration>;

/** A picture asked for and the points that should be marked on it. note: what it shows, where no guide says so. */
export const ShotDeclaration = z.object({
  slot: Slot,
  points: z.array(Id),
  needed: z.boolean(),
  note: z.optional(Line),
  when: z.optional(When),
});
export type ShotDeclaration = z.infer<typeof ShotDeclaration>;

/** A choice asked for, with its closed set of answers; words: a line of the person's own may go along. */
export const QuestionDeclaration = z.object({
  slot: Slot,
  choices: z.array(Slot),
  needed: z.boolean(),
  words: z.optional(z.boolean()),
  when: z.optional(When),
});
export type QuestionDeclaration = z.infer<typeof QuestionDeclaration>;

/**
 * A piece, declared whole when it is added, so that a reader of the job needs no guide to know what was asked.
 * flat: all points lie in one plane. boxes: four points in order round. pairs: port point, starboard point.
 * walk: the slots in the order a person walks; the first of a finding's subjects gives its place.
 * cautions: what is dangerous at which step, by key.
 */
export const PieceDeclaration = z.object({
  id: Id,
  kind: PieceKind,
  name: Line,
  flat: z.boolean(),
  points: z.array(PointDeclaration),
  readings: z.array(ReadingDeclaration),
  runs: z.array(RunDeclaration),
  shots: z.array(ShotDeclaration),
  questions: z.array(QuestionDeclaration),
  boxes: z.array(z.tuple([Id, Id, Id, Id])),
  pairs: z.array(z.tuple([Id, Id])),
  walk: z.array(Slot),
  cautions: z.optional(z.array(z.object({ slot: Slot, keys: z.array(Slot) }))),
});
export type PieceDeclaration = z.infer<typeof PieceDeclaration>;
