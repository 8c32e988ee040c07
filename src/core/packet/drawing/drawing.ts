import type { Face } from '../../geometry/index.ts';

/** A place on a drawing, mm: to the right, and up. From above the bow is up and starboard to the right. */
export type Flat = readonly [number, number];

/** Layers by plain names that any program takes. */
export const LAYERS = [
  'OUTLINE',
  'EDGE',
  'POINT',
  'MARK',
  'FASTENER',
  'OBSTRUCTION',
  'DIMENSION',
  'ALLOWANCE',
  'TEXT',
] as const;
export type Layer = (typeof LAYERS)[number];

export type Entity =
  | { readonly type: 'line'; readonly layer: Layer; readonly points: readonly Flat[]; readonly closed: boolean }
  | { readonly type: 'circle'; readonly layer: Layer; readonly at: Flat; readonly radius: number }
  | {
      readonly type: 'text';
      readonly layer: Layer;
      readonly at: Flat;
      readonly text: string;
      readonly height: number;
      readonly anchor: 'start' | 'middle';
    };

/** What every paper about a piece says: which job and piece, of which state, and whether it may be cut. */
export interface PieceFacts {
  readonly job: string;
  readonly piece: string;
  readonly demo: string | null;
  readonly isCleared: boolean;
  readonly cleared: string;
  readonly state: string;
  readonly seal: string;
}

/** A piece drawn to scale, whatever it is written as. block: the lines of text that say what it is and of which state. */
export interface Drawing {
  readonly system: 'imperial' | 'metric';
  readonly facts: PieceFacts;
  /** How the line is to be read: what was measured to, and the shop's allowance where there is one. */
  readonly legend: readonly string[];
  /** What keeps it from being a pattern; empty where it is one. */
  readonly warnings: readonly string[];
  /** The readings fix the shape. */
  readonly adjusted: boolean;
  readonly entities: readonly Entity[];
  readonly block: readonly string[];
  /** Every point in space, mm: what a piece that is not flat is cut by instead. */
  readonly space: readonly { readonly label: string; readonly at: readonly [number, number, number] }[];
  readonly flat: boolean;
}

/** What a drawing says in words. */
export interface DrawingWords {
  /** From where the drawing is seen. */
  readonly seen: Readonly<Record<Face, string>>;
  /** On a piece that is not flat. */
  readonly notFlat: string;
  /** Where the shape is drawn from readings that nobody adjusted. */
  readonly sketched: string;
  /** Where readings contradict each other and nobody knows which is wrong. */
  readonly bent: string;
  /** Where readings were left out that do not fit the others. */
  readonly without: (names: string) => string;
  readonly measuredTo: (line: string) => string;
  readonly lineUnknown: string;
  readonly lines: Readonly<Record<'finished-edge' | 'fastener-line' | 'boat-edge', string>>;
  readonly allowance: (width: string) => string;
  readonly unit: (unit: 'in' | 'mm') => string;
  readonly state: (id: string, entries: number, latest: string) => string;
  readonly seal: (seal: string) => string;
  readonly cleared: (who: string, when: string, judged: string) => string;
  readonly nameless: string;
  readonly notCleared: string;
  readonly demo: string;
  readonly scale: (ratio: number, system: 'imperial' | 'metric') => string;
}

/** Control characters and halves of characters. */
const UNPRINTABLE = /[\p{Cc}\p{Surrogate}\u2028\u2029\ufffe\uffff]/gu;
/**
 * Marks of direction would carry a label across the drawing. They take no room and are left out without a trace: those that
 * somebody typed, and those that the screen puts round what was typed.
 */
const TURNING = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu;

/** One line that can be drawn as it stands. */
export const printable = (text: string): string => text.replace(TURNING, '').replace(UNPRINTABLE, ' ');
