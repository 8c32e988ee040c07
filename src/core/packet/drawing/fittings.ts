import type { Fitting, Sheet } from '../../job/index.ts';
import { writeCsv } from '../csv.ts';
import { digits, edgeOf, labelOf } from './cells.ts';

/**
 * What was found at the fitting, note by note: where, by how much longer (mm; shorter: negative) and as it was typed, why, the
 * sister boat it was learned on, and who noted it. Cells a spreadsheet would compute are written so that it does not.
 */
export function fittingsCsv(sheet: Sheet): string {
  const rows = sheet.fittings.map((note) => {
    const { piece, where, change, text, why, from, who, at } = note;
    return [
      sheet.pieces.find(({ id }) => id === piece)?.name ?? '',
      where?.on ?? 'piece',
      placeOf(note, sheet),
      change === null ? '' : digits(change),
      text,
      why,
      from ?? '',
      who.name,
      who.role,
      at,
    ];
  });
  const heads = ['piece', 'on', 'place', 'change mm', 'change', 'why', 'from boat', 'noted by', 'role', 'at'];
  return writeCsv([heads, ...rows]);
}

/** By the labels of its points, as edges are called in the list of fasteners; of a reading its kind before them. */
function placeOf({ where }: Fitting, sheet: Sheet): string {
  if (where === null) return '';
  if (where.on === 'point') return labelOf(sheet, where.id);
  if (where.on === 'run') return edgeOf(sheet, sheet.runs.find(({ id }) => id === where.id)?.points ?? []);
  const reading = sheet.readings.find(({ id }) => id === where.id);
  return reading
    ? [reading.kind, reading.points.map((id) => labelOf(sheet, id)).join('-')].filter(Boolean).join(' ')
    : '';
}
