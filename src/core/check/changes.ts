import { fitOver, type ShapeFit, type Vector } from '../adjust/index.ts';
import type { Sheet, SheetReading } from '../job/index.ts';
import type { Finding } from './finding.ts';
import type { PieceJudgement } from './piece-judgement.ts';
import { type ShownShape, shownPlaces, shownShape } from './shown-shape.ts';

/** A job as it stood and what was made of it then. */
export interface Judged {
  readonly sheet: Sheet;
  readonly findings: readonly Finding[];
  readonly pieces: ReadonlyMap<string, PieceJudgement>;
}

/** One reading in both; before, after: mm (rad for a lean), null where it had no value. reading: its id in the later one. */
export interface ReadingChange {
  readonly reading: string;
  readonly before: number | null;
  readonly after: number | null;
}

/** What became of one piece. came, gone: findings by what they say, whatever their basis. fit: the shapes that are shown laid over each other. */
export interface PieceChanges {
  readonly piece: string;
  readonly readings: readonly ReadingChange[];
  readonly came: readonly Finding[];
  readonly gone: readonly Finding[];
  readonly fit: ShapeFit | null;
  /** Contradictions bend one of the shapes: no distance between them is to be used. */
  readonly bent: boolean;
  /** Readings left out of either shape, by their ids in the later job. */
  readonly without: { readonly before: readonly string[]; readonly after: readonly string[] };
}

/** Which id of the earlier job stands for an id of the later one; itself within one job. */
export type Twin = (id: string) => string | undefined;

/** What differs between two states of a job, piece by piece: readings whose value changed, findings, where points moved. */
export function changesBetween(before: Judged, after: Judged, twin: Twin = (id) => id): PieceChanges[] {
  const earlier = new Map(before.sheet.readings.map((reading) => [reading.id, reading]));
  return after.sheet.pieces.map(({ id: piece, flat }) => {
    const [old, now] = [shapeIn(before, twin(piece)), shapeIn(after, piece)];
    const own = after.sheet.readings.filter((reading) => reading.piece === piece);
    return {
      piece,
      readings: own.flatMap((reading) => changeOf(reading, earlier.get(twin(reading.id) ?? ''))),
      came: without(after.findings, before.findings, piece, twin),
      gone: gone(before.findings, after.findings, piece, twin),
      fit: fitOf(old, now, twin, flat ? 2 : 3),
      bent: (old?.bent ?? false) || (now?.bent ?? false),
      without: {
        before: own.filter(({ id }) => old?.without.includes(twin(id) ?? '')).map(({ id }) => id),
        after: now?.without ?? [],
      },
    };
  });
}

function changeOf(reading: SheetReading, old: SheetReading | undefined): ReadingChange[] {
  const before = old?.value ?? null;
  return before === reading.value ? [] : [{ reading: reading.id, before, after: reading.value }];
}

const standing = (findings: readonly Finding[], piece: string | undefined): Finding[] =>
  findings.filter((finding) => finding.accepted === null && finding.piece === piece);

/** A finding by rule and subjects, in the names of the earlier job. */
const nameOf = (finding: Finding, twin: Twin): string =>
  `${finding.rule} ${finding.subjects
    .map(({ id }) => twin(id) ?? id)
    .sort()
    .join(' ')}`;

function without(after: readonly Finding[], before: readonly Finding[], piece: string, twin: Twin): Finding[] {
  const old = new Set(standing(before, twin(piece)).map((finding) => nameOf(finding, (id) => id)));
  return standing(after, piece).filter((finding) => !old.has(nameOf(finding, twin)));
}

function gone(before: readonly Finding[], after: readonly Finding[], piece: string, twin: Twin): Finding[] {
  const now = new Set(standing(after, piece).map((finding) => nameOf(finding, twin)));
  return standing(before, twin(piece)).filter((finding) => !now.has(nameOf(finding, (id) => id)));
}

function shapeIn({ pieces, findings }: Judged, piece: string | undefined): ShownShape | null {
  const judgement = pieces.get(piece ?? '');
  return judgement ? shownShape(judgement, findings) : null;
}

function fitOf(before: ShownShape | null, after: ShownShape | null, twin: Twin, dimension: 2 | 3): ShapeFit | null {
  const [old, now] = [placesOf(before), placesOf(after)];
  const renamed = new Map(
    [...now.keys()].flatMap((id) => {
      const place = old.get(twin(id) ?? '');
      return place ? [[id, place] as const] : [];
    }),
  );
  return fitOver(renamed, now, dimension);
}

/** Of its own points, without the things in the way. */
function placesOf(shape: ShownShape | null): ReadonlyMap<string, Vector> {
  const own = new Set(shape?.shown?.points.map(({ id }) => id));
  return new Map([...shownPlaces(shape)].filter(([id]) => own.has(id)));
}

/** Which parts of a sister boat's job stand for those of this one: pieces of a kind in order, their parts by slot. */
export function twinsBySlot(earlier: Sheet, later: Sheet): Twin {
  const twins = new Map<string, string>();
  const taken = new Set<string>();
  for (const piece of later.pieces) {
    const old = earlier.pieces.find(({ id, kind }) => kind === piece.kind && !taken.has(id));
    if (!old) continue;
    taken.add(old.id);
    twins.set(piece.id, old.id);
    for (const list of ['readings', 'runs'] as const) {
      const bySlot = new Map(earlier[list].filter((one) => one.piece === old.id).map((one) => [one.slot, one.id]));
      for (const one of later[list]) pair(twins, one, one.piece === piece.id ? bySlot : new Map());
    }
    const points = earlier.points.filter(({ pieces }) => pieces.includes(old.id));
    const bySlot = new Map(points.map((point) => [point.slot, point.id]));
    for (const point of later.points) pair(twins, point, point.pieces.includes(piece.id) ? bySlot : new Map());
  }
  return (id) => twins.get(id);
}

function pair(
  twins: Map<string, string>,
  { id, slot }: { id: string; slot: string | null },
  bySlot: ReadonlyMap<string | null, string>,
): void {
  const twin = slot === null ? undefined : bySlot.get(slot);
  if (twin !== undefined) twins.set(id, twin);
}
