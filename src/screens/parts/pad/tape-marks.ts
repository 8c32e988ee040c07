import type { Sheet } from '../../../core/job/index.ts';

export interface TapeNumber {
  readonly x: number;
  readonly text: string;
  /** The same place in feet and inches, or the metre; empty where the number says it all. */
  readonly beside: string;
  /** A whole foot or metre. */
  readonly whole: boolean;
}

export interface TapeMarks {
  /** Where the hook is; far to the left when it is out of sight. */
  readonly hook: number;
  /** Where the reading is; null when there is none. */
  readonly mark: number | null;
  /** Graduations; rank 0 is a whole inch or centimetre, 4 the finest. */
  readonly ticks: readonly { readonly x: number; readonly rank: number }[];
  readonly numbers: readonly TapeNumber[];
}

/** What is in sight when nothing is read: the hook and the first inches or centimetres. */
const AT_HOOK = 0.44;
/** A number nearer to the edge would be cut, and a cut number is misread. */
const MARGIN = 12;
/** What stands beside a number needs so much room to its right. */
const BESIDE = 52;

/** The graduations of a tape round a reading, across so many units of a drawing; below zero it lies on the other side. */
export function tapeAround(
  mm: number | null,
  { system, fraction }: Pick<Sheet, 'system' | 'fraction'>,
  width: number,
): TapeMarks {
  const imperial = system === 'imperial';
  const [unit, parts, span] = imperial ? [25.4, fraction, fraction === 8 ? 3 : fraction === 16 ? 2.5 : 2] : [10, 10, 6];
  const at = Math.abs(mm ?? AT_HOOK * span * unit) / unit;
  const left = at - span / 2;
  const x = (value: number): number => Math.round(((value - left) / span) * width * 10) / 10;
  const [from, to] = [Math.max(0, Math.ceil(left * parts)), Math.floor((left + span) * parts)];
  const marks = Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => from + i);
  return {
    hook: Math.max(-10, x(0)),
    mark: mm === null ? null : x(at),
    ticks: marks.map((mark) => ({ x: x(mark / parts), rank: rankOf(mark % parts, parts) })),
    numbers: marks
      .filter((mark) => mark > 0 && mark % parts === 0)
      .map((mark) => ({ x: x(mark / parts), ...numberAt(mark / parts, imperial) }))
      .filter((number) => number.x >= MARGIN && number.x <= width - MARGIN)
      .map((number) => (number.x > width - BESIDE ? { ...number, beside: '' } : number)),
  };
}

/** Halves reach further than quarters, quarters than eighths; on a metric tape, five millimetres further than one. */
function rankOf(place: number, parts: number): number {
  if (place === 0) return 0;
  if (parts === 10) return place === 5 ? 2 : 4;
  const rank = [2, 4, 8].findIndex((part) => (place * part) % parts === 0);
  return rank < 0 ? 4 : rank + 1;
}

/** Inches run on, with feet and inches beside; centimetres run on, with the metre beside. */
function numberAt(value: number, imperial: boolean): Omit<TapeNumber, 'x'> {
  const per = imperial ? 12 : 100;
  const [over, rest] = [Math.floor(value / per), value % per];
  const whole = rest === 0;
  const beside = over === 0 ? '' : whole ? `${over} ${imperial ? 'ft' : 'm'}` : imperial ? `${over}′${rest}` : '';
  return { text: String(value), beside, whole };
}
