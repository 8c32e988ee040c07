import type { DecidingTape, NextTape, PointResult, SlipReport, Solution, SupposedSlip } from '../core/adjust/index.ts';
import { type Finding, judge, type PieceJudgement, solutionOf } from '../core/check/index.ts';
import type { Sheet } from '../core/job/index.ts';
import { type Labels, labelled, labelsOf } from './labels.ts';

/**
 * What the engine makes of a job, for people and programs: ids replaced by labels, millimetres and radians throughout,
 * standard deviations a priori (times `unitError` a posteriori).
 */
export interface Adjusted {
  readonly unit: 'mm';
  readonly stop: boolean;
  readonly pieces: readonly AdjustedPiece[];
  readonly findings: readonly object[];
}

export type AdjustedPiece = ReturnType<typeof pieceOf>;

export function adjusted(sheet: Sheet): Adjusted {
  const { findings, pieces } = judge(sheet);
  const labels = labelsOf(sheet);
  const list = sheet.pieces.map(({ id, name }) => pieceOf(name, pieces.get(id) ?? null, sheet, id, labels));
  const silent = list.some(({ state }) => state === 'did-not-converge');
  return {
    unit: 'mm',
    stop: silent || findings.some(({ severity }: Finding) => severity === 'stop'),
    pieces: list,
    findings: findings.map((finding) => labelled(finding, sheet, labels)),
  };
}

function pieceOf(name: string, judgement: PieceJudgement | null, sheet: Sheet, id: string, labels: Labels) {
  const adjustment = judgement?.adjustment ?? null;
  const solution = adjustment ? solutionOf(adjustment) : null;
  return {
    piece: name,
    state: adjustment?.state ?? ('nothing-to-adjust' as const),
    adjustment: summaryOf(solution, labels),
    floating: floatingOf(judgement, labels),
    points: solution?.points.map((point) => pointOf(point, labels)) ?? [],
    readings: solution && judgement ? readingsOf(solution, judgement, sheet, labels) : [],
    oneSided: solution?.oneSided.map((one) => ({ ...one, reading: labels.reading(one.reading) })) ?? [],
    leftOut: leftOut(judgement, solution, sheet, id, labels),
    shapes: adjustment?.state === 'two-shapes' ? shapesOf(adjustment, labels) : null,
    slips: judgement?.slips ? slipsOf(judgement.slips, labels) : null,
    advice: adviceOf(judgement, labels),
  };
}

function summaryOf(solution: Solution | null, labels: Labels) {
  if (!solution) return null;
  const { dimension, freedom, weightedSquare, unitError, globalTest, readingTest, handedness } = solution;
  const wrongSides = solution.wrongSides.map(({ point, side }) => ({ point: labels.point(point), side }));
  const { doubted } = solution;
  return { dimension, freedom, weightedSquare, unitError, doubted, globalTest, readingTest, handedness, wrongSides };
}

function floatingOf(judgement: PieceJudgement | null, labels: Labels) {
  const adjustment = judgement?.adjustment;
  if (adjustment?.state !== 'not-enough-readings' && adjustment?.state !== 'singular') return [];
  return adjustment.floating.map(({ point, ways }) => ({ point: labels.point(point), ways }));
}

function pointOf(
  { id, state, position, covariance, relative95, relativeTo, worstUnseen }: PointResult,
  labels: Labels,
) {
  const [x, y, z] = position;
  const [xx = 0, , , yy = 0, , zz = 0] = covariance ?? [];
  const sigma = covariance ? { x: Math.sqrt(xx), y: Math.sqrt(yy), z: Math.sqrt(zz) } : null;
  const worst = worstUnseen ? { reading: labels.reading(worstUnseen.reading), shift: worstUnseen.shift } : null;
  return {
    point: labels.point(id),
    state,
    x,
    y,
    z,
    sigma,
    covariance,
    relative95,
    relativeTo: relativeTo.map((one) => labels.point(one)),
    worstUnseen: worst,
  };
}

function readingsOf(solution: Solution, { network }: PieceJudgement, sheet: Sheet, labels: Labels) {
  const given = new Map(network.readings.map((reading) => [reading.id, reading]));
  const takes = new Map(sheet.readings.map((reading) => [reading.id, reading.takes.filter(({ struck }) => !struck)]));
  return solution.readings.map((result) => ({
    reading: labels.reading(result.id),
    texts: takes.get(result.id)?.map(({ text }) => text) ?? [],
    observed: given.get(result.id)?.value ?? null,
    sigma: given.get(result.id)?.sigma ?? null,
    adjusted: result.adjusted,
    residual: result.residual,
    redundancy: result.redundancy,
    control: result.control,
    confirmed: given.get(result.id)?.confirmed ?? false,
    standardised: result.standardised,
    estimatedError: result.estimatedError,
    smallestVisibleSlip: result.minimalDetectableBias,
  }));
}

/** Readings with a value that take no part, and why: not lost without a word. */
function leftOut(
  judgement: PieceJudgement | null,
  solution: Solution | null,
  sheet: Sheet,
  piece: string,
  labels: Labels,
) {
  const given = new Set(judgement?.network.readings.map(({ id }) => id));
  const own = sheet.readings.filter((reading) => reading.piece === piece && reading.value !== null);
  const unused = own.filter(({ id, kind }) => kind !== 'known' && !given.has(id));
  return [
    ...(solution?.rejected.map(({ reading, why }) => ({ reading: labels.reading(reading), why })) ?? []),
    ...unused.map(({ id, kind }) => ({
      reading: labels.reading(id),
      why: kind === 'running' ? 'checked along its run only' : 'says nothing in a flat piece',
    })),
  ];
}

const tapeOf = ({ from, to, predicted }: DecidingTape, labels: Labels) => ({
  from: labels.point(from),
  to: labels.point(to),
  predicted,
});

function shapesOf(
  { shapes, tellsApart }: Extract<PieceJudgement['adjustment'], { state: 'two-shapes' }>,
  labels: Labels,
) {
  return {
    fit: shapes.map(({ moved, weightedSquare, positions }) => ({
      moved: moved.map((id) => ({ point: labels.point(id), position: positions.get(id) ?? null })),
      weightedSquare,
    })),
    tellsApart: tellsApart.map((tape) => tapeOf(tape, labels)),
  };
}

function slipsOf({ verdict, explanations, readAgain, tellsApart }: SlipReport, labels: Labels) {
  const slipOf = (slip: SupposedSlip) => ({
    ...slip,
    reading: labels.reading(slip.reading),
    ...(slip.belongsTo ? { belongsTo: slip.belongsTo.map((id) => labels.point(id)) } : {}),
  });
  return {
    verdict,
    explanations: explanations.map(({ slips, chance, weightedSquare }) => ({
      chance,
      weightedSquare,
      slips: slips.map(slipOf),
    })),
    readAgain: readAgain.map((id) => labels.reading(id)),
    tellsApart: tellsApart.map((tape) => tapeOf(tape, labels)),
  };
}

function adviceOf(judgement: PieceJudgement | null, labels: Labels) {
  const advice = judgement?.advice;
  if (!advice) return null;
  const next = (tape: NextTape) => ({ ...tape, from: labels.point(tape.from), to: labels.point(tape.to) });
  return { now: advice.now, ranked: advice.ranked.map(next), set: advice.set.map(next), clears: advice.clears };
}
