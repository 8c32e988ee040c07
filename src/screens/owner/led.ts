import type { SecondLook } from '../../core/guide/second-looks.ts';
import type { Led } from '../dock/step/step-props.ts';
import { judged, openJob } from '../model/open-job.ts';
import { go, type Route } from '../model/route.ts';
import { looksDue } from '../model/second-looks.ts';
import { FirstLook, StepWords } from './FirstLook.tsx';
import { ownerInstruction } from './owner-words.ts';
import { whereToGoOn } from './progress.ts';
import { OwnerStepTop } from './StepTop.tsx';

/** Looks left for later since the page before them was read. */
let later: ReadonlySet<string> = new Set();

/** At the page before the looks all of them are to come again. */
export function beginLooks(): void {
  later = new Set();
}

const named = ({ reading, look }: SecondLook): string => `${look} ${reading}`;

/** The look that comes next, as its step; null where there is none, or every one was left for later. */
export function nextLook(): (SecondLook & { at: Route }) | null {
  const job = openJob.value;
  const next = looksDue.value.find((look) => !later.has(named(look)));
  const reading = job?.sheet.readings.find(({ id }) => id === next?.reading);
  if (!job || !next || !reading) return null;
  return { ...next, at: { at: 'step', job: job.id, piece: next.piece, step: reading.slot ?? reading.id } };
}

/** From a look to the next one, with a page between seconds and thirds; from the round to what is open, then to the looks. */
function beyond({ piece, step, look, asked }: Parameters<Led['goOn']>[0]): Route | null {
  const job = openJob.value;
  if (!job) return null;
  const next = nextLook();
  if (look) {
    // The same reading once more would be the same screen, emptied without a word: the page before the looks comes between.
    const goesOn = next?.look === look.look && next.reading !== look.reading;
    if (next) return goesOn ? next.at : { at: 'owner', job: job.id, page: 'again' };
    return { at: 'leave', job: job.id };
  }
  // Whoever answers the shop is led to nothing besides, but for a look that settles what was answered.
  if (asked) return next?.look === 3 ? { at: 'owner', job: job.id, page: 'again' } : { at: 'leave', job: job.id };
  const open = whereToGoOn(job.sheet, { job: job.id, piece, step });
  const elsewhere = open && (open.piece !== piece || open.step.key !== step);
  if (elsewhere) return { at: 'step', job: job.id, piece: open.piece, step: open.step.key };
  return looksDue.value.length > 0 ? { at: 'owner', job: job.id, page: 'again' } : { at: 'leave', job: job.id };
}

async function goOn(from: Parameters<Led['goOn']>[0]): Promise<void> {
  await judged();
  const to = beyond(from);
  if (to) go(to);
}

/** How an owner is led through the steps, and once more through what matters. */
export const led: Led = {
  First: FirstLook,
  Top: OwnerStepTop,
  Beside: StepWords,
  told: ownerInstruction,
  goOn: (from) => void goOn(from),
  leaveForLater: (look) => {
    later = new Set([...later, named(look)]);
    void goOn({ piece: look.piece, step: '', look, asked: false });
  },
};
