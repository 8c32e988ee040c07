import type { SheetRun } from '../../job/index.ts';
import { aboutReading, type Context, takeIds } from '../context.ts';
import type { Severity } from '../finding.ts';
import type { Draft, Rule } from '../rule.ts';
import { reachOf, stationsOf, wholeOf } from '../stations.ts';
import { isRow, stretched } from '../stretched.ts';

/**
 * The stations of a run against its whole length. Cumulative: the last one lies beyond the whole: stop. Gap to gap: the gaps
 * are more than the whole: stop. They are less: stop when the last gap, up to the end, was measured too (a reading along
 * the run with no fastener of its own), otherwise doubt once the bare end is longer than the shop allows. A whole that was
 * taped straight is only the shortest way, so stations that reach beyond it are a doubt. A bare end longer than the
 * widest spacing is left to missing-run, and nothing is said while stations are unmeasured.
 * numbers: sum (last station, or all gaps), whole, difference (sum less whole), tolerance (of the tapes), manner
 * ('cumulative', 'gaps'), stations (how many).
 */
export const runSum: Rule = {
  key: 'run-sum',
  find: (context) => context.sheet.runs.flatMap((run) => compared(context, run)),
};

function compared(context: Context, run: SheetRun): Draft[] {
  const [whole, reach] = [wholeOf(context, run), reachOf(context, run)];
  if (!whole || !reach) return [];
  const difference = reach.value - whole.value;
  const tolerance = context.limits.stopSigmas * Math.hypot(reach.sigma, context.sigma(whole));
  const severity =
    difference > 0
      ? tooLong(difference, tolerance, whole.kind === 'straight')
      : tooShort(context, run, -difference, tolerance);
  if (severity === null) return [];
  return [
    {
      severity,
      piece: run.piece,
      slot: run.slot ?? run.id,
      subjects: [{ on: 'run', id: run.id }, aboutReading(whole)],
      numbers: {
        sum: reach.value,
        whole: whole.value,
        difference,
        tolerance,
        manner: run.manner,
        stations: run.stations.length,
      },
      basis: takeIds(whole, ...reach.readings),
    },
  ];
}

function tooLong(over: number, tolerance: number, straightWhole: boolean): Severity | null {
  if (over <= tolerance) return null;
  return straightWhole ? 'doubt' : 'stop';
}

function tooShort(context: Context, run: SheetRun, short: number, tolerance: number): Severity | null {
  if (run.manner === 'cumulative' || short <= tolerance) return null;
  const { fastenerEnd, fastenerGap, slack } = context.limits;
  const closed = stationsOf(context, run).some((station) => station.fastener === null);
  if (closed) return 'stop';
  // A zip, planned fasteners or nothing at the end leave no row that should reach it.
  const last = stretched(context, run).at(-1);
  if (last && !isRow(last)) return null;
  const share = 1 + slack;
  return short > fastenerEnd * share + tolerance && short <= fastenerGap.max * share + tolerance ? 'doubt' : null;
}
