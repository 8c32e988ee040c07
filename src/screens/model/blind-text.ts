import type { Finding } from '../../core/check/index.ts';
import type { Sheet } from '../../core/job/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { subjectNames } from './findings.ts';

/** Rules that speak of what was never read: there is nothing in their words that could lead anybody. */
const OF_NOTHING_READ: ReadonlySet<string> = new Set(['missing-reading', 'unmeasured-reading']);

/**
 * What is said of a finding to whoever reads afresh: to look again, and at what, neither what was read nor by how much it is off.
 * What was never read is asked for as the first time. looksDue: a look at it is still to come. Null: its own words may be said.
 */
export function blindText(finding: Finding, sheet: Sheet, looksDue: boolean): string | null {
  const { rule, severity, subjects } = finding;
  if (rule === 'missing-second-look' || OF_NOTHING_READ.has(rule)) return null;
  const words = sayWalk().again;
  const named = subjectNames(finding, sheet).map((name, i) => ({ name, subject: subjects[i] }));
  const readings = named.filter(({ subject }) => subject?.on === 'reading');
  const names = readings.map(({ name }) => name);
  if (severity === 'note') return words.nothingToDo(names);
  const read = readings.filter(({ subject }) => wasRead(sheet, subject?.id ?? '')).map(({ name }) => name);
  if (read.length === 0) return words.firstAt(names);
  if (rule !== 'takes-disagree') return words.pleaseAt(read);
  return looksDue ? words.onceMore(names) : words.toShop(names);
}

const wasRead = ({ readings }: Sheet, id: string): boolean =>
  readings.some((reading) => reading.id === id && reading.takes.length > 0);
