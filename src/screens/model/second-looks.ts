import { computed } from '@preact/signals';
import { type SecondLook, secondLooks, wantsSecondLook } from '../../core/guide/second-looks.ts';
import type { SheetReading } from '../../core/job/index.ts';
import { openJob } from './opened.ts';
import { actor } from './services.ts';

/** What the owner at this device is still to read again, in order; nobody else is led through it. */
export const looksDue = computed<readonly SecondLook[]>(() => {
  const job = openJob.value;
  return job && actor.value.role === 'owner' ? secondLooks(job.sheet, job.findings) : [];
});

export const lookDue = (reading: string): SecondLook | null =>
  looksDue.value.find((look) => look.reading === reading) ?? null;

/**
 * Readings whose earlier value an owner is not shown anywhere, so that the next look is one of its own: those to be read
 * again, those the shop asks again, those the check doubts.
 */
export const hidden = computed<ReadonlySet<string>>(() => {
  const job = openJob.value;
  if (!job || actor.value.role !== 'owner') return new Set();
  const asked = job.sheet.asks.flatMap(({ items }) =>
    items.flatMap(({ on, id, open }) => (open && on === 'reading' ? [id] : [])),
  );
  const doubted = job.findings
    .filter((finding) => finding.accepted === null && finding.severity !== 'note' && !wantsSecondLook(finding))
    .flatMap(({ subjects }) => subjects.flatMap(({ on, id }) => (on === 'reading' ? [id] : [])));
  return new Set([...looksDue.value.map(({ reading }) => reading), ...asked, ...doubted]);
});

/** The same reading with the tape hooked where it was read before. A guide's own sentence would hook it at the first end. */
export const fromOtherEnd = (reading: SheetReading): SheetReading => ({
  ...reading,
  slot: null,
  points: [...reading.points].reverse(),
  ...(reading.via === undefined ? {} : { via: [...reading.via].reverse() }),
});
