import { signal } from '@preact/signals';
import type { SpotName } from '../../../core/cloth/index.ts';

export type MeasureKind = 'distance' | 'edge' | 'angle' | 'area';

/** What is being measured on the drawing. It is worked out anew each time and kept nowhere. */
export interface Measuring {
  kind: MeasureKind;
  /** In the order they were tapped; null where one is still to be chosen. */
  spots: readonly (SpotName | null)[];
  run: string | null;
}

/** Null while nobody measures: then a tap on the drawing selects. */
export const measuring = signal<Measuring | null>(null);

/** How many places a measure goes through. */
const ENDS: Readonly<Record<MeasureKind, number>> = { distance: 2, edge: 0, angle: 3, area: 0 };

export function startMeasuring(kind: MeasureKind): void {
  measuring.value = { kind, spots: Array.from({ length: ENDS[kind] }, () => null), run: null };
}

export function stopMeasuring(): void {
  measuring.value = null;
}

const same = (a: SpotName | null, b: SpotName): boolean => a?.on === b.on && a.id === b.id;

/** A tap takes the next place; once more it lets go of it, and after the last one it begins anew. */
export function tapSpot(spot: SpotName): void {
  const now = measuring.value;
  if (!now || ENDS[now.kind] === 0) return;
  if (now.spots.some((one) => same(one, spot)))
    measuring.value = { ...now, spots: now.spots.map((one) => (same(one, spot) ? null : one)) };
  else if (!now.spots.includes(null))
    measuring.value = { ...now, spots: now.spots.map((_, i) => (i === 0 ? spot : null)) };
  else chooseSpot(now.spots.indexOf(null), spot);
}

export function chooseSpot(at: number, spot: SpotName | null): void {
  const now = measuring.value;
  if (now) measuring.value = { ...now, spots: now.spots.map((one, i) => (i === at ? spot : one)) };
}

export function chooseRun(run: string | null): void {
  const now = measuring.value;
  if (now) measuring.value = { ...now, run };
}
