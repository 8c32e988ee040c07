/** From readings to cloth. */
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
export { inTheBoat } from './in-the-boat.ts';
export { drawnTowards, type PieceSketch, type Place, sketchPiece } from './sketch-piece.ts';
export { runPlaces, type Station, stationsOn } from './stations.ts';
