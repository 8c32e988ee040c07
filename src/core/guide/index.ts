/** How each piece is captured, step by step. */
export { CAUTIONS, type Caution, declarePiece, type Guide } from './guide.ts';
export { guideOf, guides } from './pieces/index.ts';
export { nextOpen, type Step, type StepState, stepsOf } from './steps.ts';
