import * as z from 'zod/mini';
import {
  PieceDeclaration,
  PointDeclaration,
  QuestionDeclaration,
  ReadingDeclaration,
  RunDeclaration,
  ShotDeclaration,
} from './declarations.ts';
import { Who } from './entries.ts';
import { Fitting, Practice } from './sheet-beside.ts';
import { ShopRules } from './shop-rules.ts';
import {
  Closure,
  FastenerType,
  Id,
  Into,
  LineMeasured,
  Measurer,
  NoValue,
  ObstructionKind,
  Presence,
  Pull,
  ReferenceKind,
  RunManner,
  Setter,
  Slot,
  System,
  TakeUnit,
  Treatment,
} from './words.ts';

const Signed = { at: z.string(), who: Who };

/** One reading of the tape. value: mm (radians for a lean). A struck take stays, with the reason.
 * outvoted: two others agree with each other and not with this one; it stays too, and does not count while that is so. */
export const Take = z.object({
  id: Id,
  text: z.string(),
  unit: TakeUnit,
  value: z.number(),
  sigma: z.nullable(z.number()),
  struck: z.nullable(z.object({ reason: z.string(), ...Signed })),
  outvoted: z.optional(z.literal(true)),
  ...Signed,
});
export type Take = z.infer<typeof Take>;

/** A closed answer in place of a value. */
export const Answer = z.object({ answer: NoValue, reason: z.string(), ...Signed });
export type Answer = z.infer<typeof Answer>;

/** What a sister boat measured, for comparison only. value: mm (radians for a lean). */
const Expected = z.object({ value: z.number(), text: z.string(), from: z.string() });

/** What the shop goes by although nobody has measured it again. value: mm (radians for a lean). */
const Supposed = z.object({ entry: Id, value: z.number(), text: z.string(), slip: z.string(), ...Signed });

/**
 * A dimension as it stands. value: the mean of the takes that count, or what the shop supposes; null where there is none.
 * One that is asked for under a condition is here when the condition holds, or when it was read all the same; then it is not needed.
 */
export const SheetReading = z.extend(ReadingDeclaration, {
  piece: Id,
  takes: z.array(Take),
  answer: z.nullable(Answer),
  value: z.nullable(z.number()),
  state: z.enum(['open', 'measured', 'none-here', 'could-not']),
  supposed: z.nullable(Supposed),
  expected: z.nullable(Expected),
});
export type SheetReading = z.infer<typeof SheetReading>;

/** A reading that is not asked for any more, with what was read. */
export const SetAside = z.object({ reading: SheetReading, reason: z.string(), ...Signed });
export type SetAside = z.infer<typeof SetAside>;

/** pieces: those it belongs to now, and that ask about it as their questions stand. replacedBy: the mark that stands for this one since it was moved. */
export const SheetPoint = z.extend(PointDeclaration, { pieces: z.array(Id), replacedBy: z.nullable(Id) });
export type SheetPoint = z.infer<typeof SheetPoint>;

/** A fastener on its run; the place is the value of `reading`. */
export const Fastener = z.object({
  id: Id,
  run: Id,
  reading: Id,
  rank: z.number(),
  type: FastenerType,
  presence: Presence,
});
export type Fastener = z.infer<typeof Fastener>;

/** The part of an edge from one of its points to another, and what closes it. count, spacing (mm): where planned. */
export const Stretch = z.object({
  from: Id,
  to: Id,
  closes: z.nullable(Closure),
  presence: z.nullable(Presence),
  into: z.nullable(Into),
  setter: z.nullable(Setter),
  pulls: z.nullable(Pull),
  count: z.nullable(z.int()),
  spacing: z.nullable(z.number()),
});
export type Stretch = z.infer<typeof Stretch>;

/** stations: ids of the readings along the run, in order. stretches: the whole of it, in order. answer: none here, or could not. */
export const SheetRun = z.extend(RunDeclaration, {
  piece: Id,
  manner: RunManner,
  line: z.nullable(LineMeasured),
  type: z.nullable(FastenerType),
  presence: z.nullable(Presence),
  plannedCount: z.nullable(z.int()),
  stations: z.array(Id),
  stretches: z.array(Stretch),
  answer: z.nullable(Answer),
});
export type SheetRun = z.infer<typeof SheetRun>;

export const PhotoMark = z.object({
  id: Id,
  x: z.number(),
  y: z.number(),
  point: z.nullable(Id),
  text: z.string(),
});
export type PhotoMark = z.infer<typeof PhotoMark>;

export const PhotoLine = z.object({
  id: Id,
  path: z.array(z.object({ x: z.number(), y: z.number() })),
  of: z.enum(['edge', 'reference', 'other']),
  run: z.nullable(Id),
  reference: z.nullable(ReferenceKind),
  length: z.nullable(z.number()),
  text: z.string(),
});
export type PhotoLine = z.infer<typeof PhotoLine>;

