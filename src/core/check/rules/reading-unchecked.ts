import type { SheetPoint, SheetReading } from '../../job/index.ts';
import { agreeingLooks, uncheckedByOthers } from '../alone.ts';
import { aboutReading, type Context, takeIds } from '../context.ts';
import { belongs } from '../network.ts';
import type { Draft, Rule } from '../rule.ts';

/**
 * Nothing else in the piece would show it if this reading were wrong (`uncheckedByOthers`), and nobody has read it twice: stop,
 * for the cloth depends on it. A second take that agrees settles it. Nor is anything said of what was read at a mark before
 * it was moved, where no point rests on it; where one does, it wants a tape from elsewhere.
 * numbers: moved (label of the mark that was moved since, or null), now (label of the one in its place, or null).
 */
export const readingUnchecked: Rule = {
  key: 'reading-unchecked',
  find: (context) =>
    uncheckedByOthers(context)
      .filter(({ reading }) => agreeingLooks(context, reading) < 2)
      .filter(({ reading, used, flat }) => used || !(belongs(reading, flat) && movedMark(context, reading)))
      .map(({ reading }) => unchecked(context, reading)),
};

const unchecked = (context: Context, reading: SheetReading): Draft => ({
  severity: 'stop',
  piece: reading.piece,
  slot: context.slotOf(reading),
  subjects: [aboutReading(reading)],
  numbers: movedLabels(context, reading),
  basis: takeIds(reading),
});

/** The mark a reading was taken at that was moved since. */
const movedMark = (context: Context, { points, baseline = [] }: SheetReading): SheetPoint | null =>
  [...points, ...baseline].flatMap((id) => context.points.get(id) ?? []).find(({ replacedBy }) => replacedBy) ?? null;

function movedLabels(context: Context, reading: SheetReading): Record<'moved' | 'now', string | null> {
  const mark = movedMark(context, reading);
  return { moved: mark?.label ?? null, now: context.points.get(mark?.replacedBy ?? '')?.label ?? null };
}
