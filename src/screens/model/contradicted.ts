import { computed } from '@preact/signals';
import type { Finding } from '../../core/check/index.ts';
import { wantsSecondLook } from '../../core/guide/second-looks.ts';
import type { Sheet } from '../../core/job/index.ts';
import { isMissing } from './findings.ts';
import { openJob } from './opened.ts';
import { actor } from './services.ts';

/** What the check doubts of what was read: not what is missing, nor what only wants its second look. */
const doubtsOfRead = (findings: readonly Finding[]): Finding[] =>
  findings.filter(
    (finding) =>
      finding.accepted === null && finding.severity !== 'note' && !wantsSecondLook(finding) && !isMissing(finding),
  );

const readingsIn = (findings: readonly Finding[]): string[] =>
  findings.flatMap(({ subjects }) => subjects.flatMap(({ on, id }) => (on === 'reading' ? [id] : [])));

/** Pieces with a reading that is doubted. */
export const piecesInDoubt = (findings: readonly Finding[]): ReadonlySet<string> =>
  new Set(
    doubtsOfRead(findings).flatMap((doubt) => (doubt.piece && readingsIn([doubt]).length > 0 ? [doubt.piece] : [])),
  );

/**
 * Pieces an owner is shown as the guide expects them: readings that contradict each other would bend the picture they go by.
 */
export const shownAsExpected = computed<ReadonlySet<string>>(() => {
  const job = openJob.value;
  return job && actor.value.role === 'owner' ? piecesInDoubt(job.findings) : new Set();
});

/** As many readings at one point as make it likelier that two marks are mixed up than that each was misread. */
const MIXED_UP = 3;

/** The point that most of these readings share, where enough of them do: its mark may have been swapped with another. */
export function sharedPoint({ readings }: Pick<Sheet, 'readings'>, ids: ReadonlySet<string>): string | null {
  const counts = new Map<string, number>();
  for (const { id, points } of readings)
    if (ids.has(id)) for (const point of points) counts.set(point, (counts.get(point) ?? 0) + 1);
  const [most] = [...counts].sort(([, a], [, b]) => b - a);
  return most && most[1] >= MIXED_UP ? most[0] : null;
}

/** What an owner is to look at again: what is doubted, and what the shop asks again of what was read. */
export const lookAgainAt = ({ asks, readings }: Pick<Sheet, 'asks' | 'readings'>, findings: readonly Finding[]) => {
  const read = new Set(readings.flatMap(({ id, takes }) => (takes.length > 0 ? [id] : [])));
  const asked = asks.flatMap(({ items }) =>
    items.flatMap(({ on, id, open }) => (open && on === 'reading' ? [id] : [])),
  );
  return new Set([...asked, ...readingsIn(doubtsOfRead(findings))].filter((id) => read.has(id)));
};