export const SheetPhoto = z.object({
  id: Id,
  entry: Id,
  sha256: z.string(),
  mime: z.string(),
  size: z.int(),
  width: z.int(),
  height: z.int(),
  piece: Id,
  slot: z.nullable(z.string()),
  placeKept: z.boolean(),
  reading: z.optional(Id),
  run: z.optional(Id),
  marks: z.array(PhotoMark),
  lines: z.array(PhotoLine),
  ...Signed,
});
export type SheetPhoto = z.infer<typeof SheetPhoto>;

export const SheetShot = z.extend(ShotDeclaration, {
  piece: Id,
  photos: z.array(Id),
  answer: z.nullable(Answer),
});
export type SheetShot = z.infer<typeof SheetShot>;

export const SheetQuestion = z.extend(QuestionDeclaration, {
  piece: Id,
  choice: z.nullable(z.string()),
  text: z.string(),
});
export type SheetQuestion = z.infer<typeof SheetQuestion>;

/** A thing in the way of the cloth; its sizes are the readings that name it. */
export const Obstruction = z.object({
  id: Id,
  piece: Id,
  kind: ObstructionKind,
  label: z.string(),
  point: z.nullable(Id),
  treatment: z.nullable(Treatment),
  needed: z.nullable(z.enum(['yes', 'no'])),
  note: z.string(),
  ...Signed,
});
export type Obstruction = z.infer<typeof Obstruction>;

/** walk: the steps in walking order, by slot, or by id for what was added later. */
export const SheetPiece = z.extend(
  z.pick(PieceDeclaration, { id: true, kind: true, name: true, flat: true, boxes: true, pairs: true }),
  { walk: z.array(Slot), cautions: z.array(z.object({ slot: Slot, keys: z.array(Slot) })), ...Signed },
);
export type SheetPiece = z.infer<typeof SheetPiece>;

/** Two people gave different answers to the same thing without knowing of each other. */
export const Dispute = z.object({
  on: z.string(),
  piece: z.nullable(Id),
  subject: z.nullable(z.string()),
  answers: z.array(z.object({ entry: Id, value: z.string(), ...Signed })),
});
export type Dispute = z.infer<typeof Dispute>;

export const Acceptance = z.object({
  finding: z.string(),
  basis: z.string(),
  reason: z.string(),
  entry: Id,
  ...Signed,
});
export type Acceptance = z.infer<typeof Acceptance>;

const AskItem = z.object({
  on: z.enum(['reading', 'shot', 'question', 'run']),
  id: z.string(),
  note: z.string(),
  open: z.boolean(),
});
export const Ask = z.object({ id: Id, piece: Id, note: z.string(), items: z.array(AskItem), ...Signed });
export type Ask = z.infer<typeof Ask>;

/** voidedBy: entries that changed the sheet and that the judgement had not seen. Empty: it stands. */
export const Clearance = z.object({
  entry: Id,
  piece: Id,
  judged: z.array(Id),
  basis: z.enum(['rules', 'engine']),
  voidedBy: z.array(Id),
  ...Signed,
});
export type Clearance = z.infer<typeof Clearance>;

const Note = z.object({ id: Id, on: z.nullable(z.string()), text: z.string(), ...Signed });

/** Carried, but without effect: a kind or content this version does not know, or half a packet. */
export const Carried = z.object({
  entry: Id,
  kind: z.string(),
  why: z.enum(['unknown-kind', 'unreadable', 'loose', 'erased']),
});
export type Carried = z.infer<typeof Carried>;

/** Who asked for the job, and what they said. */
const SheetRequest = z.object({
  shop: z.string(),
  contact: z.string(),
  note: z.string(),
  language: z.string(),
  measurer: Measurer,
  ...Signed,
});

/** The plain job as it stands. */
export const Sheet = z.object({
  job: z.nullable(Id),
  details: z.object({
    name: z.string(),
    customer: z.string(),
    contact: z.string(),
    boat: z.string(),
    place: z.string(),
    note: z.string(),
  }),
  system: System,
  fraction: z.union([z.literal(8), z.literal(16), z.literal(32)]),
  demo: z.boolean(),
  opened: z.nullable(z.string()),
  pieces: z.array(SheetPiece),
  points: z.array(SheetPoint),
  readings: z.array(SheetReading),
  setAside: z.array(SetAside),
  obstructions: z.array(Obstruction),
  shop: z.nullable(ShopRules),
  request: z.nullable(SheetRequest),
  runs: z.array(SheetRun),
  fasteners: z.array(Fastener),
  shots: z.array(SheetShot),
  photos: z.array(SheetPhoto),
  questions: z.array(SheetQuestion),
  acceptances: z.array(Acceptance),
  asks: z.array(Ask),
  clearances: z.array(Clearance),
  notes: z.array(Note),
  practice: z.array(Practice),
  fittings: z.array(Fitting),
  disputes: z.array(Dispute),
  carried: z.array(Carried),
});
export type Sheet = z.infer<typeof Sheet>;
