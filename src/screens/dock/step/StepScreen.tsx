import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { firstAsked, nextAsked, nextOpen, type Step, stepsOf } from '../../../core/guide/index.ts';
import { keepScreenOn } from '../../../device/wake-lock.ts';
import { say } from '../../../text/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { store } from '../../model/services.ts';
import { Later } from '../../parts/Later.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { photosAt, stepTitle } from '../step-words.ts';
import { QuestionStep } from './QuestionStep.tsx';
import { ReadingStep } from './ReadingStep.tsx';
import { StepHead } from './StepHead.tsx';
import type { StepProps } from './step-props.ts';
import { UndoButton } from './UndoButton.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  stepKey: string;
  /** The pictures taken at the step, not the step itself. */
  photos: boolean;
  /** What is shown of a step before its answer is asked for, where this person is shown something. */
  first?: ComponentType<FirstProps> | undefined;
  /** What stands at the head of a step besides what must be read first. again: back to what is shown first. */
  beside?: ComponentType<{ job: OpenJob; step: Step; again: (() => void) | null }> | undefined;
}

/** enter: on to the answer. */
export interface FirstProps extends Pick<StepProps<'reading'>, 'job' | 'piece' | 'head' | 'moves'> {
  step: Step;
  enter: () => void;
}

const loadPhotos = () => import('../photo/StepPhotos.tsx').then((m) => m.StepPhotos);

const loadFittings = () => import('../../parts/fitting/FittingsHere.tsx').then((m) => m.FittingsHere);

/** One stop on the walk. */
export function StepScreen({ job, piece, stepKey, photos, first, beside }: Props) {
  const [entered, enter] = useState<string | null>(null);
  const steps = stepsOf(job.sheet, piece);
  const at = steps.findIndex((step) => step.key === stepKey);
  const step = steps[at];
  const answering = useRef<string | null>(null);
  useEffect(() => keepScreenOn(), []);
  useEffect(() => {
    if (step)
      void store()
        .settings.set('place', { job: job.id, piece, step: stepKey })
        .catch(() => undefined);
  }, [job.id, piece, stepKey, step === undefined]);
  if (!step) return <NotInWalk job={job.id} piece={piece} />;
  if (photos && (step.on === 'reading' || step.on === 'run'))
    return <Later key={`photos ${step.key}`} load={loadPhotos} props={{ job, piece, step }} />;
  // Whoever came to answer the shop is led to what else it asks and to nothing besides; it is answered by the first look.
  if (step.state === 'asked-again') answering.current = stepKey;
  const onward = (): void => {
    const asked = answering.current === stepKey;
    const next = asked ? nextAsked(steps, at) : nextOpen(steps, at);
    const beyond = asked ? firstAsked(job.sheet, piece) : null;
    if (next && next.key !== step.key) go({ at: 'step', job: job.id, piece, step: next.key });
    else if (beyond) go({ at: 'step', job: job.id, piece: beyond.piece, step: beyond.step.key });
    else go({ at: 'leave', job: job.id });
  };
  const aside = (offset: number): void => {
    const other = steps[at + offset];
    if (other) go({ at: 'step', job: job.id, piece, step: other.key });
    else go({ at: 'walk', job: job.id, piece });
  };
  const { head, First } = whatComesFirst({ job, step, first, beside, entered, enter });
  const moves = <Moves {...{ job, piece, step, beside: aside }} />;
  return (
    <div class="page step">
      <StepTop job={job} piece={piece} steps={steps} at={at} />
      {First ? (
        <First key={`first ${step.key}`} {...{ job, piece, step, head, moves }} enter={() => enter(step.key)} />
      ) : (
        <StepBody key={step.key} {...{ job, piece, step, onward, head, moves }} />
      )}
    </div>
  );
}

interface Opening extends Pick<Props, 'job' | 'first' | 'beside'> {
  step: Step;
  /** The step whose answer is being asked for already. */
  entered: string | null;
  enter: (step: string | null) => void;
}

/** The head of a step, and what is shown in its place before the answer is asked for. */
function whatComesFirst({ job, step, first, beside: Beside, entered, enter }: Opening) {
  const wants = step.on !== 'question' && (step.state === 'open' || step.state === 'asked-again');
  const First = wants && entered !== step.key ? first : undefined;
  const again = first && wants && !First ? () => enter(null) : null;
  const head = (
    <>
      <StepHead step={step} />
      {job.sheet.fittings.length > 0 && <Later key={`fitting ${step.key}`} load={loadFittings} props={{ job, step }} />}
      {Beside && <Beside key={step.key} job={job} step={step} again={again} />}
    </>
  );
  return { head, First };
}

/** Beside what is being done: a step back, undo, a step on without an answer, and pictures nobody asked for. */
function Moves(props: { job: OpenJob; piece: string; step: Step; beside: (offset: number) => void }) {
  const { job, piece, step, beside } = props;
  const words = say().dock.step;
  const taken = photosAt(step, job.sheet).length;
  return (
    <>
      <button type="button" class="button plain" onClick={() => beside(-1)}>
        {words.back}
      </button>
      <UndoButton />
      <button type="button" class="button plain" onClick={() => beside(1)}>
        {words.skip}
      </button>
      {(step.on === 'reading' || step.on === 'run') && (
        <a class="button plain" href={routeHash({ at: 'step', job: job.id, piece, step: step.key, photos: true })}>
          {words.photo}
          {taken > 0 && <span class="small number"> {taken}</span>}
        </a>
      )}
    </>
  );
}

function StepBody({ step, ...rest }: Omit<StepProps<'reading'>, 'step'> & { step: Step }) {
  switch (step.on) {
    case 'reading':
      return <ReadingStep step={step} {...rest} />;
    case 'shot':
      return <Later load={() => import('./ShotStep.tsx').then((m) => m.ShotStep)} props={{ step, ...rest }} />;
    case 'question':
      return <QuestionStep step={step} {...rest} />;
    case 'run':
      return <Later load={() => import('./RunStep.tsx').then((m) => m.RunStep)} props={{ step, ...rest }} />;
  }
}

function StepTop({ job, piece, steps, at }: { job: OpenJob; piece: string; steps: readonly Step[]; at: number }) {
  const words = say().dock.step;
  const step = steps[at];
  const stops = job.findings.filter((f) => f.severity === 'stop' && f.piece === piece && !isMissing(f.rule)).length;
  return (
    <>
      <TopBar back={{ at: 'walk', job: job.id, piece }} title={step ? stepTitle(step, job.sheet) : ''}>
        {stops > 0 && (
          <a class="button plain stops" href={routeHash({ at: 'leave', job: job.id })}>
            {words.stops(stops)}
          </a>
        )}
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

function NotInWalk({ job, piece }: { job: string; piece: string }) {
  return (
    <div class="page">
      <TopBar back={{ at: 'walk', job, piece }} title={say().dock.step.notInWalk} />
    </div>
  );
}
