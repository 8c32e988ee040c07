import type { PieceKind } from '../job/index.ts';
import type { Severity } from './finding.ts';

/**
 * A choice that does not go with another, or with what cloth, cord and water do.
 * asked: slot of the question and the choices it must have, all of them; the first is where it is dealt with.
 * unless: a choice that settles it; no answer settles nothing. kinds: the pieces it is true of; all, when nothing is said.
 */
export interface ChoiceConflict {
  readonly key: string;
  readonly severity: Exclude<Severity, 'stop'>;
  readonly asked: Readonly<Record<string, readonly string[]>>;
  readonly unless?: Readonly<Record<string, readonly string[]>>;
  readonly kinds?: readonly PieceKind[];
}

const SHADE = ['tension-shade'] as const;

/** Common practice, no source. Keys are permanent; their sentences are in the texts of the findings. */
export const choiceConflicts: readonly ChoiceConflict[] = [
  { key: 'holders-screwed', severity: 'doubt', kinds: SHADE, asked: { holders: ['screwed'] } },
  { key: 'no-poles', severity: 'doubt', kinds: SHADE, asked: { poles: ['not-yet'] } },
  { key: 'shade-in-rain', severity: 'doubt', kinds: SHADE, asked: { rain: ['stays-up'] }, unless: { cloth: ['mesh'] } },
  { key: 'shade-at-speed', severity: 'doubt', kinds: SHADE, asked: { speed: ['faster'] } },
  { key: 'shade-in-wind', severity: 'doubt', kinds: SHADE, asked: { wind: ['strong'] } },
  { key: 'cleats-covered', severity: 'doubt', asked: { cleats: ['under-cover'], berth: ['water'] } },
  {
    key: 'coated-unvented',
    severity: 'doubt',
    asked: { vents: ['none'], cloth: ['coated'], rain: ['stays-on'] },
  },
  { key: 'mesh-in-rain', severity: 'note', asked: { cloth: ['mesh'], rain: ['stays-on'] } },
  { key: 'towed', severity: 'note', asked: { tow: ['short-way', 'road'], berth: ['trailer'] } },
];
