import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { Obstruction } from './sheet.ts';

/** The things in the way of the cloth, without those that were taken off the list. */
export function foldObstructions(gathered: Gathered, registers: Registers, { ids }: Pieces): Obstruction[] {
  const found = new Map<string, Obstruction>();
  const dropped = new Set(gathered.of('obstruction.drop').map(({ payload }) => payload.obstruction));
  for (const { entry, payload } of gathered.of('obstruction.add')) {
    const { obstruction: id, piece, kind, label, point } = payload;
    if (!ids.has(piece)) loose(gathered, entry);
    else if (!found.has(id))
      found.set(id, { id, piece, kind, label, point, treatment: null, needed: null, note: '', ...signed(entry) });
  }
  for (const { entry, payload } of gathered.of('obstruction.drop'))
    if (!found.has(payload.obstruction)) loose(gathered, entry);
  for (const { entry, payload } of gathered.of('obstruction.set')) {
    if (!found.has(payload.obstruction)) loose(gathered, entry);
    registers.set(`obstruction:${payload.obstruction}:${payload.field}`, entry, payload.value);
  }
  return [...found.values()]
    .filter(({ id }) => !dropped.has(id))
    .map((one): Obstruction => {
      const fact = (field: string): string | null =>
        registers.get(`obstruction:${one.id}:${field}`, {
          on: `obstruction.${field}`,
          piece: one.piece,
          subject: one.id,
        })?.value ?? null;
      return {
        ...one,
        treatment: fact('treatment') as Obstruction['treatment'],
        needed: fact('needed') as Obstruction['needed'],
        note: fact('note') ?? '',
      };
    });
}
