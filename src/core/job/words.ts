import * as z from 'zod/mini';

/** Any UUID; the app makes version 7. */
export const Id = z.uuid();
/** SHA-256 in lower-case hex. */
export const Sha256 = z.string().check(z.regex(/^[0-9a-f]{64}$/));
/** One line a person typed. */
export const Line = z.string().check(z.maxLength(400));
/** Several lines a person typed. */
export const Prose = z.string().check(z.maxLength(4000));
/** A language by its tag (RFC 5646), such as `en` or `es-MX`. */
export const Language = z.string().check(z.regex(/^[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$/));
/** A permanent key inside a guide: never reused, never shown. */
export const Slot = z.string().check(z.regex(/^[A-Za-z0-9][A-Za-z0-9.-]{0,63}$/));
/** Millimetres in the boat's own frame: x forward, y to port, z up. */
export const Position = z.tuple([z.number(), z.number(), z.number()]);

export const PieceKind = z.enum([
  'tension-shade',
  'open-bow',
  'cockpit-cover',
  'drop-curtain',
  'mooring-cover',
  'enclosure-panel',
  'folding-top',
  'box-cover',
  'cushion',
  'free',
  'table',
]);
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
  'size',
]);
export type ReadingKind = z.infer<typeof ReadingKind>;

/** Kinds that are declared, not taped. */
export const FACT_KINDS: ReadonlySet<ReadingKind> = new Set(['centre', 'mirror', 'level', 'plumb', 'flat', 'known']);

/** What a `size` is of: a plain dimension of a thing that fixes no point of the cloth. */
export const SizeOf = z.enum([
  'width',
  'length',
  'height',
  'depth',
  'diameter',
  'radius',
  'thickness',
  'clearance',
  'spacing',
]);
export type SizeOf = z.infer<typeof SizeOf>;

export const TakeUnit = z.enum(['mm', 'cm', 'm', 'in', 'ft', 'deg']);
export type TakeUnit = z.infer<typeof TakeUnit>;

export const FastenerType = z.enum(['snap', 'turn-button', 'eyelet', 'hook', 'track-end', 'zip-end', 'strap-end']);
export type FastenerType = z.infer<typeof FastenerType>;

/** What closes a stretch of an edge. */
export const Closure = z.enum([
  'snap',
  'turn-button',
  'zip',
  'track',
  'boltrope',
  'cord',
  'hook',
  'hook-and-loop',
  'strap',
  'nothing',
]);
export type Closure = z.infer<typeof Closure>;

/** Closed by fasteners set one beside the next; the others run along the edge or stand alone. */
export const SPACED_CLOSURES: ReadonlySet<Closure> = new Set(['snap', 'turn-button', 'cord', 'hook']);

/** Runs along its edge and is closed by a slide or fed in from one end: its ends have places, and it pulls one way. */
export const SLIDING_CLOSURES: ReadonlySet<Closure> = new Set(['zip', 'track', 'boltrope']);

/** Held on the boat by screws or studs; a zip is sewn, hook-and-loop is glued, a cord goes round what is there. */
export const SCREWED_CLOSURES: ReadonlySet<Closure> = new Set([
  'snap',
  'turn-button',
  'hook',
  'track',
  'boltrope',
  'strap',
]);

/** The fastener that stands for a closure, where one does: a slide and a strap by their ends. */
export const FASTENER_OF: Partial<Record<Closure, FastenerType>> = {
  snap: 'snap',
  'turn-button': 'turn-button',
  cord: 'eyelet',
  hook: 'hook',
  zip: 'zip-end',
  track: 'track-end',
  boltrope: 'track-end',
  strap: 'strap-end',
};

/** What a fastener is screwed into. */
export const Into = z.enum(['laminate', 'cored-laminate', 'wood', 'metal', 'tube', 'glass', 'cloth', 'unknown']);
export type Into = z.infer<typeof Into>;

/** Who sets the fasteners that are planned. */
export const Setter = z.enum(['shop', 'owner', 'yard']);
export type Setter = z.infer<typeof Setter>;

/** Which way a zip or a track slide pulls to close. */
export const Pull = z.enum(['forward', 'aft', 'port', 'starboard', 'up', 'down']);
export type Pull = z.infer<typeof Pull>;

export const ObstructionKind = z.enum([
  'cleat',
  'rail',
  'light',
  'rod-holder',
  'antenna',
  'wiper',
  'vent',
  'cord-exit',
  'hatch',
  'other',
]);
export type ObstructionKind = z.infer<typeof ObstructionKind>;

/** What the cloth does about an obstruction: goes round it with a cut-out, ends before it, or lies over it. */
export const Treatment = z.enum(['cut-out', 'left-free', 'covered']);
export type Treatment = z.infer<typeof Treatment>;

/** A thing of known size in a picture; `other` and `tape` say how long. */
export const ReferenceKind = z.enum(['card', 'a4', 'letter', 'tape', 'other']);
export type ReferenceKind = z.infer<typeof ReferenceKind>;

/** Paper whose size is known, and what of it is taped to try hand and tape. */
export const PracticePaper = z.enum(['letter', 'a4']);
export type PracticePaper = z.infer<typeof PracticePaper>;
export const PracticeSide = z.enum(['long', 'short', 'diagonal']);
export type PracticeSide = z.infer<typeof PracticeSide>;

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

/** By whom a shop wants a boat measured. */
export const Measurer = z.enum(['owner', 'installer']);
export type Measurer = z.infer<typeof Measurer>;

export const System = z.enum(['imperial', 'metric']);
export type System = z.infer<typeof System>;

export const NoValue = z.enum(['none-here', 'could-not']);
export type NoValue = z.infer<typeof NoValue>;
