import type { Place } from '../../../core/cloth/index.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { stringOf } from '../../model/words.ts';
import { ground } from './project.ts';

/** What the tape follows, hook end first, and the string it is held against where there is one. A size has no line. */
export function askedPlaces(
  { kind, points, via = [], baseline = [] }: Pick<SheetReading, 'kind' | 'points' | 'via' | 'baseline'>,
  places: ReadonlyMap<string, Place>,
): { string: Place[]; along: Place[] } {
  const placed = (ids: readonly string[]): Place[] =>
    ids.map((id) => places.get(id)).filter((place) => place !== undefined);
  const [first, ...rest] = placed(points);
  const [from, to] = placed(baseline);
  if (!first || kind === 'size') return { string: [], along: [] };
  if (from && to && stringOf({ kind, baseline }).length > 0) {
    const foot = footOn(first, from, to);
    return { string: [from, to], along: kind === 'along' ? [from, foot] : [foot, first] };
  }
  if (kind === 'height') return { string: [], along: [ground(first), first] };
  if (kind === 'girth') return { string: [], along: [first, ...placed(via), ...rest] };
  return { string: [], along: [first, ...rest] };
}

/** The place on the line through two others that is nearest. */
function footOn(place: Place, from: Place, to: Place): Place {
  const way = to.map((value, axis) => value - (from[axis] ?? 0));
  const square = way.reduce((sum, part) => sum + part * part, 0) || 1;
  const share = way.reduce((sum, part, axis) => sum + part * ((place[axis] ?? 0) - (from[axis] ?? 0)), 0) / square;
  const [x = 0, y = 0, z = 0] = way.map((part, axis) => (from[axis] ?? 0) + part * share);
  return [x, y, z];
}
