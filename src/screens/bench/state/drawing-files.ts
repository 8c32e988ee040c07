import { shownPlaces } from '../../../core/check/index.ts';
import type { SheetPiece } from '../../../core/job/index.ts';
import { packetFileName, writeTable } from '../../../core/packet/index.ts';
import { now } from '../../../device/clock.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { engineView } from './engine-view.ts';

/** What the bench can hand to other programs and people. */
export type FileForm = 'svg' | 'dxf-in' | 'dxf-mm' | 'points' | 'fasteners' | 'readings' | 'fittings';

export interface MadeFile {
  text: string;
  name: string;
  type: string;
}

/** Makes a file of a piece as it stands; null where there is nothing to draw. The drawing code comes when it is first used. */
export async function makeFile(job: OpenJob, piece: SheetPiece, form: FileForm): Promise<MadeFile | null> {
  const { dxfOf, fastenersCsv, fittingsCsv, pointsCsv, svgOf } = await import('../../../core/packet/drawing/index.ts');
  const { sketchPiece } = await import('../../../core/cloth/index.ts');
  const { sayDrawing } = await import('../../../text/drawing.ts');
  const { planOf } = await import('./plan-of.ts');
  const { sheet } = job;
  const shapeOf = (id: string) => engineView(job, id);
  const placesOf = (id: string) => sketchPiece(sheet, id, shownPlaces(shapeOf(id))).places;
  const base = packetFileName(sheet, { at: now() }).replace(/\.json$/, '');
  const file = (text: string, ending: string, type: string): MadeFile => ({ text, name: `${base}-${ending}`, type });
  if (form === 'points') return file(pointsCsv(sheet, { shapeOf, placesOf }), 'points.csv', 'text/csv');
  if (form === 'fasteners') return file(fastenersCsv(sheet, { shapeOf, placesOf }), 'fasteners.csv', 'text/csv');
  if (form === 'fittings') return file(fittingsCsv(sheet), 'fittings.csv', 'text/csv');
  if (form === 'readings') return file(writeTable(sheet), 'readings.csv', 'text/csv');
  const plan = planOf(job, piece.id);
  if (!plan) return null;
  if (form === 'svg') return file(svgOf(plan), `${piece.kind}.svg`, 'image/svg+xml');
  const unit = form === 'dxf-in' ? 'in' : 'mm';
  return file(dxfOf(plan, unit, sayDrawing().unit(unit)), `${piece.kind}-${unit}.dxf`, 'image/vnd.dxf');
}
