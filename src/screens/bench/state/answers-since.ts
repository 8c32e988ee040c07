import type { Ask, Entry } from '../../../core/job/index.ts';
import { Causality, causalOrder } from '../../../core/job/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { entrySubjects } from './entry-subjects.ts';

const ANSWERS = new Set([
  'take.add',
  'take.strike',
  'reading.answer',
  'fastener.add',
  'run.detail',
  'photo.add',
  'photo.answer',
  'photo.mark',
  'question.answer',
]);

const orders = new WeakMap<readonly Entry[], { ordered: Entry[]; causality: Causality }>();

/** The logbook in causal order, worked out once for each state of a job. */
export function orderOf(entries: readonly Entry[]): { ordered: Entry[]; causality: Causality } {
  const known = orders.get(entries);
  if (known) return known;
  const made = { ordered: causalOrder(entries), causality: new Causality(entries) };
  orders.set(entries, made);
  return made;
}

/** What was done about a thing by those who knew that it was asked again. */
export function answersSince(job: OpenJob, ask: Ask, item: Ask['items'][number]): Entry[] {
  const { ordered, causality } = orderOf(job.entries);
  const readings =
    item.on === 'run' ? new Set(job.sheet.runs.find(({ id }) => id === item.id)?.stations) : new Set<string>();
  return ordered.filter(
    (entry) =>
      ANSWERS.has(entry.kind) &&
      samePiece(entry, ask.piece) &&
      entrySubjects(entry, job.sheet).some(
        ({ on, id }) => (on === item.on && id === item.id) || (on === 'reading' && readings.has(id)),
      ) &&
      causality.saw(entry.id, ask.id),
  );
}

const samePiece = ({ payload }: Entry, piece: string): boolean =>
  typeof payload.piece !== 'string' || payload.piece === piece;
