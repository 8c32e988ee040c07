import type { PieceJudgement } from '../../core/check/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import type { OpenJob } from './open-job.ts';
import { lengthText } from './words.ts';

export { adjustedPlaces } from '../../core/check/piece-judgement.ts';

type Solved = Extract<PieceJudgement['adjustment'], { state: 'solved' }>;

/** The adjusted shape of a piece; null while the engine does not have it. */
function solved(job: OpenJob, piece: string): Solved['solution'] | null {
  const adjustment = job.pieces.get(piece)?.adjustment;
  return adjustment?.state === 'solved' ? adjustment.solution : null;
}

/**
 * How sure the least sure point the cloth depends on is, mm at 95 %, over all pieces; null when the engine does not have
 * every piece of the job.
 */
export function worstSureness(job: OpenJob): number | null {
  let worst = 0;
  for (const piece of job.sheet.pieces) {
    const solution = solved(job, piece.id);
    if (!solution) return null;
    const needed = new Set(
      job.pieces
        .get(piece.id)
        ?.network.points.filter((p) => p.needed)
        .map((p) => p.id),
    );
    for (const point of solution.points) if (needed.has(point.id)) worst = Math.max(worst, point.relative95 ?? 0);
  }
  return worst;
}

/** How sure a point is, mm at 95 % from its neighbours and marks; 'floats' when the readings do not fix it; null when unknown. */
export function surenessOf(judgement: PieceJudgement | undefined, point: string): number | 'floats' | null {
  const adjustment = judgement?.adjustment;
  if (!judgement || !adjustment || adjustment.state === 'did-not-converge') return null;
  const result = adjustment.solution.points.find((candidate) => candidate.id === point);
  if (!result) return judgement.things.get(point)?.sure ?? null;
  return result.state === 'floating' ? 'floats' : result.relative95;
}

/** A sureness is never shown smaller than it is: up to the next mark of the tape. */
export function sureText(mm: number, sheet: Pick<Sheet, 'system' | 'fraction'>): string {
  const mark = sheet.system === 'metric' ? 1 : 25.4 / sheet.fraction;
  return lengthText(Math.ceil(mm / mark) * mark, sheet);
}
