import type { SheetPhoto, SheetPiece } from '../../../core/job/index.ts';
import type { Drawing, Paper, PieceFacts, ScaledPlan } from '../../../core/packet/drawing/index.ts';
import type { OpenJob } from '../../model/open-job.ts';

/** What goes on a job sheet. urls: the photos that are on this device, by hash. */
export interface SheetContent {
  readonly job: OpenJob;
  readonly piece: SheetPiece;
  readonly drawing: Drawing | null;
  readonly plan: ScaledPlan | null;
  readonly facts: PieceFacts;
  readonly paper: Paper;
  readonly photos: readonly SheetPhoto[];
  readonly urls: ReadonlyMap<string, string>;
}

/** Between the margins of a page, mm; the style sheet has the same. */
export const WIDTHS: Readonly<Record<Paper, number>> = { a4: 190, letter: 195.9 };
