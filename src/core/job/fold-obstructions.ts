import type { Pieces } from './fold-pieces.ts';
import { type Gathered, loose, signed } from './gather.ts';
import type { Registers } from './registers.ts';
import type { Obstruction, SheetPoint } from './sheet.ts';

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
    if (payload.field !== 'near')
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

/** The middles of things in the way as they were last pointed at. */
export function pointedAt(
  gathered: Gathered,
  obstructions: readonly Obstruction[],
  points: readonly SheetPoint[],
): SheetPoint[] {
  const places = new Map<string, SheetPoint['nominal']>();
  for (const { payload } of gathered.of('obstruction.set')) {
    const point = obstructions.find(({ id }) => id === payload.obstruction)?.point;
    if (point && payload.field === 'near') places.set(point, payload.value);
  }
  return points.map((point) => ({ ...point, nominal: places.get(point.id) ?? point.nominal }));
}
