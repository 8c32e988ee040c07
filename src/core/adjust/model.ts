/**
 * What the engine is given. Lengths in millimetres, angles in radians, frame x forward, y to port, z up.
 */
import type { ReadingKind as JobReadingKind } from '../job/index.ts';

/** Kinds that say where points are; a plain size of a thing does not. */
export type ReadingKind = Exclude<JobReadingKind, 'size'>;

export type Side = 'port' | 'starboard' | 'forward' | 'aft' | 'above' | 'below';
export type Vector = readonly [number, number, number];
export type PointRole = 'mark' | 'corner' | 'edge' | 'mount' | 'fastener' | 'obstruction';

export interface NetworkPoint {
  readonly id: string;
  readonly label: string;
  /** Where the point lies relative to the centroid of the other marks; settles mirror images. */
  readonly sides?: readonly Side[];
  readonly role?: PointRole;
  /** The cloth depends on this point. */
  readonly needed?: boolean;
  /** The guide's nominal layout, mm. A place to start from, never evidence. */
  readonly nominal?: Vector;
  /** Fixed coordinates without error, mm. */
  readonly known?: Vector;
  /** No tape can be held to it any more: it is not proposed. */
  readonly gone?: boolean;
  /** Ids of the points next to this one; its relative uncertainty is judged against them and the marks. */
  readonly neighbours?: readonly string[];
}

/**
 * One reading, already averaged over its takes.
 *
 * | kind     | points                | baseline                                   | value                         |
 * |----------|-----------------------|--------------------------------------------|-------------------------------|
 * | straight | two ends              |                                            | taut distance                 |
 * | girth    | ordered, two or more  |                                            | length on the surface         |
 * | height   | one                   | none: the frame's plane z = 0; two: a      | signed for a plane (up is     |
 * |          |                       | string; three: the plane through them      | positive), length for a string|
 * | along    | one                   | two (from, towards); none: frame x         | station                       |
 * | out      | one                   | two (from, towards); none: frame y         | offset, sign by `direction`   |
 * | running  | start, ..., the point | the run's two ends, if any                 | cumulative from start         |
 * | lean     | foot, tip             | three: plane; none: frame z                | angle from the normal         |
 * | centre   | one or more           | two: the centreline in plan; none: y = 0   | 0                             |
 * | mirror   | a pair                | two: the centreline in plan; none: y = 0   | 0                             |
 * | level    | two or more           |                                            | 0                             |
 * | plumb    | two or more           |                                            | 0                             |
 * | flat     | four or more          |                                            | 0                             |
 * | known    | one                   |                                            | coordinate on `axis`          |
 */
export interface NetworkReading {
  readonly id: string;
  readonly kind: ReadingKind;
  readonly points: readonly string[];
  /** mm or rad; 0 for declared facts. */
  readonly value: number;
  /** Standard deviation (or a fact's tolerance), same unit as value, above 0. */
  readonly sigma: number;
  readonly baseline?: readonly string[];
  /** The text as typed, and the unit a bare number in it means: what slips are named from. */
  readonly text?: string;
  readonly unit?: 'mm' | 'cm' | 'm' | 'in' | 'ft';
  readonly run?: string;
  readonly sequence?: number;
  /**
   * `out`: which side of the baseline; `left` and `right` as seen walking it, `port` = left of a baseline that runs
   * forward, `aft` = left of one that runs to port, unless coordinates say how it runs. Absent: an unsigned distance.
   * `lean`: the way it leans in the frame. Absent: any way.
   */
  readonly direction?: 'left' | 'right' | Side;
  /** Girth and running: the declared shape of the line. Absent: a girth is only a one-sided check. */
  readonly shape?: 'straight' | 'arc' | 'unknown';
  readonly axis?: 'x' | 'y' | 'z';
  readonly takes?: number;
  /** Somebody read it a second time, without being told what would fit, and the takes agree. */
  readonly confirmed?: boolean;
}

export interface Network {
  /** 2: every point lies in one plane, z = 0. */
  readonly dimension: 2 | 3;
  readonly points: readonly NetworkPoint[];
  readonly readings: readonly NetworkReading[];
}
