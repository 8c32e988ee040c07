import type { Fitting, Sheet } from '../../../core/job/index.ts';
import { sayFitting } from '../../../text/fitting.ts';
import { pointLabel, readingName, runTitle } from '../../model/words.ts';

type Note = Pick<Fitting, 'where' | 'text' | 'why'>;

/** What a note is about, by the name people know it by. */
export function fittingWhere(sheet: Sheet, { where }: Note): string {
  if (where === null) return sayFitting().piece;
  const reading = sheet.readings.find(({ id }) => id === where.id);
  const run = sheet.runs.find(({ id }) => id === where.id);
  if (where.on === 'reading') return reading ? readingName(reading, sheet) : '?';
  if (where.on === 'run') return run ? runTitle(sheet, run) : '?';
  return pointLabel(sheet, where.id);
}

/** The change as it was typed, and why. */
export const fittingWhat = ({ text, why }: Note): string => sayFitting().what(text, why);
