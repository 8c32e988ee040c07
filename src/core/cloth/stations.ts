import { pointAlong, polylineLength } from '../geometry/index.ts';
import type { Sheet, SheetRun } from '../job/index.ts';
import type { Place } from './sketch-piece.ts';

/** A fastener or a measured place on its edge. */
export interface Station {
  reading: string;
  number: number;
  place: Place;
}

/** The points of an edge that have a place, in order. */
export const runPlaces = (run: SheetRun, places: ReadonlyMap<string, Place>): Place[] =>
  run.points.flatMap((id) => {
    const place = places.get(id);
    return place ? [place] : [];
  });

/**
 * Where the stations of an edge lie. The tape followed the edge, the drawing goes straight from point to point, so
 * that distances are shared out in proportion where the whole edge is known.
 */
export function stationsOn(run: SheetRun, sheet: Sheet, places: ReadonlyMap<string, Place>): Station[] {
  const line = runPlaces(run, places);
  if (line.length < 2) return [];
  const readings = new Map(sheet.readings.map((reading) => [reading.id, reading]));
  const reaches: { reading: string; number: number; reach: number }[] = [];
  let sum = 0;
  for (const [index, id] of run.stations.entries()) {
    const value = readings.get(id)?.value ?? null;
    if (value === null || value < 0) continue;
    sum += value;
    reaches.push({ reading: id, number: index + 1, reach: run.manner === 'gaps' ? sum : value });
  }
  const whole = readings.get(run.whole ?? '')?.value ?? 0;
  const furthest = Math.max(0, ...reaches.map(({ reach }) => reach));
  const share = whole > 0 && furthest <= whole * 1.02 ? polylineLength(line) / whole : 1;
  return reaches.map(({ reading, number, reach }) => ({ reading, number, place: pointAlong(line, reach * share) }));
}
