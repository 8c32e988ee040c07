/** Drawings and lists that other programs and people can use. Apart from the packet itself, since few screens need them. */

export { type StateMark, stateOf } from '../state.ts';
export type { Drawing, DrawingWords } from './drawing.ts';
export { dxfOf } from './dxf.ts';
export { fastenersCsv, pointsCsv } from './lists.ts';
export { makePlan } from './plan.ts';
export { svgOf } from './svg.ts';
