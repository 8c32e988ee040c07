import { placeAlong, pointsAlong, stationsAlong } from '../geometry/along-run.ts';
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
 * Where the stations of an edge lie. The tape followed the edge, the drawing goes straight from point to point, so that
 * distances are shared out in proportion between the points.
 */
export function stationsOn(run: SheetRun, sheet: Sheet, places: ReadonlyMap<string, Place>): Station[] {
  const placeOf = (point: string): Place | undefined => places.get(point);
  const marks = pointsAlong(run, sheet, placeOf);
  if (!marks) return [];
  return stationsAlong(run, sheet).flatMap(({ reading, number, along }) => {
    const place = placeAlong(run, marks, placeOf, along);
    return place ? [{ reading, number, place }] : [];
  });
}
