import type { Finding } from '../../core/check/index.ts';
import { nextOpen, type Step, stepsOf } from '../../core/guide/index.ts';
import { type Tally, tallyOf } from '../../core/guide/tally.ts';
import { timeLeft } from '../../core/guide/time-left.ts';
import type { Sheet } from '../../core/job/index.ts';
import type { Setting } from '../../device/store/index.ts';

export interface Progress {
  steps: readonly Step[];
  tally: Tally;
  left: ReturnType<typeof timeLeft>;
}

/** How far the whole job is, over all its pieces and every look at them. */
export function progressOf(sheet: Sheet, findings: readonly Finding[]): Progress {
  const steps = sheet.pieces.flatMap((piece) => stepsOf(sheet, piece.id));
  const tally = tallyOf(sheet, findings);
  const { all, done, last } = tally.again;
  return { steps, tally, left: timeLeft(steps, all - done + last) };
}

/** Where to go on: where the person was, if that still wants something; otherwise the next that does. */
export function whereToGoOn(sheet: Sheet, place: Setting<'place'> | null): { piece: string; step: Step } | null {
  const order = [...sheet.pieces].sort((a, b) => Number(b.id === place?.piece) - Number(a.id === place?.piece));
  for (const { id: piece } of order) {
    const steps = stepsOf(sheet, piece);
    const at = piece === place?.piece ? steps.findIndex(({ key }) => key === place.step) : -1;
    const step = nextOpen(steps, Math.max(-1, at - 1));
    if (step) return { piece, step };
  }
  return null;
}
