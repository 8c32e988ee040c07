import type { ReadingKind } from './model.ts';

/** Standard deviation of a reading of length L mm: constant + perMillimetre * L. Angles and facts: constant only. */
export interface SigmaRule {
  readonly constant: number;
  readonly perMillimetre: number;
}

const STEEL_TAPE: SigmaRule = { constant: 1, perMillimetre: 0.3e-3 };
const OFFSET: SigmaRule = { constant: 2, perMillimetre: 0 };

/** Shop defaults (common practice, no source); a shop may change them, a practice measurement may only widen them. */
export const SIGMA_RULES: Readonly<Record<ReadingKind, SigmaRule>> = {
  straight: STEEL_TAPE,
  running: STEEL_TAPE,
  along: STEEL_TAPE,
  girth: { constant: 3, perMillimetre: 1e-3 },
  height: OFFSET,
  out: OFFSET,
  lean: { constant: Math.PI / 180, perMillimetre: 0 },
  centre: { constant: 5, perMillimetre: 0 },
  mirror: { constant: 10, perMillimetre: 0 },
  level: { constant: 5, perMillimetre: 0 },
  plumb: { constant: 5, perMillimetre: 0 },
  flat: { constant: 3, perMillimetre: 0 },
  known: { constant: 1, perMillimetre: 0 },
};

/** Standard deviation in mm (rad for `lean`) of one take; an owner's is twice an installer's. */
export function defaultSigma(kind: ReadingKind, value: number, who: 'installer' | 'owner' = 'installer'): number {
  const rule = SIGMA_RULES[kind];
  return (rule.constant + rule.perMillimetre * Math.abs(value)) * (who === 'owner' ? 2 : 1);
}
