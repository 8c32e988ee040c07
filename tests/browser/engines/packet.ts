import { z } from 'zod';

const Entry = z.object({ id: z.string(), kind: z.string(), payload: z.record(z.string(), z.unknown()) });
const Packet = z.object({
  logbook: z.array(Entry),
  photos: z.array(z.object({ data: z.string() })),
});

/** What a packet says, as far as these tests ask. */
export interface Said {
  /** Every value typed, by the slot of its reading, in the order it was typed. */
  readonly takes: readonly (readonly [slot: string, text: string])[];
  readonly photos: number;
  readonly entries: number;
}

/** Reads what was typed out of a packet's logbook, and nothing that anybody computed from it. */
export function saidIn(text: string): Said {
  const { logbook, photos } = Packet.parse(JSON.parse(text));
  const Readings = z.array(z.object({ id: z.string(), slot: z.nullable(z.string()) }));
  const slots = new Map(
    logbook
      .filter(({ kind }) => kind === 'piece.add')
      .flatMap(({ payload }) => Readings.parse(payload.readings).map(({ id, slot }) => [id, slot ?? id] as const)),
  );
  const takes = logbook
    .filter(({ kind }) => kind === 'take.add')
    .map(({ payload }) => [slots.get(String(payload.reading)) ?? '', String(payload.text)] as const);
  return { takes, photos: photos.length, entries: logbook.length };
}
