import { useEffect, useRef, useState } from 'preact/hooks';
import { firstAsked, nextAsked, nextOpen, type Step, stepsOf } from '../../../core/guide/index.ts';
import type { SecondLook } from '../../../core/guide/second-looks.ts';
import { keepScreenOn } from '../../../device/wake-lock.ts';
import { say } from '../../../text/index.ts';
import { type OpenJob, openJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { fromOtherEnd, lookDue } from '../../model/second-looks.ts';
import { store } from '../../model/services.ts';
import { Later } from '../../parts/Later.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { photosAt } from '../step-words.ts';
import { CautionFirst, notUnderstood } from './CautionNote.tsx';
import { QuestionStep } from './QuestionStep.tsx';
import { ReadingStep } from './ReadingStep.tsx';
import { StepHead } from './StepHead.tsx';
import { StepTop } from './StepTop.tsx';
import type { Led, StepProps } from './step-props.ts';
import { UndoButton } from './UndoButton.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  stepKey: string;
  /** The pictures taken at the step, not the step itself. */
  photos: boolean;
  /** What this person is led by; nobody leads an installer. */
  led?: Led | undefined;
}

const loadPhotos = () => import('../photo/StepPhotos.tsx').then((m) => m.StepPhotos);

const loadFittings = () => import('../../parts/fitting/FittingsHere.tsx').then((m) => m.FittingsHere);

/** One stop on the walk. */
export function StepScreen({ job, piece, stepKey, photos, led }: Props) {
  const [entered, enter] = useState<string | null>(null);
  const steps = stepsOf(job.sheet, piece);
  const at = steps.findIndex((step) => step.key === stepKey);
  const step = steps[at];
  const look = useLook(step);
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
  const onward = (): void => onwardFrom({ job, piece, steps, at, led, look, asked: answering.current === stepKey });
  const aside = (offset: number): void => {
    const other = steps[at + offset];
    if (other) go({ at: 'step', job: job.id, piece, step: other.key });
    else go({ at: 'walk', job: job.id, piece });
  };
  const asks = step.on === 'reading' && look?.fromOtherEnd ? { ...step, reading: fromOtherEnd(step.reading) } : step;
  const { head, First } = whatComesFirst({ job, step: asks, led, entered, enter });
  const moves =
    led && look ? (
      <LookMoves later={() => led.leaveForLater(look)} />
    ) : (
      <Moves {...{ job, piece, step, beside: aside }} />
    );
  const careful = led ? notUnderstood(step.cautions) : [];
  const common = { job, piece, step: asks, head, moves, look };
  return (
    <div class="page step">
      <StepTop {...{ job, piece, steps, at, look, led }} />
      {careful.length > 0 ? (
        <CautionFirst cautions={careful} moves={moves} />
      ) : First ? (
        <First key={`first ${step.key}`} {...common} enter={() => enter(step.key)} />
      ) : (
        <StepBody key={step.key} {...common} led={led} onward={onward} />
      )}
    </div>
  );
}

interface From extends Pick<Props, 'job' | 'piece' | 'led'> {
  steps: readonly Step[];
  at: number;
  look: SecondLook | null;
  /** The shop asked for this step again. */
  asked: boolean;
}

function onwardFrom({ job, piece, steps, at, led, look, asked }: From): void {
  const step = steps[at]?.key ?? '';
  // What was answered may have changed the walk since this screen was drawn.
  const now = openJob.value?.id === job.id ? stepsOf(openJob.value.sheet, piece) : steps;
  const here = now.findIndex(({ key }) => key === step);
  const from = here < 0 ? Math.min(at, now.length) - 1 : here;
  const next = look ? null : asked ? nextAsked(now, from) : nextOpen(now, from);
  const beyond = asked ? firstAsked(job.sheet, piece) : null;
  if (next && next.key !== step) go({ at: 'step', job: job.id, piece, step: next.key });
  else if (beyond) go({ at: 'step', job: job.id, piece: beyond.piece, step: beyond.step.key });
  else if (led) led.goOn({ piece, step, look, asked });
  else go({ at: 'leave', job: job.id });
}

/** The look that is due at a step when it is come to; it stays one when it has been taken, until the step is left. */
function useLook(step: Step | undefined): SecondLook | null {
  const looking = useRef<SecondLook | null>(null);
  const reading = step?.on === 'reading' ? step.reading.id : '';
  const due = lookDue(reading);
  if (due) looking.current = due;
  return looking.current?.reading === reading ? looking.current : null;
}

interface Opening extends Pick<Props, 'job' | 'led'> {
  step: Step;
  /** The step whose answer is being asked for already. */
  entered: string | null;
  enter: (step: string | null) => void;
}

/** The head of a step, and what is shown in its place before the answer is asked for. */
function whatComesFirst({ job, step, led, entered, enter }: Opening) {
  const due = step.on === 'reading' && lookDue(step.reading.id) !== null;
  const wants = step.on !== 'question' && (step.state === 'open' || step.state === 'asked-again' || due);
  const First = wants && entered !== step.key ? led?.First : undefined;
  const again = led && wants && !First ? () => enter(null) : null;
  const Beside = led?.Beside;
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

/** Beside a look after the first: undo, and leaving it for later. The steps beside it show what was read. */
function LookMoves({ later }: { later: () => void }) {
  return (
    <>
      <span />
      <UndoButton />
      <button type="button" class="button plain" onClick={later}>
        {say().dock.step.skip}
      </button>
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

function NotInWalk({ job, piece }: { job: string; piece: string }) {
  return (
    <div class="page">
      <TopBar back={{ at: 'walk', job, piece }} title={say().dock.step.notInWalk} />
    </div>
  );
}
