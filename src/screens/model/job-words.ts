import type { PieceKind, Who } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { isolated } from '../../text/isolated.ts';
import { locale } from '../../text/language.ts';
import { isKindsName } from '../../text/piece-names.ts';

/** What a job is called: by its own name, otherwise by customer and boat. */
export function jobTitle({ name, customer, boat }: Record<'name' | 'customer' | 'boat', string>): string {
  const { unnamed } = say().dock.jobs;
  // Jobs begun before customer and boat were known may carry these very words as their name.
  const own = name.trim() === unnamed ? '' : name.trim();
  return isolated(own) || [customer, boat].filter(Boolean).map(isolated).join(' – ') || unnamed;
}

export function dateText(iso: string): string {
  const date = new Date(iso);
  return Number.isNaN(date.getTime())
    ? iso
    : new Intl.DateTimeFormat(locale(), { dateStyle: 'medium', timeStyle: 'short' }).format(date);
}

export const whoText = (who: Who): string => isolated(who.name) || say().general.roles[who.role];

/** Bytes in the unit a person expects. */
export function bytesText(bytes: number): string {
  const units = ['B', 'kB', 'MB', 'GB'];
  const step = Math.min(units.length - 1, Math.floor(Math.log10(Math.max(1, bytes)) / 3));
  return `${new Intl.NumberFormat(locale(), { maximumFractionDigits: 1 }).format(bytes / 1000 ** step)} ${units[step]}`;
}

interface Named {
  kind: PieceKind;
  name: string;
}

/** A piece by the name somebody gave it, as it was typed, otherwise by its kind: to be written down. */
export const typedPieceName = ({ kind, name }: Named): string =>
  name.trim() === '' || isKindsName(kind, name) ? say().general.pieceKinds[kind] : name;

/** The same to be said in a sentence. */
export const pieceName = (piece: Named): string => isolated(typedPieceName(piece));
