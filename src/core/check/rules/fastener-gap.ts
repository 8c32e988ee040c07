import type { SheetRun } from '../../job/index.ts';
import { aboutReading, type Context, isMeasured, type Measured, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';
import { isSpaced, neighbours, restOf, type Station, stationsOf } from '../stations.ts';
import { isRow, stretched, together } from '../stretched.ts';

/**
 * Spacing of fasteners outside the shop's limits (defaults: common practice, no source), with a little slack: doubt. Where
 * most gaps of a run are so, the boat is simply spaced that way: one doubt about the run. First or last fastener further
 * from the end of its run than the shop likes: note; a last one much further is missing-run's or run-sum's matter.
 * Subjects: the reading(s) and the run, the run's end point for an end, or the run alone.
 * numbers: about ('gap', 'run', 'first', 'last'), gap (mm; the one furthest out for a run), min, max (limits; min null for an
 * end), gaps (how many are out of the limits; 1 for a gap or an end).
 */
export const fastenerGap: Rule = {
  key: 'fastener-gap',
  find: (context) => context.sheet.runs.flatMap((run) => [...spacing(context, run), ...ends(context, run)]),
};

interface Gap {
  readonly readings: readonly Measured[];
  readonly value: number;
}

function spacing(context: Context, run: SheetRun): Draft[] {
  const { min, max } = context.limits.fastenerGap;
  const { slack } = context.limits;
  const all = gapsOf(context, run);
  const out = all.filter((gap) => gap.value < min * (1 - slack) || gap.value > max * (1 + slack));
  const draft = (about: 'gap' | 'run', gap: Gap, readings: readonly Measured[], gaps: number): Draft => ({
    severity: 'doubt',
    piece: run.piece,
    slot: run.slot ?? run.id,
    subjects: [...(about === 'gap' ? gap.readings.map(aboutReading) : []), { on: 'run', id: run.id }],
    numbers: { about, gap: gap.value, min, max, gaps },
    basis: takeIds(...readings),
  });
  const [first] = out;
  if (!first) return [];
  if (out.length <= 2 || out.length * 2 <= all.length) return out.map((gap) => draft('gap', gap, gap.readings, 1));
  const far = (gap: Gap): number => Math.max(min - gap.value, gap.value - max);
  const worst = out.reduce((most, gap) => (far(gap) > far(most) ? gap : most), first);
  return [
    draft(
      'run',
      worst,
      out.flatMap((gap) => gap.readings),
      out.length,
    ),
  ];
}

/** Spacing between neighbouring fasteners of one stretch that were measured and lie in order. */
function gapsOf(context: Context, run: SheetRun): Gap[] {
  const parts = stretched(context, run);
  return neighbours(stationsOf(context, run)).flatMap(([before, station]): Gap[] => {
    const [from, to] = [before.reading, station.reading];
    if (!isSpaced(run, before) || !isSpaced(run, station) || !isMeasured(to)) return [];
    if (!together(parts, before.fastener, station.fastener)) return [];
    if (run.manner === 'gaps') return to.value > 0 ? [{ readings: [to], value: to.value }] : [];
    return isMeasured(from) && to.value > from.value ? [{ readings: [to, from], value: to.value - from.value }] : [];
  });
}

function ends(context: Context, run: SheetRun): Draft[] {
  const stations = stationsOf(context, run).filter((station) => station.fastener !== null);
  const [first, last] = [stations[0], stations.at(-1)];
  const limit = context.limits.fastenerEnd;
  const allowed = limit * (1 + context.limits.slack);
  const drafts: Draft[] = [];
  const add = (about: 'first' | 'last', point: string, station: Station, gap: number, readings: readonly Measured[]) =>
    drafts.push({
      severity: 'note',
      piece: run.piece,
      slot: run.slot ?? run.id,
      subjects: [aboutReading(station.reading), { on: 'point', id: point }, { on: 'run', id: run.id }],
      numbers: { about, gap, min: null, max: limit, gaps: 1 },
      basis: takeIds(...readings),
    });
  const [from, to] = [run.points[0], run.points.at(-1)];
  const parts = stretched(context, run);
  const isIn = (part: (typeof parts)[number] | undefined, { fastener }: Station): boolean =>
    part !== undefined && isRow(part) && fastener !== null && part.fasteners.includes(fastener);
  if (
    first &&
    from &&
    isIn(parts[0], first) &&
    isSpaced(run, first) &&
    isMeasured(first.reading) &&
    first.reading.value > allowed
  )
    add('first', from, first, first.reading.value, [first.reading]);
  const rest = run.manner === 'cumulative' ? restOf(context, run) : null;
  const widest = context.limits.fastenerGap.max * (1 + context.limits.slack);
  if (
    last &&
    to &&
    rest &&
    isIn(parts.at(-1), last) &&
    isSpaced(run, last) &&
    rest.value > allowed &&
    rest.value <= widest
  )
    add('last', to, last, rest.value, [...rest.readings, rest.whole]);
  return drafts;
}
