/** From readings to cloth. */

export { outlineOf } from '../geometry/outline.ts';
export {
  type EvenRow,
  evenRow,
  isUsual,
  MOST_FASTENERS,
  placesOfRow,
  rowSpaced,
  type SpacingLimits,
  usualRow,
} from './even-spacing.ts';
export { drawnTowards, type PieceSketch, type Place, sketchPiece } from './sketch-piece.ts';
export { runPlaces, type Station, stationsOn } from './stations.ts';
