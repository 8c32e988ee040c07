/** From readings to cloth. */

export { type Outline, outlineOf } from './outline.ts';
export { type PieceSketch, type Place, sketchPiece } from './sketch-piece.ts';
export { runPlaces, type Station, stationsOn } from './stations.ts';
