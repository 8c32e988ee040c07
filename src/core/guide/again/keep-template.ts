import { declarationOf, freshIds, renamed } from '../../job/again/index.ts';
import { type Entry, fold, type PieceDeclaration, type ReadingDeclaration } from '../../job/index.ts';
import type { Template } from './template.ts';

/** The same piece to be measured anew: every id is new, everything else is equal. */
export const redeclare = (piece: PieceDeclaration, newId: () => string): PieceDeclaration =>
  renamed(piece, freshIds(newId));

interface TemplateOptions {
  readonly name: string;
  readonly newId: () => string;
  /** Where points were found to lie: to draw those by that no guide places. */
  readonly places?: ReadonlyMap<string, NonNullable<PieceDeclaration['points'][number]['nominal']>>;
}

/**
 * What can be kept of a piece for later jobs: its declaration as it stands, with what its points share with other pieces of
 * the job. Things in the way belong to this boat and stay behind, as do takes, pictures, answers and people.
 * Null where there is no such piece.
 */
export function templateOf(
  entries: readonly Entry[],
  pieceId: string,
  { name, newId, places = new Map() }: TemplateOptions,
): Template | null {
  const piece = declarationOf(entries, pieceId);
  if (!piece) return null;
  const kept = withoutThingsInTheWay(withShared(piece, entries), entries);
  const points = kept.points.map((point) => ({ ...point, nominal: point.nominal ?? places.get(point.id) ?? null }));
  return { id: newId(), name, piece: redeclare({ ...kept, name, points }, newId) };
}

/** Pieces on one boat share marks, and what lies between those is asked once, in the first piece: here it is asked too. */
function withShared(piece: PieceDeclaration, entries: readonly Entry[]): PieceDeclaration {
  const own = new Set(piece.points.map(({ id }) => id));
  const asked = new Set(piece.readings.filter(isPair).map(pairOf));
  const keys = new Set(piece.walk);
  const shared = fold(entries)
    .pieces.filter(({ id }) => id !== piece.id)
    .flatMap(({ id }) => declarationOf(entries, id)?.readings ?? [])
    .filter((reading) => isPair(reading) && reading.points.every((id) => own.has(id)) && !asked.has(pairOf(reading)))
    .map((reading) => (reading.slot !== null && keys.has(reading.slot) ? { ...reading, slot: null } : reading));
  return {
    ...piece,
    readings: [...shared, ...piece.readings],
    walk: [...shared.map(({ id, slot }) => slot ?? id), ...piece.walk],
  };
}

const isPair = ({ kind, points, when }: ReadingDeclaration): boolean =>
  kind === 'straight' && points.length === 2 && when === undefined;
const pairOf = ({ points }: ReadingDeclaration): string => [...points].sort().join();

function withoutThingsInTheWay(piece: PieceDeclaration, entries: readonly Entry[]): PieceDeclaration {
  const onEdges = new Set(piece.runs.flatMap(({ points }) => points));
  const things = fold(entries).obstructions.flatMap(({ point }) => point ?? []);
  const places = new Set(things.filter((id) => !onEdges.has(id)));
  const isOfThing = ({ obstruction, points, via = [], baseline = [] }: ReadingDeclaration): boolean =>
    obstruction !== undefined || [...points, ...via, ...baseline].some((id) => places.has(id));
  const readings = piece.readings.filter((reading) => !isOfThing(reading));
  const left = new Set(readings.map(({ id }) => id));
  const gone = new Set(piece.readings.filter(isOfThing).map(({ id, slot }) => slot ?? id));
  return {
    ...piece,
    points: piece.points.filter(({ id }) => !places.has(id)),
    readings,
    runs: piece.runs.map((run) => ({ ...run, whole: run.whole !== null && left.has(run.whole) ? run.whole : null })),
    shots: piece.shots.map((shot) => ({ ...shot, points: shot.points.filter((id) => !places.has(id)) })),
    walk: piece.walk.filter((key) => !gone.has(key)),
  };
}
