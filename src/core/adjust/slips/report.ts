import type { DecidingTape } from '../result.ts';
import type { SlipKind } from './kinds.ts';

/** One reading said to be wrong, and how. */
export interface SupposedSlip {
  readonly reading: string;
  readonly kind: SlipKind;
  /** Further kinds that would mean the same value. */
  readonly alsoKinds: readonly SlipKind[];
  /** What should have been read, mm (rad), as far as the kind or the network tells. */
  readonly value: number;
  /** Standard deviation of `value`; 0 where the text itself gives it. */
  readonly valueSigma: number;
  /** `value` written in the manner of the text as typed. */
  readonly wouldRead: string;
  /** The points whose distance (or height) was really read, for `other-pair`, `port-for-starboard`, `readings-swapped`. */
  readonly belongsTo?: readonly string[];
}

/** One explanation of everything that does not fit: one slip, or two. */
export interface Explanation {
  readonly slips: readonly SupposedSlip[];
  /** Share of belief among the explanations considered, 0 ... 1. */
  readonly chance: number;
  /** vᵀPv with the explanation accepted. */
  readonly weightedSquare: number;
}

export interface SlipReport {
  /**
   * `nothing-doubted`; `named`: the first explanation stands well ahead; `tied`: several fit alike, so nobody is accused;
   * `unlocated`: it does not fit, but nothing considered explains it.
   */
  readonly verdict: 'nothing-doubted' | 'named' | 'tied' | 'unlocated';
  /** Ranked, most believed first. */
  readonly explanations: readonly Explanation[];
  /** Readings to take again, most suspect first. */
  readonly readAgain: readonly string[];
  /** Tapes not yet taken on which the leading explanations disagree. */
  readonly tellsApart: readonly DecidingTape[];
  /** Girths shorter than their chords. */
  readonly impossible: readonly string[];
}
