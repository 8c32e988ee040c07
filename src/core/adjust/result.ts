import type { Side, Vector } from './model.ts';

export interface AdjustOptions {
  /** Positions to start from (an earlier adjustment), mm by point id. Points not named are started anew. */
  readonly start?: ReadonlyMap<string, Vector>;
  /**
   * What covariances refer to where readings leave the frame free. `marks`: the widest two (plane) or three (space)
   * marks hold it. `free`: all points do (inner constraints). Relative uncertainties do not depend on it.
   */
  readonly datum?: 'marks' | 'free';
  /** False-alarm rate of the tests on single readings, for the whole job together. Default 0.004. */
  readonly jobAlpha?: number;
  /** Overrides the per-reading rate that follows from jobAlpha (to compare with published tables). */
  readonly readingAlpha?: number;
  /** False-alarm rate of the global test. Default 0.001. */
  readonly globalAlpha?: number;
  /** Chance with which the minimal detectable bias is detected. Default 0.8. */
  readonly power?: number;
  /** Look for other shapes that fit (partial mirror images). Default true; a live update may leave it out. */
  readonly seekShapes?: boolean;
}

export interface PointResult {
  readonly id: string;
  readonly state: 'fixed' | 'floating' | 'known';
  readonly position: Vector;
  /** A priori, mm squared, upper triangle xx xy xz yy yz zz, in the datum asked for; null for a floating point. */
  readonly covariance: readonly [number, number, number, number, number, number] | null;
  /** Semi-axes (mm, 95 %, largest first) and directions of the error ellipse or ellipsoid relative to marks and neighbours. */
  readonly ellipse: { readonly semiAxes: readonly number[]; readonly directions: readonly Vector[] } | null;
  /** Largest semi-axis of that ellipse, mm; what a gate compares with its tolerance. */
  readonly relative95: number | null;
  /** The points it is relative to. */
  readonly relativeTo: readonly string[];
  /** External reliability: the slip just below notice that moves this point furthest, and by how much (mm). */
  readonly worstUnseen: { readonly reading: string; readonly shift: number } | null;
  /** Readings that hang on nothing else here would shift the point unseen by any amount. */
  readonly hangsOnUnchecked: readonly string[];
}

export interface ReadingResult {
  readonly id: string;
  /** What the reading should be by the adjusted coordinates (mm or rad); for a fact, the worst row. */
  readonly adjusted: number;
  /** adjusted - observed. */
  readonly residual: number;
  readonly redundancy: number;
  readonly control: 'checked' | 'weakly checked' | 'unchecked';
  /** Baarda's w = residual / (sigma sqrt(redundancy)), a priori sigma; null when unchecked. */
  readonly standardised: number | null;
  /** Pope's tau, w scaled by the a posteriori factor. */
  readonly tau: number | null;
  /** Estimated error in the reading, -residual / redundancy. */
  readonly estimatedError: number | null;
  /** Smallest error detected with the stated power. */
  readonly minimalDetectableBias: number | null;
  readonly biasToNoise: number | null;
}

export interface OneSidedResult {
  readonly reading: string;
  /** Sum of chords, mm, and its standard deviation together with the reading's. */
  readonly chords: number;
  readonly sigma: number;
  /** Reading minus chords; below 0 by more than the tolerance it cannot be. */
  readonly slack: number;
  readonly impossible: boolean;
}

export interface Solution {
  readonly dimension: 2 | 3;
  readonly points: readonly PointResult[];
  readonly readings: readonly ReadingResult[];
  readonly oneSided: readonly OneSidedResult[];
  readonly rejected: readonly { readonly reading: string; readonly why: string }[];
  readonly freedom: number;
  /** vᵀPv. */
  readonly weightedSquare: number;
  /** s0 = sqrt(vᵀPv / freedom); multiplies a priori standard deviations to a posteriori ones. Null without spares. */
  readonly unitError: number | null;
  readonly globalTest: {
    readonly verdict: 'passes' | 'fails' | 'cannot tell';
    readonly alpha: number;
    readonly critical: number | null;
  };
  readonly readingTest: {
    readonly jobAlpha: number;
    readonly readingAlpha: number;
    readonly power: number;
    readonly critical: number;
    readonly tauCritical: number | null;
  };
  /** A reading over its critical value, the global test failed, a one-sided check impossible, or declared sides contradicted. */
  readonly doubted: boolean;
  /**
   * Whether the shape could be its own mirror image: `fixed` by the readings, settled by declared `sides`, taken from
   * the `nominal` layout only, or `open`.
   */
  readonly handedness: 'fixed' | 'sides' | 'nominal' | 'open';
  /** Declared sides the shape contradicts. */
  readonly wrongSides: readonly { readonly point: string; readonly side: Side }[];
  readonly iterations: number;
}

export interface Shape {
  /** Points that lie elsewhere than in the solution. */
  readonly moved: readonly string[];
  readonly positions: ReadonlyMap<string, Vector>;
  readonly weightedSquare: number;
}

/** A straight reading that would tell shapes or suspicions apart. */
export interface DecidingTape {
  readonly from: string;
  readonly to: string;
  /** What each shape or suspicion predicts, mm, in the order they are listed. */
  readonly predicted: readonly number[];
}

export type Adjustment =
  | { readonly state: 'solved'; readonly solution: Solution }
  | {
      readonly state: 'not-enough-readings';
      /** Points that float, and in how many independent ways. */
      readonly floating: readonly { readonly point: string; readonly ways: number }[];
      /** Independent ways all of them together can move. */
      readonly ways: number;
      /** Everything the readings do fix, judged by itself. */
      readonly solution: Solution;
    }
  | {
      readonly state: 'singular';
      /** Enough readings by count, but from directions that do not fix these points. */
      readonly floating: readonly { readonly point: string; readonly ways: number }[];
      readonly ways: number;
      readonly solution: Solution;
    }
  | {
      readonly state: 'two-shapes';
      readonly solution: Solution;
      /** The solution's own shape first. */
      readonly shapes: readonly Shape[];
      readonly tellsApart: readonly DecidingTape[];
    }
  | { readonly state: 'did-not-converge'; readonly iterations: number; readonly weightedSquare: number };
