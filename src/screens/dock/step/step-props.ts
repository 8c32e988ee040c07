import type { ComponentChildren, ComponentType } from 'preact';
import type { Step } from '../../../core/guide/index.ts';
import type { SecondLook } from '../../../core/guide/second-looks.ts';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import type { Route } from '../../model/route.ts';

/** What every kind of step gets. */
export interface StepProps<S extends Step['on']> {
  job: OpenJob;
  piece: string;
  step: Extract<Step, { on: S }>;
  /** Goes to the next step that still wants something. */
  onward: () => void;
  /** What must be read first: the shop's asking, cautions. */
  head: ComponentChildren;
  /** The buttons that leave the step without an answer. */
  moves: ComponentChildren;
  /** What this person is led by; nobody leads an installer. */
  led?: Led | undefined;
  /** The reading is to be read again, without what was read. */
  look?: SecondLook | null;
}

/** enter: on to the answer. */
export interface FirstProps extends Pick<StepProps<'reading'>, 'job' | 'piece' | 'head' | 'moves' | 'look'> {
  step: Step;
  enter: () => void;
}

/** step: its key. children: what else stands in the line. */
export interface TopProps {
  job: OpenJob;
  step: string;
  look: SecondLook | null;
  back: Route;
  title: string;
  children: ComponentChildren;
}

/** How somebody is led who has never measured. */
export interface Led {
  /** What is shown of a step before its answer is asked for. */
  First: ComponentType<FirstProps>;
  /** The line at the top of every step. */
  Top: ComponentType<TopProps>;
  /** What stands at the head of a step besides what must be read first. again: back to what is shown first. */
  Beside: ComponentType<{ job: OpenJob; step: Step; again: (() => void) | null }>;
  /** What to do with the tape, in everyday words. */
  told: (reading: SheetReading, sheet: Sheet) => { text: string; mistake: string | null };
  /** On where nothing of the piece is open any more, or from a look after the first. asked: the shop asked for the step. */
  goOn: (from: { piece: string; step: string; look: SecondLook | null; asked: boolean }) => void;
  /** On from a look that is left for later. */
  leaveForLater: (look: SecondLook) => void;
}
