import type { ShopRules } from './shop-rules.ts';
import type { ReadingKind, Role } from './words.ts';

/** Standard deviation of one take: `base` millimetres (radians for an angle) and `perMetre` more for each metre. */
export interface Spread {
  readonly base: number;
  readonly perMetre: number;
}

/** How well a shop's people and tapes measure. */
export interface Instruments {
  readonly tape: Spread;
  readonly girth: Spread;
  readonly offset: Spread;
  readonly angle: Spread;
  /** An owner's first try is this many times as wide. */
  readonly ownerFactor: number;
}

/**
 * Half of what 19 readings in 20 stay within; common practice, no source. The maker's own tolerance of a class II tape
 * (0.3 mm + 0.2 mm/m, directive 2014/32/EU annex X) lies well inside.
 */
export const defaultInstruments: Instruments = {
  tape: { base: 1, perMetre: 0.3 },
  girth: { base: 3, perMetre: 1 },
  offset: { base: 2, perMetre: 0 },
  angle: { base: Math.PI / 180, perMetre: 0 },
  ownerFactor: 2,
};

/** How well the people and tapes of the shop a job is for measure. */
export function instrumentsOf(shop: ShopRules | null): Instruments {
  const { tape, girth, offset, ownerFactor } = shop ?? {};
  return {
    ...defaultInstruments,
    ...(tape ? { tape } : {}),
    ...(girth ? { girth } : {}),
    ...(offset ? { offset } : {}),
    ...(ownerFactor === undefined ? {} : { ownerFactor }),
  };
}

const INSTRUMENT_OF: Partial<Record<ReadingKind, 'girth' | 'offset' | 'angle'>> = {
  girth: 'girth',
  out: 'offset',
  height: 'offset',
  lean: 'angle',
};

/** Standard deviation of one take by who took it and with what, in mm (radians for a lean); how it was written apart. */
export function spreadOf(kind: ReadingKind, value: number, role: Role, instruments: Instruments): number {
  const { base, perMetre } = instruments[INSTRUMENT_OF[kind] ?? 'tape'];
  const own = base + (perMetre * Math.abs(value)) / 1000;
  return role === 'owner' ? own * instruments.ownerFactor : own;
}
