/** From readings to cloth. */
export { type PieceSketch, type Place, sketchPiece } from './sketch-piece.ts';
