import type { SheetPoint } from '../job/index.ts';
import type { Context, Measured } from './context.ts';

type Place = NonNullable<SheetPoint['nominal']>;

/** Below this a layout says nothing about a ratio, mm. */
const SHORTEST = 400;

/**
 * How long a reading would be on the guide's layout, mm: straight and girth only, along the points it passes. Null where the
 * layout does not know the points or has them close together. A layout is a start for drawing, never evidence: it may
 * raise a doubt and nothing more.
 */
export function expectedOf(context: Context, reading: Measured): number | null {
  if (reading.kind !== 'straight' && reading.kind !== 'girth') return null;
  const run = context.runs.get(reading.run ?? '');
  const [from, to] = reading.points;
  if (from === undefined || to === undefined) return null;
  const path = run?.whole === reading.id ? run.points : [from, ...(reading.via ?? []), to];
  let length = 0;
  for (const [index, point] of path.entries()) {
    const [here, before] = [placeOf(context, point), index === 0 ? undefined : placeOf(context, path[index - 1] ?? '')];
    if (here === null || before === null) return null;
    if (before) length += Math.hypot(here[0] - before[0], here[1] - before[1], here[2] - before[2]);
  }
  return length >= SHORTEST ? length : null;
}

const placeOf = (context: Context, point: string): Place | null => context.points.get(point)?.nominal ?? null;
