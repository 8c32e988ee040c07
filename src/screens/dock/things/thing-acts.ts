import type { Obstruction, ObstructionKind, Payload, ReadingKind, Sheet, SizeOf } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { sayThings } from '../../../text/things.ts';
import { act, actAll, type Deed, deed } from '../../model/open-job.ts';
import { freeLabel, sizeReading } from './thing-view.ts';

/** Later steps of a thing stand with the question that asks for the list. */
const AFTER = 'in-the-way';

/** Lists a thing, with a point for its middle. Resolves to its id. */
export async function list(sheet: Sheet, piece: string, kind: ObstructionKind): Promise<string> {
  const [obstruction, point] = [uuid(), uuid()];
  const label = freeLabel(sheet, sayThings().letters[kind]);
  await actAll([
    deed('point.add', {
      piece,
      point: { id: point, label, slot: null, role: 'obstruction', sides: [], nominal: null },
    }),
    deed('obstruction.add', { obstruction, piece, kind, label, point }),
  ]);
  return obstruction;
}

interface Asked {
  kind: ReadingKind;
  points: string[];
  baseline?: string[];
}

const asking = (piece: string, asked: Asked): Deed =>
  deed('reading.add', { piece, reading: { id: uuid(), slot: null, needed: false, ...asked }, after: AFTER });

export async function tapeFrom({ piece, point }: Obstruction, hooks: readonly string[]): Promise<void> {
  if (point === null) return;
  await actAll(hooks.map((hook) => asking(piece, { kind: 'straight', points: [hook, point] })));
}

export async function measureOff({ piece, point }: Obstruction, baseline: readonly [string, string]): Promise<void> {
  if (point === null) return;
  await actAll(
    (['along', 'out'] as const).map((kind) => asking(piece, { kind, points: [point], baseline: [...baseline] })),
  );
}

/** Asks for a picture with the thing marked on it. */
export async function byPhoto({ piece, point }: Obstruction): Promise<void> {
  if (point === null) return;
  await act('shot.add', { piece, shot: { slot: `photo-${uuid()}`, points: [point], needed: false }, after: AFTER });
}

export type Typed = Pick<Payload<'take.add'>, 'text' | 'unit' | 'value'>;

/** A size is asked for when it is taken, so that no thing leaves a row of open sizes behind. */
export async function takeSize(sheet: Sheet, { id, piece }: Obstruction, of: SizeOf, typed: Typed): Promise<void> {
  const known = sizeReading(sheet, id, of);
  const reading = known?.id ?? uuid();
  const before = known?.takes.filter(({ struck }) => struck === null) ?? [];
  await actAll([
    ...(known
      ? []
      : [
          deed('reading.add', {
            piece,
            reading: { id: reading, slot: null, kind: 'size', points: [], of, obstruction: id, needed: false },
            after: AFTER,
          }),
        ]),
    ...before.map((take) => deed('take.strike', { take: take.id, reason: sayThings().record })),
    deed('take.add', { reading, ...typed }),
  ]);
}

/** Takes a thing off the list, with its point; what was read of it is set aside, not lost. */
export async function drop(sheet: Sheet, thing: Obstruction, reason: string): Promise<void> {
  const { id, piece, point } = thing;
  // Sizes go with the thing; tapes to its middle go with the point.
  const sizes = sheet.readings.filter(({ obstruction }) => obstruction === id);
  await actAll([
    deed('obstruction.drop', { obstruction: id, reason }),
    ...sizes.map((reading) => deed('reading.drop', { reading: reading.id, reason })),
    ...(point !== null ? [deed('point.drop', { piece, point, reason })] : []),
  ]);
}
