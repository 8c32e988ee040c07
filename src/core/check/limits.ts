import { type ReadingKind, type ShopRules, TAKE_SIGMAS } from '../job/index.ts';

/** What a shop calls usual. Lengths in millimetres, angles in radians. */
export interface Limits {
  /** Standard deviations a contradiction must exceed before it is called impossible. */
  readonly stopSigmas: number;
  /** Standard deviations of a difference beyond which two takes of one reading are told apart. */
  readonly takeSigmas: number;
  readonly fastenerGap: { readonly min: number; readonly max: number };
  /** How far the first and the last fastener may lie from the ends of their run. */
  readonly fastenerEnd: number;
  /** Share by which spacing and ends may miss their limits before anybody is bothered. */
  readonly slack: number;
  readonly portStarboard: number;
  /**
   * How far a point the cloth depends on may lie from its neighbours and marks, 95 %, and how far the largest slip nobody
   * would notice may move it. line: edges, fasteners, track ends; corner: corners on a cord. Doubled where an owner measured.
   */
  readonly tolerance: { readonly line: number; readonly corner: number };
  readonly unseen: { readonly line: number; readonly corner: number };
  readonly ownerFactor: number;
  /** How many times longer or shorter than the guide's layout a length may be. */
  readonly layoutRatio: number;
  /** What a value of a kind may be on a boat at all. */
  readonly plausible: Partial<Record<ReadingKind, { readonly min: number; readonly max: number }>>;
}

/**
 * Spacing 4 to 8 in, ends within 2 in: common practice, no source. The other figures are common practice too, no source:
 * wide enough that a usual boat never meets them.
 */
export const defaultLimits: Limits = {
  stopSigmas: 4,
  takeSigmas: TAKE_SIGMAS,
  fastenerGap: { min: 100, max: 200 },
  fastenerEnd: 50,
  slack: 0.1,
  portStarboard: 25,
  tolerance: { line: 6, corner: 12 },
  unseen: { line: 12, corner: 25 },
  ownerFactor: 2,
  layoutRatio: 4,
  plausible: {
    straight: { min: 5, max: 25_000 },
    girth: { min: 5, max: 30_000 },
    running: { min: 0, max: 30_000 },
    along: { min: -5_000, max: 25_000 },
    out: { min: -8_000, max: 8_000 },
    height: { min: -4_000, max: 8_000 },
    lean: { min: -Math.PI / 3, max: Math.PI / 3 },
    size: { min: 0, max: 10_000 },
  },
};

/** The limits of the shop a job is for: its own where it set them, the usual ones otherwise. */
export function limitsOf(shop: ShopRules | null): Limits {
  if (!shop) return defaultLimits;
  const { fastenerGap, fastenerEnd, portStarboard, tolerance, ownerFactor } = shop;
  return {
    ...defaultLimits,
    ...(fastenerGap ? { fastenerGap } : {}),
    ...(fastenerEnd === undefined ? {} : { fastenerEnd }),
    ...(portStarboard === undefined ? {} : { portStarboard }),
    ...(tolerance ? { tolerance } : {}),
    ...(ownerFactor === undefined ? {} : { ownerFactor }),
  };
}
