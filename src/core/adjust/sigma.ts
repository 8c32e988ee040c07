import { defaultInstruments, type Spread } from '../job/index.ts';
import type { ReadingKind } from './model.ts';

/** Standard deviation of a reading of length L mm: constant + perMillimetre * L. Angles and facts: constant only. */
interface SigmaRule {
  readonly constant: number;
  readonly perMillimetre: number;
}

/** The figures of the takes themselves: held once, so that a tape proposed and a tape taken are judged alike. */
const ruleOf = ({ base, perMetre }: Spread): SigmaRule => ({ constant: base, perMillimetre: perMetre / 1000 });
const { tape, girth, offset, angle } = defaultInstruments;
const STEEL_TAPE = ruleOf(tape);
const OFFSET = ruleOf(offset);

/** Shop defaults (common practice, no source); a shop may change them, a practice measurement may only widen them. */
const SIGMA_RULES: Readonly<Record<ReadingKind, SigmaRule>> = {
  straight: STEEL_TAPE,
  running: STEEL_TAPE,
  along: STEEL_TAPE,
  girth: ruleOf(girth),
  height: OFFSET,
  out: OFFSET,
  lean: ruleOf(angle),
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
