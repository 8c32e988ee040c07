import * as z from 'zod/mini';

/** Any UUID; the app makes version 7. */
export const Id = z.uuid();
/** SHA-256 in lower-case hex. */
export const Sha256 = z.string().check(z.regex(/^[0-9a-f]{64}$/));
/** One line a person typed. */
export const Line = z.string().check(z.maxLength(400));
/** Several lines a person typed. */
export const Prose = z.string().check(z.maxLength(4000));
/** A permanent key inside a guide: never reused, never shown. */
export const Slot = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,63}$/));
/** Millimetres in the boat's own frame: x forward, y to port, z up. */
export const Position = z.tuple([z.number(), z.number(), z.number()]);

export const PieceKind = z.enum(['tension-shade', 'open-bow', 'table']);
export type PieceKind = z.infer<typeof PieceKind>;

export const PointRole = z.enum(['corner', 'edge', 'mark', 'fastener', 'mount', 'obstruction']);
export type PointRole = z.infer<typeof PointRole>;

/** Where a point lies relative to the marks; what tells a shape from its mirror image. */
export const Side = z.enum(['port', 'starboard', 'centre', 'forward', 'aft', 'above', 'below']);
export type Side = z.infer<typeof Side>;

export const ReadingKind = z.enum([
  'straight',
  'girth',
  'height',
  'along',
  'out',
  'running',
  'lean',
  'centre',
  'mirror',
  'level',
  'plumb',
  'flat',
  'known',
]);
export type ReadingKind = z.infer<typeof ReadingKind>;

/** Kinds that are declared, not taped. */
export const FACT_KINDS: ReadonlySet<ReadingKind> = new Set(['centre', 'mirror', 'level', 'plumb', 'flat', 'known']);

export const TakeUnit = z.enum(['mm', 'cm', 'm', 'in', 'ft', 'deg']);
export type TakeUnit = z.infer<typeof TakeUnit>;

export const FastenerType = z.enum(['snap', 'turn-button', 'eyelet', 'hook', 'track-end', 'zip-end', 'strap-end']);
export type FastenerType = z.infer<typeof FastenerType>;

/** Fasteners that are on the boat are measured; planned ones are set when the piece is fitted. */
export const Presence = z.enum(['there', 'planned']);
export type Presence = z.infer<typeof Presence>;

/** Running dimensions from the run's first point, or gap to gap. */
export const RunManner = z.enum(['cumulative', 'gaps']);
export type RunManner = z.infer<typeof RunManner>;

export const LineMeasured = z.enum(['finished-edge', 'fastener-line', 'boat-edge']);
export type LineMeasured = z.infer<typeof LineMeasured>;

export const Role = z.enum(['installer', 'owner', 'bench']);
export type Role = z.infer<typeof Role>;

export const System = z.enum(['imperial', 'metric']);
export type System = z.infer<typeof System>;

export const NoValue = z.enum(['none-here', 'could-not']);
export type NoValue = z.infer<typeof NoValue>;
