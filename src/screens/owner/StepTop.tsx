import { useRef } from 'preact/hooks';
import { tallyOf } from '../../core/guide/tally.ts';
import { sayReceipt } from '../../text/receipt.ts';
import { sayWalk } from '../../text/walk.ts';
import type { TopProps } from '../dock/step/step-props.ts';
import type { OpenJob } from '../model/open-job.ts';
import { againText, measurementsText } from '../model/tally-words.ts';
import { TopBar } from '../parts/TopBar.tsx';

/** At the top of an owner's step: its name, and how far the whole job is, in the words of the overview. */
export function OwnerStepTop({ job, step, look, back, title, children }: TopProps) {
  const tally = tallyOf(job.sheet, job.findings);
  const before = useBefore(job, step, tally.measurements.all);
  const measurements = measurementsText(tally);
  const words = sayReceipt().tally;
  const far =
    look?.look === 3
      ? sayWalk().again.left(tally.again.last)
      : look
        ? againText({ ...tally, again: { ...tally.again, last: 0 } })
        : before
          ? words.changed(measurements, before.all, before.byAnswer)
          : measurements;
  return (
    <>
      <TopBar
        back={back}
        title={title}
        under={
          <p class="small quiet how-far" role="status">
            {far}
          </p>
        }
      >
        {children}
      </TopBar>
      <progress class="walk-progress" max={tally.whole.all} value={tally.whole.done}>
        {far}
      </progress>
    </>
  );
}

interface Before {
  all: number;
  byAnswer: boolean;
}

/** As many measurements as were asked for when a step was last shown, whichever screens came between. */
let known: { job: string; all: number } | null = null;

/** How many were asked for before that number changed: told at the step where it did, and at the one after it. */
function useBefore(job: OpenJob, step: string, all: number): Before | null {
  const told = useRef<(Before & { at: string; next: string | null }) | null>(null);
  if (known?.job === job.id && known.all !== all)
    told.current = {
      all: known.all,
      byAnswer: job.entries.at(-1)?.kind === 'question.answer',
      at: step,
      next: null,
    };
  known = { job: job.id, all };
  const now = told.current;
  if (now && step !== now.at) {
    now.next ??= step;
    if (step !== now.next) told.current = null;
  }
  return told.current;
}
