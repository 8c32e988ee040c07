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
export {
  type Measure,
  measureAngle,
  measureArea,
  measureDistance,
  measureRun,
  type Shape,
  SIGMAS_95,
} from './measure-on.ts';
export { shapeToMeasure } from './shape-to-measure.ts';
export { drawnTowards, type PieceSketch, type Place, sketchPiece } from './sketch-piece.ts';
export type { SpotName } from './spots.ts';
export { runPlaces, type Station, stationsOn } from './stations.ts';
