import type { Paper } from '../../../core/packet/drawing/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

/** How many sheets a flat piece takes in real size, or why it is not printed so. */
export type RealSize = { sheets: number; paper: Paper } | { refused: string };

/** The paper that somebody who measures in these units has. */
export const usualPaper = ({ sheet }: OpenJob): Paper => (sheet.system === 'metric' ? 'a4' : 'letter');

/** Null where there is nothing to draw. The drawing code comes when it is first used. */
export async function realSizeOf(job: OpenJob, piece: string): Promise<RealSize | null> {
  const { tilesFor } = await import('../../../core/packet/drawing/index.ts');
  const { sayTiles } = await import('../../../text/drawing.ts');
  const { planOf } = await import('./plan-of.ts');
  const drawing = planOf(job, piece);
  if (!drawing) return null;
  const paper = usualPaper(job);
  const offer = tilesFor(drawing, paper);
  return offer.ok ? { sheets: offer.tiling.tiles.length, paper } : { refused: sayTiles().refused(offer) };
}
