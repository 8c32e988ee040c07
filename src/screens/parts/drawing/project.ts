import type { PieceSketch, Place } from '../../../core/cloth/index.ts';
import { type Face, seenAs } from '../../../core/geometry/index.ts';

export type Flat = readonly [number, number];

/** The face of a piece, or slantwise from astern so that heights show. */
export type View = Face | 'slant';

export interface Frame {
  width: number;
  height: number;
  /** Room kept free round the drawing, in the frame's own units. */
  margin: number;
}

/** Across the drawing and down it. */
function look(view: View, place: Place): Flat {
  const [x, y, z] = place;
  if (view === 'slant') return [-y + 0.35 * x, -z - 0.3 * x];
  const [right, up] = seenAs(view, place);
  return [right, -up];
}

/** The place below, on the ground of a drawing with heights. */
export const ground = ([x, y]: Place): Place => [x, y, 0];

export const path = (points: readonly Flat[]): string =>
  points.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

/** A mapping from the boat's frame (mm) to a drawing's frame, to one scale in both directions; px per mm is `scale`. */
export interface Projection {
  to(place: Place): Flat;
  scale: number;
}

/** The largest scale at which all places fit the frame, centred. */
export function fitPlaces(places: readonly Place[], view: View, frame: Frame): Projection {
  const flat = places.map((place) => look(view, place));
  const xs = flat.map(([x]) => x);
  const ys = flat.map(([, y]) => y);
  const [left, right] = [Math.min(...xs, Infinity), Math.max(...xs, -Infinity)];
  const [top, bottom] = [Math.min(...ys, Infinity), Math.max(...ys, -Infinity)];
  if (!Number.isFinite(left) || !Number.isFinite(top))
    return { to: () => [frame.width / 2, frame.height / 2], scale: 1 };
  const room: Flat = [frame.width - 2 * frame.margin, frame.height - 2 * frame.margin];
  const scale = Math.min(room[0] / Math.max(right - left, 1), room[1] / Math.max(bottom - top, 1));
  const [cx, cy] = [(left + right) / 2, (top + bottom) / 2];
  return {
    to: (place) => {
      const [x, y] = look(view, place);
      return [frame.width / 2 + (x - cx) * scale, frame.height / 2 + (y - cy) * scale];
    },
    scale,
  };
}

/** Room kept free round a drawing on a phone. */
const MARGIN = 40;

/** How a sketch fits a drawing. */
export function fitDrawing(drawn: PieceSketch, view: View, width: number, height: number): Projection {
  const places = [...drawn.places.values()];
  const shown = view === 'slant' ? places.flatMap((place) => [place, ground(place)]) : places;
  return fitPlaces(shown, view, { width, height, margin: MARGIN });
}

/** Where to put a name so that it stands clear: away from the middle of all points, or towards it (below zero). */
export function nameSpot(
  at: Flat,
  middle: Flat,
  distance: number,
): { x: number; y: number; anchor: 'start' | 'middle' | 'end' } {
  const [dx, dy] = [at[0] - middle[0], at[1] - middle[1]];
  const length = Math.hypot(dx, dy);
  const [ux, uy] = length < 1 ? [0, -1] : [dx / length, dy / length];
  return {
    x: at[0] + ux * distance,
    y: at[1] + uy * distance + 5,
    anchor: Math.abs(ux) < 0.4 ? 'middle' : ux * distance > 0 ? 'start' : 'end',
  };
}
