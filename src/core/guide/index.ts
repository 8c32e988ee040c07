/** How a piece is captured, step by step. The guides themselves are in pieces/, apart: only who declares a piece loads them. */
export { CAUTIONS, type Caution } from './cautions.ts';
export { declarePiece, type Guide } from './guide.ts';
export { looksOf, secondLooks } from './second-looks.ts';
export { firstAsked, nextAsked, nextOpen, type Step, type StepState, stepsOf } from './steps.ts';
