import { adjust, type Solution, type Vector } from '../adjust/index.ts';
import type { Finding } from './finding.ts';
import { contradictionsTakenOn } from './gates.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';

/** The shape of a piece as it is drawn, listed, compared, printed and written. */
export interface ShownShape {
  readonly judgement: PieceJudgement;
  /** With everything that was read. */
  readonly whole: Solution | null;
  /** What is shown: without the readings that the first explanation names, where the others fix the shape without them. */
  readonly shown: Solution | null;
  /** Readings left out of what is shown. Nothing else leaves them out: the logbook and the gates do not. */
  readonly without: readonly string[];
  /** The shape shown fixes every point. */
  readonly solved: boolean;
  /**
   * Readings contradict each other, and it cannot be told which one to leave out: what is shown is a picture, and no place, no
   * plus and minus and no length worked out from it is to be used, whoever took the contradiction on.
   */
  readonly bent: boolean;
}

const known = new WeakMap<PieceJudgement, { findings: readonly Finding[]; fitted: ShownShape; shape: ShownShape }>();

/** The one rule of which shape is shown and whether its figures may be used. findings: of the same judgement. */
export function shownShape(judgement: PieceJudgement, findings: readonly Finding[]): ShownShape {
  const before = known.get(judgement);
  if (before?.findings === findings) return before.shape;
  const fitted = before?.fitted ?? shapeOf(judgement);
  const shape = fitted.bent || !hangsOnOneLook(fitted, findings) ? fitted : { ...fitted, bent: true };
  known.set(judgement, { findings, fitted, shape });
  return shape;
}

function shapeOf(judgement: PieceJudgement): ShownShape {
  const { adjustment, slips, network } = judgement;
  const whole = solutionOf(adjustment);
  const as = { judgement, whole, shown: whole, without: [], solved: adjustment.state === 'solved' };
  const named = slips?.verdict === 'named' ? (slips.explanations[0]?.slips.map(({ reading }) => reading) ?? []) : [];
  if (named.length > 0) {
    const rest = network.readings.filter(({ id }) => !named.includes(id));
    // Two shapes may fit what is left: then nobody knows which of them it is.
    const start = new Map(whole?.points.map(({ id, position }) => [id, position]));
    const left = adjust({ ...network, readings: rest }, { start });
    if (left.state === 'solved' && !left.solution.doubted)
      return { ...as, shown: left.solution, without: named, solved: true, bent: false };
  }
  return { ...as, bent: whole?.doubted ?? false };
}

/** Two looks at a reading differ, and no other reading says which one is right: the shape is as wrong as the look it goes by. */
function hangsOnOneLook({ shown, without }: ShownShape, findings: readonly Finding[]): boolean {
  const differ = new Set(
    findings.filter(({ rule }) => rule === 'takes-disagree').flatMap(({ subjects }) => subjects.map(({ id }) => id)),
  );
  return (
    shown?.readings.some(({ id, control }) => differ.has(id) && !without.includes(id) && control !== 'checked') ?? false
  );
}

/** Places of the points shown and of the things in the way, which lie in the shape that holds every reading; none while it is not solved. */
export function shownPlaces(shape: ShownShape | null): ReadonlyMap<string, Vector> {
  if (!shape?.solved || !shape.shown) return new Map();
  return new Map([
    ...shape.shown.points.map(({ id, position }) => [id, position] as const),
    ...[...shape.judgement.things].map(([id, { position }]) => [id, position] as const),
  ]);
}

/**
 * What a contradiction that somebody took on does to the shape that is shown: it bends it, or it is left out of it (so too where
 * two looks differ and the other readings bear out the one that counts). Null where none was taken on.
 */
export function takenOnAs(
  findings: readonly Finding[],
  piece: string,
  judgement: PieceJudgement | undefined,
): 'bent' | 'without' | null {
  if (contradictionsTakenOn(findings, piece).length === 0) return null;
  return judgement && !shownShape(judgement, findings).bent ? 'without' : 'bent';
}
