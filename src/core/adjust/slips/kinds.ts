/**
 * The slips people make (common practice, no source; see the trade's list), with how common each is thought to be.
 * The shares are rough guesses, used only to rank explanations that fit alike.
 */
export const SLIP_SHARES = {
  'whole-foot': 10,
  'ten-inches': 4,
  'hundred-millimetres': 10,
  'whole-metre': 3,
  'one-inch': 4,
  'burnt-inch': 8,
  'burnt-hundred': 6,
  'digits-swapped': 10,
  'six-for-nine': 6,
  'digit-misread': 8,
  'digit-lost': 3,
  'decimal-shifted': 3,
  'fraction-wrong-way': 6,
  'fraction-misread': 4,
  'sixteenths-for-eighths': 3,
  'tape-case': 6,
  'feet-inches-as-inches': 6,
  'decimal-feet': 4,
  'unit-mistaken': 5,
  'other-pair': 14,
  'port-for-starboard': 6,
  'readings-swapped': 8,
  /** Slack, round something, to the edge and not the centre, or anything nobody has thought of. */
  unexplained: 14,
} as const;

export type SlipKind = keyof typeof SLIP_SHARES;

const TOTAL = Object.values(SLIP_SHARES).reduce((a, b) => a + b, 0);

/** Log of the chance that a slip is of this kind. */
export const logShare = (kind: SlipKind): number => Math.log(SLIP_SHARES[kind] / TOTAL);
