import { aboutReading, type Context, isMeasured, liveTakes, type Measured, takeIds } from '../context.ts';
import { expectedOf } from '../layout.ts';
import { type Meaning, otherMeanings } from '../other-units.ts';
import type { Draft, Rule } from '../rule.ts';

/** How near another unit must bring a value to the layout (as a ratio) to be worth naming. */
const CLOSE = 1.6;
/** Readings of a piece that agree about its size among themselves, before one of them is called odd. */
const ENOUGH = 5;
/** Ratios: the spread of those readings, the least step of the odd one, and how well another unit must mend it. */
const CONSENT = 1.35;
const STEP = 2;
const MENDED = 1.25;

/**
 * A value no boat has. Zero or negative where that is impossible: stop. Outside what a kind of reading can be, many times
 * longer or shorter than the guide's layout, or far from what the piece's other readings make of that layout while
 * another unit would fit: doubt. The last is how cm for inches (2.54 times) shows.
 * numbers: value, low, high (what would have been plausible; radians for a lean), expected (on the layout, or null), unit
 * ('mm', 'cm', 'm', 'in', 'ft', 'feet-inches': the unit in which the typed text would make sense, or null), instead (the
 * value that would be, or null), quantity ('length', 'angle').
 */
export const implausibleValue: Rule = {
  key: 'implausible-value',
  find(context) {
    const layouts = layoutsOf(context);
    return context.sheet.readings.flatMap((reading) =>
      isMeasured(reading) ? (judged(context, reading, layouts) ?? []) : [],
    );
  },
};

interface Band {
  readonly low: number;
  readonly high: number;
}

function judged(context: Context, reading: Measured, layouts: Layouts): Draft | null {
  if (isImpossible(context, reading)) {
    const max = context.limits.plausible[reading.kind]?.max ?? 0;
    return drafted(context, reading, 'stop', { low: 0, high: max }, null, null);
  }
  const expected = layouts.expected.get(reading.id) ?? null;
  const band = bandOf(context, reading, expected);
  const meanings = meaningsOf(reading);
  if (band && (reading.value < band.low || reading.value > band.high))
    return drafted(context, reading, 'doubt', band, expected, likeliest(meanings, band, expected));
  if (expected === null) return null;
  const odd = oddOneOut(reading, expected, meanings, layouts);
  return odd && drafted(context, reading, 'doubt', odd.band, expected, odd.meaning);
}

/** Zero is a place along a run, and a height; it is no distance. */
function isImpossible(context: Context, { kind, value, run }: Measured): boolean {
  if (kind === 'straight' || kind === 'girth') return value <= 0;
  if (kind !== 'running') return false;
  return context.runs.get(run ?? '')?.manner === 'gaps' ? value <= 0 : value < 0;
}

function bandOf({ limits }: Context, { kind }: Measured, expected: number | null): Band | null {
  const usual = limits.plausible[kind];
  if (expected === null) return usual ? { low: usual.min, high: usual.max } : null;
  const band = { low: expected / limits.layoutRatio, high: expected * limits.layoutRatio };
  return usual ? { low: Math.max(band.low, usual.min), high: Math.min(band.high, usual.max) } : band;
}

/** Only the newest take is asked what else it may have meant: it is the one somebody still remembers typing. */
function meaningsOf(reading: Measured): Meaning[] {
  const take = liveTakes(reading).at(-1);
  return take && reading.kind !== 'lean' ? otherMeanings(take) : [];
}

function likeliest(meanings: readonly Meaning[], band: Band, expected: number | null): Meaning | null {
  const fitting = meanings.filter(({ value }) => value >= band.low && value <= band.high);
  if (expected === null) return fitting.length === 1 ? (fitting[0] ?? null) : null;
  const off = ({ value }: Meaning): number => Math.abs(Math.log(value / expected));
  const [best] = fitting.filter((meaning) => off(meaning) < Math.log(CLOSE)).sort((a, b) => off(a) - off(b));
  return best ?? null;
}

interface Layouts {
  readonly expected: ReadonlyMap<string, number>;
  /** By piece: how much longer than the layout each reading is, as a logarithm, sorted. */
  readonly scales: ReadonlyMap<string, readonly number[]>;
}

function layoutsOf(context: Context): Layouts {
  const expected = new Map<string, number>();
  const scales = new Map<string, number[]>();
  for (const reading of context.sheet.readings) {
    if (!isMeasured(reading) || reading.value <= 0) continue;
    const length = expectedOf(context, reading);
    if (length === null) continue;
    expected.set(reading.id, length);
    const list = scales.get(reading.piece) ?? [];
    list.push(Math.log(reading.value / length));
    scales.set(reading.piece, list);
  }
  for (const list of scales.values()) list.sort((a, b) => a - b);
  return { expected, scales };
}

/** A reading that breaks with the size all the others agree on, where another unit brings it back among them. */
function oddOneOut(
  reading: Measured,
  expected: number,
  meanings: readonly Meaning[],
  { scales }: Layouts,
): { band: Band; meaning: Meaning } | null {
  const own = Math.log(reading.value / expected);
  const all = scales.get(reading.piece) ?? [];
  const others = all.toSpliced(all.indexOf(own), 1);
  const middle = others[Math.floor(others.length / 2)];
  if (others.length < ENOUGH || middle === undefined) return null;
  if (Math.abs(own - middle) < Math.log(STEP)) return null;
  const near = others.filter((scale) => Math.abs(scale - middle) < Math.log(CONSENT));
  if (near.length < others.length * 0.8) return null;
  const off = ({ value }: Meaning): number => Math.abs(Math.log(value / expected) - middle);
  const [best] = meanings.filter((meaning) => off(meaning) < Math.log(MENDED)).sort((a, b) => off(a) - off(b));
  const usual = expected * Math.exp(middle);
  return best ? { meaning: best, band: { low: usual / STEP, high: usual * STEP } } : null;
}

function drafted(
  context: Context,
  reading: Measured,
  severity: 'stop' | 'doubt',
  { low, high }: Band,
  expected: number | null,
  meaning: Meaning | null,
): Draft {
  return {
    severity,
    piece: reading.piece,
    slot: context.slotOf(reading),
    subjects: [aboutReading(reading)],
    numbers: {
      value: reading.value,
      low,
      high,
      expected,
      unit: meaning?.unit ?? null,
      instead: meaning?.value ?? null,
      quantity: reading.kind === 'lean' ? 'angle' : 'length',
    },
    basis: takeIds(reading),
  };
}
