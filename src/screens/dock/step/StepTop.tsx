import type { Step } from '../../../core/guide/index.ts';
import type { SecondLook } from '../../../core/guide/second-looks.ts';
import { say } from '../../../text/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { TopBar } from '../../parts/TopBar.tsx';
import { stepTitle } from '../step-words.ts';
import type { Led } from './step-props.ts';

interface Props {
  job: OpenJob;
  piece: string;
  steps: readonly Step[];
  at: number;
  look: SecondLook | null;
  led: Led | undefined;
}

/** The line at the top of a step: its name, how far this is, and what stands in the way. */
export function StepTop({ job, piece, steps, at, look, led }: Props) {
  const words = say().dock.step;
  const step = steps[at];
  const title = step ? stepTitle(step, job.sheet) : '';
  const stops = job.findings.filter((f) => f.severity === 'stop' && f.piece === piece && !isMissing(f.rule)).length;
  const inTheWay = stops > 0 && look === null && (
    <a class="button plain stops" href={routeHash({ at: 'leave', job: job.id })}>
      {words.stops(stops)}
    </a>
  );
  if (led)
    return (
      <led.Top
        job={job}
        step={step?.key ?? ''}
        look={look}
        back={look ? { at: 'job', job: job.id } : { at: 'walk', job: job.id, piece }}
        title={title}
      >
        {inTheWay}
      </led.Top>
    );
  return (
    <>
      <TopBar back={{ at: 'walk', job: job.id, piece }} title={title}>
        {inTheWay}
        <a class="button plain number" href={routeHash({ at: 'walk', job: job.id, piece })}>
          <span class="sr-only">{words.all}, </span>
          {words.place(at + 1, steps.length)}
        </a>
      </TopBar>
      <progress class="walk-progress" max={steps.length} value={steps.filter((s) => s.state !== 'open').length}>
        {words.place(at + 1, steps.length)}
      </progress>
    </>
  );
}

const isMissing = (rule: string): boolean => rule.startsWith('missing-');
