/** Drawings and lists that other programs and people can use. Apart from the packet itself, since few screens need them. */

export { stateOf, stateOfPiece } from '../state.ts';
export type { Drawing, DrawingWords, PieceFacts } from './drawing.ts';
export { dxfOf } from './dxf.ts';
export { factsOf } from './facts.ts';
export { fittingsCsv } from './fittings.ts';
export { fastenersCsv, pointsCsv } from './lists.ts';
export type { Paper } from './paper.ts';
export { makePlan } from './plan.ts';
export { svgOf } from './svg.ts';
export { tilePages, tilesFor } from './tile-pages.ts';
export type { TileWords } from './tile-words.ts';
export { FEW_TILES } from './tiles.ts';
export { type ScaledPlan, scaledPlan } from './to-scale.ts';
