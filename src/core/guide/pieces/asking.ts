import type { Side, SizeOf, When } from '../../job/index.ts';
import type { Caution } from '../cautions.ts';
import type { GuideReading, GuideStep } from '../guide.ts';

type Reading = Extract<GuideStep, { on: 'reading' }>;
type Question = Extract<GuideStep, { on: 'question' }>;
interface Common {
  readonly when?: When;
  readonly cautions?: readonly Caution[];
}

/** Holds where the question of the same piece was answered so. */
export const whenIs = (question: string, ...is: string[]): Common => ({ when: { question, is } });

/** Hook on one, taut to the other. */
export const tape = (from: string, to: string, more: Common = {}): Reading => ({
  slot: `${from}-${to}`,
  on: 'reading',
  reading: { kind: 'straight', points: [from, to], needed: true },
  ...more,
});

/** Hook once, read many. */
export const tapes = (from: string, to: readonly string[], more: Common = {}): Reading[] =>
  to.map((point) => tape(from, point, more));

const ofPoint = (slot: string, point: string, more: Partial<GuideReading> & Pick<GuideReading, 'kind'>): Reading => ({
  slot,
  on: 'reading',
  reading: { points: [point], needed: true, ...more },
});

/** Over the deck, or over a string between two points, or over the plane through three. */
export const heightOf = (slot: string, point: string, over: readonly string[] = [], more: Common = {}): Reading => ({
  ...ofPoint(slot, point, { kind: 'height', ...(over.length > 0 ? { baseline: over } : {}) }),
  ...more,
});

/** How far along a string a point lies, and how far square to it. */
export const stationOf = (point: string, string: readonly [string, string], more: Common = {}): Reading => ({
  ...ofPoint(`along-${point}`, point, { kind: 'along', baseline: string }),
  ...more,
});
export const offsetOf = (
  slot: string,
  point: string,
  string: readonly [string, string],
  toward: Side,
  more: Common = {},
): Reading => ({ ...ofPoint(slot, point, { kind: 'out', baseline: string, toward }), ...more });

/** A plain size; needed, it is read twice, for nothing else would show a slip. */
export const sizeOf = (
  slot: string,
  of: SizeOf,
  at: readonly string[],
  more: Common & { needed?: boolean } = {},
): Reading => {
  const { needed = true, ...rest } = more;
  return { slot, on: 'reading', reading: { kind: 'size', points: at, of, needed }, ...rest };
};

/** A choice the cloth depends on. */
export const ask = (
  slot: string,
  choices: readonly string[],
  more: Common & { needed?: boolean; words?: boolean } = {},
): Question => ({ slot, on: 'question', choices, needed: true, ...more });

export const shot = (slot: string, points: readonly string[], more: Common & { needed?: boolean } = {}): GuideStep => ({
  slot,
  on: 'shot',
  points,
  needed: true,
  ...more,
});
