import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import type { LessonKey } from './pictures.tsx';

/** How the tape is held for a reading: the first matters most. */
export function lessonsOf(
  reading: Pick<SheetReading, 'kind' | 'points'>,
  { points, pieces }: Pick<Sheet, 'points' | 'pieces'>,
): LessonKey[] {
  const roles = new Set(points.filter(({ id }) => reading.points.includes(id)).map(({ role }) => role));
  switch (reading.kind) {
    case 'straight':
      if (crosses(reading.points, pieces)) return ['free', 'taut'];
      return ['taut', roles.has('mount') || roles.has('corner') ? 'centre' : 'mark'];
    case 'girth':
      return ['surface', 'mark'];
    case 'height':
    case 'out':
      return ['square'];
    case 'along':
    case 'running':
      return ['one-end', 'mark'];
    case 'lean':
      return ['lean'];
    case 'size':
      return ['across', 'zero'];
    default:
      return ['zero'];
  }
}

/** From one corner of a box to the one opposite: most likely to meet something on its way. */
const crosses = ([a, b]: readonly string[], pieces: Sheet['pieces']): boolean =>
  pieces.some(({ boxes }) =>
    boxes.some((box) => box.some((corner, i) => corner === a && box[(i + 2) % box.length] === b)),
  );

/** Which sides of the boat the points of a step lie on: worth a picture for who does not know port from starboard. */
export function sidesOf(
  ids: readonly string[],
  { points }: Pick<Sheet, 'points'>,
): Map<'port' | 'starboard', string[]> {
  const found = new Map<'port' | 'starboard', string[]>();
  for (const id of ids) {
    const point = points.find((candidate) => candidate.id === id);
    for (const side of ['port', 'starboard'] as const)
      if (point?.sides.includes(side)) found.set(side, [...(found.get(side) ?? []), point.label]);
  }
  return found;
}
