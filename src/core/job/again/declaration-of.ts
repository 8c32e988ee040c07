import type { PieceDeclaration, PointDeclaration, ReadingDeclaration, RunDeclaration } from '../declarations.ts';
import type { Entry } from '../entries.ts';
import { fold } from '../fold.ts';
import { type Gathered, gather } from '../gather.ts';
import type { Sheet, SheetPiece, SheetPoint } from '../sheet.ts';

/**
 * A piece declared whole as it stands now: with what was added later, without what was dropped, under the names its points
 * have now. What is asked under a condition is in it, whether the condition holds or not. A mark that was moved is one mark.
 * Null where there is no such piece. What was measured, photographed and answered is not part of a declaration.
 */
export function declarationOf(entries: readonly Entry[], pieceId: string): PieceDeclaration | null {
  const sheet = fold(entries);
  const piece = sheet.pieces.find(({ id }) => id === pieceId);
  const gathered = gather(entries);
  const added = gathered.of('piece.add').find(({ payload }) => payload.id === pieceId)?.payload;
  if (!piece || !added) return null;
  const known = new Map(sheet.points.map((point) => [point.id, point]));
  const inPiece = (id: string): boolean => known.get(id)?.pieces.includes(pieceId) ?? false;
  const origin = (id: string): string => firstOf(known, id);
  const standing = standingReadings(gathered, sheet, pieceId);
  const asked = askedOnce(
    standing.filter((reading) => pointsOf(reading).every((id) => known.has(id))),
    origin,
  );
  const kept = new Set(asked.map(({ id }) => id));
  const runs = standingRuns(gathered, sheet, piece).map((run) => ({
    ...run,
    points: run.points.map(origin),
    whole: run.whole !== null && kept.has(run.whole) ? run.whole : null,
  }));
  const shots = [
    ...added.shots,
    ...gathered.of('shot.add').flatMap(({ payload }) => (payload.piece === pieceId ? [payload.shot] : [])),
  ].map((shot) => ({ ...shot, points: shot.points.filter(inPiece).map(origin) }));
  const used = new Set([...asked.flatMap(pointsOf), ...runs.flatMap(({ points }) => points)]);
  const steps = new Set([...asked, ...runs, ...shots, ...added.questions].map(keyOf));
  return {
    ...added,
    points: sheet.points.filter(({ id }) => origin(id) === id && (inPiece(id) || used.has(id))).map(declared),
    readings: asked,
    runs,
    shots,
    boxes: piece.boxes.map(([a, b, c, d]) => [origin(a), origin(b), origin(c), origin(d)]),
    pairs: piece.pairs.map(([port, starboard]) => [origin(port), origin(starboard)]),
    walk: piece.walk.filter((key) => steps.has(key)),
    cautions: piece.cautions.filter(({ slot }) => steps.has(slot)),
  };
}

const keyOf = (step: { slot: string | null; id?: string }): string => step.slot ?? step.id ?? '';

/** The mark that stood there first, however often it was moved since; a ring of moves, which nobody makes, ends. */
function firstOf(known: ReadonlyMap<string, SheetPoint>, id: string): string {
  const seen = new Set([id]);
  let at = id;
  for (let before = known.get(at)?.replaces; before !== undefined && known.has(before); ) {
    if (seen.has(before)) return id;
    seen.add(before);
    at = before;
    before = known.get(at)?.replaces;
  }
  return at;
}

const declared = ({ pieces, replacedBy, replaces, ...point }: SheetPoint): PointDeclaration => point;

const pointsOf = ({ points, via = [], baseline = [] }: ReadingDeclaration): string[] => [
  ...points,
  ...via,
  ...baseline,
];

/** All readings declared for a piece, but for those that were dropped by themselves or with their point. */
function standingReadings(gathered: Gathered, sheet: Sheet, pieceId: string): ReadingDeclaration[] {
  const gone = new Set(sheet.setAside.map(({ reading }) => reading.id));
  const all = new Map<string, ReadingDeclaration>();
  const add = (reading: ReadingDeclaration): void => {
    if (!all.has(reading.id) && !gone.has(reading.id)) all.set(reading.id, reading);
  };
  for (const { payload } of gathered.of('piece.add')) if (payload.id === pieceId) payload.readings.forEach(add);
  for (const { payload } of gathered.of('reading.add')) if (payload.piece === pieceId) add(payload.reading);
  return [...all.values()];
}

/** Edges as they run now; one that is asked under a condition that does not hold runs as it was declared. */
function standingRuns(gathered: Gathered, sheet: Sheet, piece: SheetPiece): RunDeclaration[] {
  const now = new Map(sheet.runs.map((run) => [run.id, run]));
  const all = new Map<string, RunDeclaration>();
  const add = (run: RunDeclaration): void => {
    const { points, whole } = now.get(run.id) ?? run;
    if (!all.has(run.id)) all.set(run.id, { ...run, points, whole });
  };
  for (const { payload } of gathered.of('piece.add')) if (payload.id === piece.id) payload.runs.forEach(add);
  for (const { payload } of gathered.of('run.add')) if (payload.piece === piece.id) add(payload.run);
  return [...all.values()];
}

/** Readings as taken from the marks that stood there first; a pair that was taped before and after a move is asked once. */
function askedOnce(readings: readonly ReadingDeclaration[], origin: (id: string) => string): ReadingDeclaration[] {
  const hasMoved = (reading: ReadingDeclaration): boolean => pointsOf(reading).some((id) => origin(id) !== id);
  const placeOf = ({ kind, points }: ReadingDeclaration): string => [kind, ...points.map(origin).sort()].join();
  const asked = new Set(readings.filter((reading) => !hasMoved(reading)).map(placeOf));
  return readings.flatMap((reading) => {
    if (!hasMoved(reading)) return [reading];
    // From a mark to where it was moved: on a sister boat it stands in one place.
    if (asked.has(placeOf(reading)) || new Set(reading.points.map(origin)).size < reading.points.length) return [];
    asked.add(placeOf(reading));
    const { points, via, baseline } = reading;
    const more = { ...(via ? { via: via.map(origin) } : {}), ...(baseline ? { baseline: baseline.map(origin) } : {}) };
    return [{ ...reading, points: points.map(origin), ...more }];
  });
}
