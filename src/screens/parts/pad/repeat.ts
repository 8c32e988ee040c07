import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import type { MetricUnit } from './typing.ts';

/** The two halves of a reading as typed; each may be tapped again for the next one. */
export interface Halves {
  /** What stands before the fraction, as it is to be typed: `47`, `5' 8`, `47.` before decimals. */
  readonly whole: string;
  /** The fraction, or decimals. */
  readonly fraction: string;
}

let last: { job: string; reading: string } | null = null;

/** Remembers, until the app is closed, which reading was recorded last. */
export function recordedLast(job: string, reading: string): void {
  last = { job, reading };
}

/**
 * The halves of the reading recorded just before this one. A witness must not be led: nothing is offered for a second
 * look, for the same points in another manner, for the other side of the boat, or from a reading that was taken back or
 * is in doubt.
 */
export function halvesBefore(
  sheet: Pick<Sheet, 'readings' | 'pieces' | 'system'>,
  { job, reading, again, unit }: { job: string; reading: SheetReading; again: boolean; unit: MetricUnit },
  doubted: (reading: string) => boolean,
): Halves | null {
  if (last?.job !== job || last.reading === reading.id || again || reading.takes.length > 0) return null;
  const before = sheet.readings.find(({ id }) => id === last?.reading);
  const take = before?.takes.findLast(({ struck }) => !struck);
  if (!before || !take || before.kind !== reading.kind || before.piece !== reading.piece) return null;
  const pairs = sheet.pieces.find(({ id }) => id === reading.piece)?.pairs ?? [];
  if (isSamePlace(before, reading, []) || isSamePlace(before, reading, pairs) || doubted(before.id)) return null;
  return halvesOf(take.text, sheet.system === 'imperial' ? 'imperial' : unit);
}

/** The same points, or their mirror images. */
function isSamePlace(a: SheetReading, b: SheetReading, pairs: readonly (readonly [string, string])[]): boolean {
  const mirror = new Map(
    pairs.flatMap(([port, starboard]) => [
      [port, starboard],
      [starboard, port],
    ]),
  );
  const place = ({ points }: SheetReading, over: ReadonlyMap<string, string>): string =>
    points
      .map((point) => over.get(point) ?? point)
      .sort()
      .join();
  return place(a, mirror) === place(b, new Map());
}

/**
 * Null for a text that has no such halves: whole millimetres, say, where a half would be ten times too short, or decimals
 * in another unit than the pad stands on.
 */
export function halvesOf(text: string, on: 'imperial' | MetricUnit): Halves | null {
  if (on !== 'imperial') {
    const [, whole, fraction, unit = 'mm'] = /^(-?\d+\.)(\d+)(?: ?(mm|cm|m))?$/.exec(text) ?? [];
    return whole !== undefined && fraction !== undefined && unit === on ? { whole, fraction } : null;
  }
  const [, whole = '', fraction = ''] = /^(-?(?:\d+' ?)?\d*)(?: ?(\d+\/\d+))?$/.exec(text) ?? [];
  return /\d/.test(whole + fraction) ? { whole: whole.trimEnd(), fraction } : null;
}

/** What is offered now: one half at most, so that the other is always read off the tape. */
export function offered(text: string, { whole, fraction }: Halves, usedWhole: boolean): Halves {
  const open = whole.endsWith('.') ? /\d\.$/.test(text) : /\d'?\s*$/.test(text) && !/[/.]/.test(text);
  return { whole: text === '' ? whole : '', fraction: open && !usedWhole ? fraction : '' };
}
