import { addPointAfter, moveMark, removePoint, reorderPoints } from '../../../core/guide/amend/index.ts';
import type { Deed, PointDeclaration, ReadingDeclaration, SheetPoint } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { sayWalk } from '../../../text/walk.ts';
import { actAll, type OpenJob, openJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { pointLabel } from '../../model/words.ts';

/** What was just done, and the address of the step to go on with. */
export interface Said {
  text: string;
  to: string | null;
}

const asked = (deeds: readonly Deed[]): ReadingDeclaration[] =>
  deeds.flatMap(({ kind, payload }) => (kind === 'reading.add' ? [payload.reading as ReadingDeclaration] : []));

const added = (deeds: readonly Deed[]): PointDeclaration | undefined =>
  deeds.flatMap(({ kind, payload }) => (kind === 'point.add' ? [payload.point as PointDeclaration] : []))[0];

const plain = (text: string): Said => ({ text, to: null });

/** A point more on an edge. */
export async function addAfter(job: OpenJob, run: string, point: SheetPoint): Promise<Said> {
  const words = sayWalk().points;
  const deeds = addPointAfter(job.sheet, { run, after: point.id }, { reason: words.reasons.divided }, uuid);
  await actAll(deeds);
  return plain(words.said.added(added(deeds)?.label ?? '', asked(deeds).length));
}

/** A point of an edge changes places with the one before or after it. */
export async function shift(job: OpenJob, run: string, place: number, by: 1 | -1): Promise<Said> {
  const words = sayWalk().points;
  const points = [...(job.sheet.runs.find(({ id }) => id === run)?.points ?? [])];
  points.splice(
    Math.min(place, place + by),
    2,
    ...points
      .slice(Math.min(place, place + by))
      .slice(0, 2)
      .reverse(),
  );
  await actAll(reorderPoints(job.sheet, { run, points }, { reason: words.reasons.order }, uuid));
  const sheet = openJob.value?.sheet ?? job.sheet;
  return plain(words.said.ordered(points.map((id) => pointLabel(sheet, id)).join(' ')));
}

export async function takeOff(job: OpenJob, piece: string, point: SheetPoint, reason: string): Promise<Said> {
  await actAll(removePoint(job.sheet, { piece, point: point.id }, { reason }, uuid));
  return plain(sayWalk().points.said.off(point.label));
}

/** What the mark that stands for this one will be called. */
export const nextLabel = (job: OpenJob, point: SheetPoint): string =>
  added(moveMark(job.sheet, point.id, { reason: '' }, uuid))?.label ?? '';

export async function marksMoved(job: OpenJob, point: SheetPoint): Promise<Said> {
  const words = sayWalk().points;
  const deeds = moveMark(job.sheet, point.id, { reason: words.reasons.moved }, uuid);
  const now = added(deeds);
  await actAll(deeds);
  const fixing = asked(deeds).filter(
    ({ kind, points, needed }) => kind === 'straight' && needed && points[0] === now?.id,
  );
  const marks = fixing.flatMap(
    ({ points }) => job.sheet.points.find(({ id, role }) => id === points[1] && role === 'mark') ?? [],
  );
  const [first] = fixing;
  const [piece] = point.pieces;
  const text = words.said.moved(
    point.label,
    now?.label ?? '',
    marks.map(({ label }) => label),
  );
  return { text, to: first && piece ? routeHash({ at: 'step', job: job.id, piece, step: first.id }) : null };
}
