import { formatLength } from '../../length/index.ts';
import type { PieceDeclaration, PointDeclaration } from '../declarations.ts';
import type { Entry, Payload } from '../entries.ts';
import { fold } from '../fold.ts';
import type { Sheet, SheetReading } from '../sheet.ts';
import { FACT_KINDS } from '../words.ts';
import { declarationOf } from './declaration-of.ts';
import { freshIds, renamed } from './renamed.ts';

type Place = NonNullable<PointDeclaration['nominal']>;

/** What a job for a sister boat begins with, as payloads: the pieces first, then what refers to them. */
export interface SisterStart {
  readonly pieces: readonly PieceDeclaration[];
  readonly obstructions: readonly Payload<'obstruction.add'>[];
  readonly expected: readonly Payload<'reading.expect'>[];
  /** What was learned when the pieces were fitted, here or on a sister before. */
  readonly fittings: readonly Payload<'fitting.note'>[];
}

export interface SisterOptions {
  readonly newId: () => string;
  /** What the boat is called that was measured. */
  readonly from: string;
  /** Readings that something speaks against: nothing is compared with those. */
  readonly doubted?: ReadonlySet<string>;
  /** Where its points were found to lie; a better layout to draw by than the guide's. */
  readonly places?: ReadonlyMap<string, Place>;
}

/**
 * The start of a job for a boat of the same kind: the same pieces, points, readings and things in the way under new ids, and
 * what was measured as values to compare with, and what was found at the fitting. Nothing else that somebody took,
 * photographed, answered or said goes along, and no person's name.
 */
export function sisterOf(
  entries: readonly Entry[],
  { newId, from, doubted = new Set(), places = new Map() }: SisterOptions,
): SisterStart {
  const sheet = fold(entries);
  const idOf = freshIds(newId);
  const declared = sheet.pieces.flatMap(({ id }) => declarationOf(entries, id) ?? []);
  const asked = new Set(declared.flatMap(({ readings }) => readings.map(({ id }) => id)));
  return {
    pieces: declared.map((piece) => renamed(laidOut(piece, places), idOf)),
    obstructions: sheet.obstructions.map(({ id, piece, kind, label, point }) => ({
      obstruction: idOf(id),
      piece: idOf(piece),
      kind,
      label,
      point: point === null ? null : idOf(point),
    })),
    expected: sheet.readings
      .filter(({ id }) => asked.has(id) && !doubted.has(id))
      .flatMap((reading) => {
        const known = knownOf(reading, sheet);
        return known ? [{ reading: idOf(reading.id), ...known, from }] : [];
      }),
    fittings: fittingsOf(sheet, declared, idOf, from),
  };
}

/** A note about something that is not asked any more is about the piece. */
function fittingsOf(
  sheet: Sheet,
  declared: readonly PieceDeclaration[],
  idOf: (id: string) => string,
  from: string,
): Payload<'fitting.note'>[] {
  const known = new Set(
    declared.flatMap(({ points, readings, runs }) => [...points, ...readings, ...runs].map(({ id }) => id)),
  );
  const pieces = new Set(declared.map(({ id }) => id));
  return sheet.fittings
    .filter(({ piece }) => pieces.has(piece))
    .map(({ piece, where, change, text, why, from: before }) => ({
      piece: idOf(piece),
      where: where && known.has(where.id) ? { on: where.on, id: idOf(where.id) } : null,
      change,
      text,
      why,
      from: before ?? from,
    }));
}

function laidOut(piece: PieceDeclaration, places: ReadonlyMap<string, Place>): PieceDeclaration {
  const points = piece.points.map((point) => ({ ...point, nominal: places.get(point.id) ?? point.nominal }));
  return { ...piece, points };
}

/** The value of a reading that was taped; one that somebody only supposed was not. */
function knownOf(reading: SheetReading, sheet: Sheet): { value: number; text: string } | null {
  const { value, kind } = reading;
  if (value === null || reading.supposed || FACT_KINDS.has(kind)) return null;
  const live = reading.takes.filter((take) => take.struck === null);
  const [only] = live;
  return { value, text: live.length === 1 && only ? only.text : written(value, kind, sheet) };
}

function written(value: number, kind: SheetReading['kind'], { system, fraction }: Sheet): string {
  if (kind === 'lean') return ((value * 180) / Math.PI).toFixed(1);
  return system === 'metric'
    ? formatLength(value, { system, unit: 'mm' })
    : formatLength(value, { system, denominator: fraction, feet: 'never' });
}
