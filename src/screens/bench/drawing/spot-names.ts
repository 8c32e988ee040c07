import type { SheetPoint } from '../../../core/job/index.ts';
import type { Flat } from '../../parts/drawing/project.ts';
import { CHARACTER } from './labels.ts';

/** A point on the drawing, px. */
export interface Spot {
  point: SheetPoint;
  at: Flat;
  /** Its name, with those of the points it hides; empty where another stands before it. */
  label: string;
  name: { x: number; y: number; anchor: 'start' | 'middle' | 'end' };
  /** Height over the datum, as it is written, and where. */
  height: string | null;
  heightX: number;
  heightY: number;
  heightReading: string | null;
  measured: boolean;
  /** The readings do not fix it. */
  floats: boolean;
}

/** px; points nearer than this to each other share their names: from the side one often hides another. */
const TOGETHER = 16;
/** px kept free at the sides. */
const EDGE = 4;

/** Names that can be read: one for points that lie behind one another, and heights that stay inside the frame. */
export function withNames(spots: readonly Omit<Spot, 'label'>[], width: number): Spot[] {
  const fronts = spots.filter((spot, i) => !spots.slice(0, i).some((other) => isNear(spot.at, other.at)));
  return spots.map((spot) => {
    if (!fronts.includes(spot)) return { ...spot, label: '', height: null };
    const behind = spots.filter((other) => isNear(spot.at, other.at));
    const label = behind.map(({ point }) => point.label).join(', ');
    // The heights of several points would stand on each other; they are read in the lists, or from astern.
    return { ...spot, label, height: behind.length > 1 ? null : spot.height, ...heightAt(spot, width) };
  });
}

export const heightsOf = (spots: readonly Pick<Spot, 'height'>[]): number =>
  spots.filter(({ height }) => height !== null).length;

const isNear = (a: Flat, b: Flat): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < TOGETHER;

/** px from a name to the height beside it. */
const LINE = 19;

/** Beyond the name, away from the point, and where all of it is seen. */
function heightAt({ at, name: { x, y, anchor }, height }: Pick<Spot, 'at' | 'name' | 'height'>, width: number) {
  const wide = ((height?.length ?? 0) + 2) * CHARACTER;
  const before = anchor === 'start' ? 0 : anchor === 'end' ? wide : wide / 2;
  return {
    heightX: Math.min(width - EDGE - (wide - before), Math.max(EDGE + before, x)),
    heightY: y < at[1] ? y - LINE : y + LINE,
  };
}
