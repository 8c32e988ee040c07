import type { PieceSketch, Place } from '../../../core/cloth/index.ts';
import { type Face, seenTurned, type Turn } from '../../../core/geometry/index.ts';
import { type Flat, fitPlaces, ground, type Projection } from '../../parts/drawing/project.ts';
import type { Look } from './use-pan-zoom.ts';

/** From where a piece can be looked at: square to the boat, or turned by hand. */
export type ViewKey = Face | 'turned';
/** From where it is looked at. */
export type Looked = Face | Turn;

export const isTurned = (view: Looked): view is Turn => typeof view !== 'string';

/** Looked at from astern over the starboard quarter, a little down on it. */
export const START: Turn = { around: 0.6, down: 0.45 };

/**
 * The views that show something of a piece, its own face first. What lies flat shows all of itself from above; what is flat
 * and hangs is a line from anywhere but its face.
 */
export function viewsOf(face: Face, flat: boolean): ViewKey[] {
  if (flat) return face === 'plan' ? ['plan'] : [face, 'turned'];
  return [...new Set<ViewKey>([face, 'plan', 'starboard', 'astern']), 'turned'];
}

export interface Frame {
  width: number;
  height: number;
  view: Looked;
  look: Look;
}

/** px for names and values outside the outermost points; less where the drawing is small, or the ball has corners to spare. */
const MARGIN = 80;
const FLAT_MARGIN = 60;
const TURNED_MARGIN = 44;
const MARGIN_SHARE = 0.13;

/** From the boat to the frame, enlarged and moved as the person looks at it; px per mm is `scale`. */
export function projectionOf({ places }: PieceSketch, { width, height, view, look }: Frame, flat: boolean): Projection {
  const margin = Math.min(isTurned(view) ? TURNED_MARGIN : flat ? FLAT_MARGIN : MARGIN, width * MARGIN_SHARE);
  const frame = { width, height, margin };
  const shown = [...places.values()];
  const whole = isTurned(view)
    ? fitTurned(flat ? shown : shown.flatMap((place) => [place, ground(place)]), view, frame)
    : fitPlaces(shown, view, frame);
  return {
    to: (place) => {
      const [x, y] = whole.to(place);
      return [width / 2 + (x - width / 2) * look.zoom + look.x, height / 2 + (y - height / 2) * look.zoom + look.y];
    },
    scale: whole.scale * look.zoom,
  };
}

/** To one scale from wherever it is turned: the ball round all places fits the frame, so that nothing grows while it turns. */
export function fitTurned(
  places: readonly Place[],
  turn: Turn,
  { width, height, margin }: { width: number; height: number; margin: number },
): Projection {
  const middle = middleOf(places);
  const radius = Math.max(1, ...places.map((place) => Math.hypot(...minus(place, middle))));
  const scale = Math.max(1, Math.min(width, height) - 2 * margin) / (2 * radius);
  return {
    to: (place): Flat => {
      const [right, up] = seenTurned(turn, minus(place, middle));
      return [width / 2 + right * scale, height / 2 - up * scale];
    },
    scale,
  };
}

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

function middleOf(places: readonly Place[]): Place {
  const middle = (axis: 0 | 1 | 2): number => {
    const values = places.map((place) => place[axis]);
    return places.length === 0 ? 0 : (Math.min(...values) + Math.max(...values)) / 2;
  };
  return [middle(0), middle(1), middle(2)];
}
