import { isAsked } from '../../../core/check/index.ts';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { actAll, deed, type OpenJob } from '../../model/open-job.ts';

/** A taut tape between two points. */
export interface Tape {
  from: string;
  to: string;
}

/** The reading of a piece between two points, whichever way round, if somebody has asked for it already. */
export function straightBetween(sheet: Sheet, piece: string, { from, to }: Tape): SheetReading | undefined {
  return sheet.readings.find(
    ({ kind, piece: of, points }) =>
      of === piece && kind === 'straight' && points.length === 2 && points.includes(from) && points.includes(to),
  );
}

export function isTapeAsked(sheet: Sheet, piece: string, tape: Tape): boolean {
  const reading = straightBetween(sheet, piece, tape);
  return reading !== undefined && isAsked(sheet, piece, 'reading', reading.id);
}

/** Asks for tapes nobody has taken yet: each becomes a reading of the piece, and all are asked for in one go. */
export async function askForTapes({ sheet }: OpenJob, piece: string, tapes: readonly Tape[]): Promise<void> {
  const wanted = tapes.map((tape) => ({ tape, known: straightBetween(sheet, piece, tape)?.id }));
  const items = wanted.map(({ tape, known }) => ({ tape, known, id: known ?? uuid() }));
  const added = items.flatMap(({ tape, known, id }) =>
    known === undefined
      ? [
          deed('reading.add', {
            piece,
            reading: { id, slot: null, kind: 'straight', points: [tape.from, tape.to], needed: false },
          }),
        ]
      : [],
  );
  const ask = deed('ask.again', { piece, note: '', items: items.map(({ id }) => ({ on: 'reading', id, note: '' })) });
  if (items.length > 0) await actAll([...added, ask]);
}
