import type { OpenJob } from '../../model/open-job.ts';

/** What every way of changing a piece gets. */
export interface ChangeProps {
  job: OpenJob;
  piece: string;
}
