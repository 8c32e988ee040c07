import { fitOver, type ShapeFit, type Vector } from '../adjust/index.ts';
import type { Sheet, SheetReading } from '../job/index.ts';
import type { Finding } from './finding.ts';
import { type PieceJudgement, solutionOf } from './piece-judgement.ts';

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

/** What became of one piece. came, gone: findings by what they say, whatever their basis. fit: the shapes laid over each other. */
export interface PieceChanges {
  readonly piece: string;
  readonly readings: readonly ReadingChange[];
  readonly came: readonly Finding[];
  readonly gone: readonly Finding[];
  readonly fit: ShapeFit | null;
}

/** Which id of the earlier job stands for an id of the later one; itself within one job. */
export type Twin = (id: string) => string | undefined;

/** What differs between two states of a job, piece by piece: readings whose value changed, findings, where points moved. */
export function changesBetween(before: Judged, after: Judged, twin: Twin = (id) => id): PieceChanges[] {
  const earlier = new Map(before.sheet.readings.map((reading) => [reading.id, reading]));
  return after.sheet.pieces.map(({ id: piece, flat }) => ({
    piece,
    readings: after.sheet.readings
      .filter((reading) => reading.piece === piece)
      .flatMap((reading) => changeOf(reading, earlier.get(twin(reading.id) ?? ''))),
    came: without(after.findings, before.findings, piece, twin),
    gone: gone(before.findings, after.findings, piece, twin),
    fit: fitOf(before, after, piece, twin, flat ? 2 : 3),
  }));
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

function fitOf(before: Judged, after: Judged, piece: string, twin: Twin, dimension: 2 | 3): ShapeFit | null {
  const now = placesOf(after.pieces.get(piece));
  const old = placesOf(before.pieces.get(twin(piece) ?? ''));
  const renamed = new Map(
    [...now.keys()].flatMap((id) => {
      const place = old.get(twin(id) ?? '');
      return place ? [[id, place] as const] : [];
    }),
  );
  return fitOver(renamed, now, dimension);
}

function placesOf(judgement: PieceJudgement | undefined): ReadonlyMap<string, Vector> {
  const solution = judgement?.adjustment.state === 'solved' ? solutionOf(judgement.adjustment) : null;
  return new Map(solution?.points.map(({ id, position }) => [id, position]));
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
