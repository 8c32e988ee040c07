import { sayWalk } from '../../text/walk.ts';
import { lookAgainAt, sharedPoint } from '../model/contradicted.ts';
import type { OpenJob } from '../model/open-job.ts';
import { actor } from '../model/services.ts';
import { pointLabel } from '../model/words.ts';

/** To an owner asked to look again at several readings of one point: the mark first, then the tape. */
export function SwapHint({ job }: { job: OpenJob }) {
  if (actor.value.role !== 'owner') return null;
  const point = sharedPoint(job.sheet, lookAgainAt(job.sheet, job.findings));
  return point && <p>{sayWalk().again.swapped(pointLabel(job.sheet, point))}</p>;
}
