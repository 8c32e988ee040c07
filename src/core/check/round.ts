import { FACT_KINDS, type ReadingKind, type Sheet, type SheetPiece, type SheetReading } from '../job/index.ts';
import { countingTakes } from './context.ts';
import type { Finding } from './finding.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';

/**
 * Where a point stands, the worst first: something about it contradicts; readings at it are still open; the readings do
 * not fix it; it is fixed and some slip at it would not show; it is fixed and everything read at it is checked.
 */
type Standing = 'doubtful' | 'missing' | 'floats' | 'fixed' | 'checked';

export interface RoundPoint {
  readonly point: string;
  readonly standing: Standing;
  /** How sure it is relative to marks and neighbours, mm at 95 %; null where the engine does not have it. */
  readonly sure: number | null;
  /** Needed readings at it that nobody has answered. */
  readonly open: number;
  /** The step to go to: the first that is open or spoken of, otherwise the first that measures the point. */
  readonly slot: string | null;
}

/**
 * The points of a piece in the order a person comes to them on the walk, each with how it stands. Points without any
 * reading are left out: pictures and edges speak of them. So are things in the way, which have a list of their own.
 */
export function roundOf(
  sheet: Sheet,
  pieceId: string,
  findings: readonly Finding[],
  judgement: PieceJudgement | undefined,
): RoundPoint[] {
  const piece = sheet.pieces.find(({ id }) => id === pieceId);
  if (!piece) return [];
  const inWalk = readingsInWalk(sheet, piece);
  const solution = judgement ? solutionOf(judgement.adjustment) : null;
  const results = new Map(solution?.points.map((result) => [result.id, result]));
  const controls = new Map(solution?.readings.map(({ id, control }) => [id, control]));
  const standing = findings.filter(({ accepted, severity }) => accepted === null && severity !== 'note');
  const spokenOf = new Set(standing.filter(speaksUp).flatMap(({ subjects }) => subjects.map(({ id }) => id)));
  // Where a mark was before it was moved, nobody comes to any more; things in the way have a list of their own.
  const left = new Set<string | null>([
    ...sheet.points.flatMap(({ id, replacedBy }) => (replacedBy === null ? [] : [id])),
    ...sheet.obstructions.map((thing) => thing.point),
  ]);
  const points = [...new Set(inWalk.flatMap((reading) => reading.points))].filter((point) => !left.has(point));
  return points.map((point): RoundPoint => {
    const own = inWalk.filter((reading) => reading.points.includes(point));
    const open = own.filter((reading) => reading.needed && reading.state === 'open');
    const doubted = own.filter((reading) => spokenOf.has(reading.id));
    const result = results.get(point);
    const checked = own.every(
      (reading) =>
        !reading.needed ||
        reading.state === 'open' ||
        ONE_SIDED.has(reading.kind) ||
        twice(reading) ||
        (controls.get(reading.id) ?? 'unchecked') !== 'unchecked',
    );
    const first = doubted[0] ?? open[0] ?? own[0];
    return {
      point,
      standing:
        doubted.length > 0 || spokenOf.has(point)
          ? 'doubtful'
          : open.length > 0
            ? 'missing'
            : result?.state === 'floating'
              ? 'floats'
              : checked
                ? 'checked'
                : 'fixed',
      sure: result?.state === 'fixed' ? result.relative95 : null,
      open: open.length,
      slot: first ? (first.slot ?? first.id) : null,
    };
  });
}

/** What is missing is counted by itself; the rest of what stands in the way speaks of what is there. */
const speaksUp = ({ rule }: Finding): boolean =>
  !rule.startsWith('missing-') && rule !== 'asked-again' && rule !== 'point-floats' && rule !== 'reading-unchecked';

/** Lengths on the surface are held against the chords below them by rules of their own; facts are not taped. */
const ONE_SIDED: ReadonlySet<ReadingKind> = new Set([...FACT_KINDS, 'girth', 'running'] as const);

const twice = (reading: SheetReading): boolean => countingTakes(reading).length > 1;

/** Readings that end at points, in walking order; stations along an edge have no points of their own. */
function readingsInWalk(sheet: Sheet, { id, walk }: SheetPiece): SheetReading[] {
  const place = new Map(walk.map((key, index) => [key, index]));
  const rank = (reading: SheetReading): number => place.get(reading.slot ?? reading.id) ?? walk.length;
  return sheet.readings
    .filter((reading) => reading.piece === id && reading.points.length > 0)
    .sort((a, b) => rank(a) - rank(b));
}
