import { signal } from '@preact/signals';
import type { Entry, Sheet } from '../../core/job/index.ts';
import type { JobJudgement } from '../../device/judge/index.ts';
import type { JobSummary } from '../../device/store/index.ts';

/** The job on the screen: its logbook and what follows from it. */
export interface OpenJob extends JobJudgement {
  id: string;
  entries: readonly Entry[];
  sheet: Sheet;
  /** The judgement is of these very entries, not of a moment before. Nothing is cleared while it is not. */
  judged: boolean;
  /** Entries on disk that could not be read; left as they are. */
  damaged: number;
  /** For its line in the list. */
  summary: () => Partial<JobSummary>;
}

export const openJob = signal<OpenJob | null>(null);
