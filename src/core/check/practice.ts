import { chiSquareUpperQuantile } from '../adjust/index.ts';
import {
  type Instruments,
  type Practice,
  type PracticePaper,
  type PracticeReading,
  type PracticeSide,
  REFERENCE_SIZES,
  type Who,
} from '../job/index.ts';
import { sigmaOf } from './sigma.ts';

/**
 * A sheet of paper is within 2 mm of its nominal size (ISO 216 for sides of 150 to 600 mm; from memory), taken here as
 * what 19 sheets in 20 stay within.
 */
const PAPER_SIGMA = 1;
/** Of people who measure as usual, one in this many looks worse than usual by chance. */
const BY_CHANCE = 0.01;
/** Three readings of a sheet of paper say little about a boat: never wider than this. */
const MOST = 2;

/** mm. Sizes: ANSI/ASME Y14.1 (8.5 x 11 in) and ISO 216 (210 x 297 mm). */
export function paperLength(paper: PracticePaper, of: PracticeSide): number {
  const { long, short } = REFERENCE_SIZES[paper];
  return of === 'long' ? long : of === 'short' ? short : Math.hypot(long, short);
}

/** The last reading of each side: a slip that was noticed and read again is no part of how a hand spreads. */
function settledReadings(readings: readonly PracticeReading[]): PracticeReading[] {
  return [...new Map(readings.map((reading) => [reading.of, reading])).values()];
}

/**
 * How many times as wide as usual a person's readings are, at the least: the lower bound, at 99 %, of the true spread over
 * the usual one. 1 unless there is a clear excess in at least three sides, since few readings say little; never more than
 * 2. A slip with a name is no spread: more room for it would only hide the next one.
 */
export function practiceFactor(
  { paper, readings }: Pick<Practice, 'paper' | 'readings'>,
  who: Pick<Who, 'role'>,
  instruments: Instruments,
): number {
  const settled = settledReadings(readings).filter((reading) => !isNamedSlip(paper, reading));
  if (settled.length < ENOUGH) return 1;
  const excess = settled.reduce((sum, { of, text, unit, value }) => {
    const length = paperLength(paper, of);
    const usual = sigmaOf({ kind: 'straight' }, { text, unit, value: length, sigma: null }, who, instruments);
    return sum + (value - length) ** 2 / (usual ** 2 + PAPER_SIGMA ** 2);
  }, 0);
  const bound = Math.sqrt(excess / chiSquareUpperQuantile(BY_CHANCE, settled.length));
  return Math.min(MOST, Math.max(1, bound));
}

/** Fewer sides than this say nothing about a hand. */
const ENOUGH = 3;

/** Far off in a way that has a name. Near ones count: a start at 10 mm and a loose hook look alike. */
const isNamedSlip = (paper: PracticePaper, reading: PracticeReading): boolean =>
  Math.abs(reading.value - paperLength(paper, reading.of)) > NEAR &&
  !['hook', 'far'].includes(practiceSlip(paper, reading));
const NEAR = 13;

/** By person: what the latest practice says, 1 for who never did one. */
export function practiceFactors(practice: readonly Practice[], instruments: Instruments): (who: Who) => number {
  const known = new Map(practice.map((done) => [personKey(done.who), practiceFactor(done, done.who, instruments)]));
  return (who) => known.get(personKey(who)) ?? 1;
}

const personKey = ({ name, role }: Who): string => `${role} ${name}`;

/** What the difference to the paper looks like; `close` where there is nothing to say. Common practice, no source. */
export type PracticeSlip = 'close' | 'started-at-one' | 'other-side' | 'unit' | 'hook' | 'far';

/** Within this many mm of the paper a reading is close: an owner's tape and the paper together. */
const CLOSE = 5;
/** A hook that hangs on, is bent or is pushed the wrong way makes no more than this. */
const HOOK = 9;
/** What people leave off the end of the tape: an inch, a centimetre, ten centimetres. */
const STARTS = [25.4, 10, 100] as const;
/** The same digits in another unit. */
const UNITS = [10, 0.1, 25.4, 1 / 25.4, 2.54, 1 / 2.54, 12, 1 / 12, 1000, 0.001] as const;
const SIDES = ['long', 'short', 'diagonal'] as const;

/** Which usual slip a reading of the paper looks like. */
export function practiceSlip(paper: PracticePaper, { of, value }: Pick<PracticeReading, 'of' | 'value'>): PracticeSlip {
  const length = paperLength(paper, of);
  const off = value - length;
  if (Math.abs(off) <= CLOSE) return 'close';
  if (SIDES.some((side) => side !== of && Math.abs(value - paperLength(paper, side)) <= CLOSE)) return 'other-side';
  if (STARTS.some((start) => Math.abs(off - start) <= 3)) return 'started-at-one';
  if (UNITS.some((unit) => Math.abs(value / unit - length) <= CLOSE)) return 'unit';
  return Math.abs(off) <= HOOK ? 'hook' : 'far';
}
