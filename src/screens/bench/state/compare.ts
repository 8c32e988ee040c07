import { changesBetween, type Judged, type PieceChanges, twinsBySlot } from '../../../core/check/index.ts';
import { type Entry, fold } from '../../../core/job/index.ts';
import { judgeJob } from '../../../device/judge/index.ts';
import { whoText } from '../../model/job-words.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { store } from '../../model/services.ts';
import { orderOf } from './answers-since.ts';

/** A state the job was in, or another boat, to lay beside what is there now. */
export type Against = { as: 'asked' | 'cleared'; entry: string; at: string; who: string } | { as: 'job'; job: string };

/** The states somebody is likely to ask about: when the shop asked again, and when it cleared; the latest first. */
export function statesOf({ sheet }: OpenJob): Against[] {
  const asks = sheet.asks.map(({ id, at, who }) => ({ as: 'asked' as const, entry: id, at, who: whoText(who) }));
  const clearances = sheet.clearances.map(({ entry, at, who }) => ({
    as: 'cleared' as const,
    entry,
    at,
    who: whoText(who),
  }));
  return [...asks, ...clearances].sort((a, b) => (a.at < b.at ? 1 : -1));
}

/** What changed since, or what differs from the other boat. Null where the other job is not on this device. */
export async function compared(job: OpenJob, against: Against): Promise<PieceChanges[] | null> {
  const now: Judged = { sheet: job.sheet, findings: job.findings, pieces: job.pieces };
  if (against.as !== 'job') {
    const { causality } = orderOf(job.entries);
    const seen = causality.past(job.entries.find(({ id }) => id === against.entry)?.seen ?? []);
    return changesBetween(
      await judgedOf(
        job.id,
        job.entries.filter(({ id }) => seen.has(id)),
      ),
      now,
    );
  }
  const { entries } = await store().readJob(against.job);
  if (entries.length === 0) return null;
  const other = await judgedOf(against.job, entries);
  return changesBetween(other, now, twinsBySlot(other.sheet, now.sheet));
}

async function judgedOf(job: string, entries: readonly Entry[]): Promise<Judged> {
  const { findings, pieces } = await judgeJob(job, entries);
  return { sheet: fold(entries), findings, pieces };
}
