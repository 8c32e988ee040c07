import type { Rule } from './rule.ts';
import { askedAgain } from './rules/asked-again.ts';
import { boxDiagonals } from './rules/box-diagonals.ts';
import { carried } from './rules/carried.ts';
import { choiceConflict } from './rules/choice-conflict.ts';
import { cleatCovered } from './rules/cleat-covered.ts';
import { disputed } from './rules/disputed.ts';
import { fastenerGap } from './rules/fastener-gap.ts';
import { fastenerOnObstruction } from './rules/fastener-on-obstruction.ts';
import { girthShort } from './rules/girth-short.ts';
import { implausibleValue } from './rules/implausible-value.ts';
import { impossibleTetrahedron } from './rules/impossible-tetrahedron.ts';
import { impossibleTriangle } from './rules/impossible-triangle.ts';
import { missingAnswer } from './rules/missing-answer.ts';
import { missingCordExit } from './rules/missing-cord-exit.ts';
import { missingMark } from './rules/missing-mark.ts';
import { missingPhoto } from './rules/missing-photo.ts';
import { missingReading } from './rules/missing-reading.ts';
import { missingRun } from './rules/missing-run.ts';
import { missingSecondLook } from './rules/missing-second-look.ts';
import { missingTreatment } from './rules/missing-treatment.ts';
import { notMeasuredAgain } from './rules/not-measured-again.ts';
import { pointFloats } from './rules/point-floats.ts';
import { pointLoose } from './rules/point-loose.ts';
import { portStarboard } from './rules/port-starboard.ts';
import { readingDoubted } from './rules/reading-doubted.ts';
import { readingUnchecked } from './rules/reading-unchecked.ts';
import { runBackwards } from './rules/run-backwards.ts';
import { runSum } from './rules/run-sum.ts';
import { shapeUnknown } from './rules/shape-unknown.ts';
import { slipUnseen } from './rules/slip-unseen.ts';
import { takesDisagree } from './rules/takes-disagree.ts';
import { twoShapes } from './rules/two-shapes.ts';
import { unlikeSister } from './rules/unlike-sister.ts';
import { unmeasuredReading } from './rules/unmeasured-reading.ts';
import { unsureChoice } from './rules/unsure-choice.ts';

/**
 * Every rule, in the order in which a person best reads them: what is not there, what one value says of itself, what values
 * say of each other, what people say. Keys are permanent; the order may change.
 */
export const rules: readonly Rule[] = [
  missingReading,
  unmeasuredReading,
  missingPhoto,
  missingMark,
  missingAnswer,
  missingRun,
  missingTreatment,
  missingCordExit,
  implausibleValue,
  takesDisagree,
  impossibleTriangle,
  boxDiagonals,
  impossibleTetrahedron,
  girthShort,
  runBackwards,
  runSum,
  fastenerGap,
  fastenerOnObstruction,
  cleatCovered,
  portStarboard,
  disputed,
  unsureChoice,
  choiceConflict,
  carried,
  askedAgain,
  readingDoubted,
  pointFloats,
  twoShapes,
  readingUnchecked,
  missingSecondLook,
  pointLoose,
  slipUnseen,
  shapeUnknown,
  notMeasuredAgain,
  unlikeSister,
];
