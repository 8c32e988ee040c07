/** The consistency checker: what is missing, impossible or doubtful in a sheet, and what that leaves standing. */
export { askAgain, askable, isAsked } from './ask-again.ts';
export { rules } from './catalogue.ts';
export { changesBetween, type Judged, type PieceChanges, twinsBySlot } from './changes.ts';
export { sigmaOfReading } from './context.ts';
export { exchangeOf } from './exchange.ts';
export { Finding, RuleKey, type Subject } from './finding.ts';
export { contradictionsTakenOn, type Gate, gates } from './gates.ts';
export { defaultLimits, limitsOf } from './limits.ts';
export { adjustedPlaces, type PieceJudgement, solutionOf } from './piece-judgement.ts';
export { paperLength, practiceFactor, practiceSlip } from './practice.ts';
export { type RoundPoint, roundOf } from './round.ts';
export { type CheckOptions, check, judge } from './runner.ts';
export { type ShownShape, shownPlaces, shownShape, takenOnAs } from './shown-shape.ts';
export { sigmaOf } from './sigma.ts';
