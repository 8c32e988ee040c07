import type { ComponentChildren } from 'preact';
import type { Step } from '../../../core/guide/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

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
}
