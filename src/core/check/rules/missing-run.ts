import type { SheetRun } from '../../job/index.ts';
import { type Context, takeIds } from '../context.ts';
import type { Draft, Rule } from '../rule.ts';
import { isSpaced, restOf, stationsOf } from '../stations.ts';

type Lack = 'stations' | 'line' | 'type' | 'presence' | 'rest';

/**
 * What a run still lacks. A needed run without stations, or that does not say what its line, its fasteners' type and their
 * presence are: stop (a note where the run is only wished for). A run nobody has touched lacks its stations only, so that it
 * is named once. Fasteners to be fitted later are planned, not measured: their run needs no stations. A run whose last
 * fastener lies further from the end than the widest spacing is not finished ('rest'): doubt.
 * The second subject is the detail that is missing.
 * numbers: lack ('stations', 'line', 'type', 'presence', 'rest'), rest (mm without a station, or null), whole (mm, or null).
 */
export const missingRun: Rule = {
  key: 'missing-run',
  find: (context) => context.sheet.runs.flatMap((run) => [...undetailed(context, run), ...unfinished(context, run)]),
};

function undetailed(context: Context, run: SheetRun): Draft[] {
  return lacksOf(context, run).map((lack) => ({
    ...about(run, lack),
    severity: run.needed ? 'stop' : 'note',
    numbers: { lack, rest: null, whole: null },
    basis: [],
  }));
}

const about = (run: SheetRun, lack: Lack): Pick<Draft, 'piece' | 'slot' | 'subjects'> => ({
  piece: run.piece,
  slot: run.slot ?? run.id,
  subjects: [
    { on: 'run', id: run.id },
    { on: 'detail', id: lack },
  ],
});

function lacksOf(context: Context, run: SheetRun): Lack[] {
  const stations = stationsOf(context, run);
  if (stations.length === 0 && run.line === null && run.type === null && run.presence === null) return ['stations'];
  const bare = stations.every((station) => station.fastener === null);
  const lacks: Lack[] = [];
  if (stations.length === 0 && run.presence !== 'planned') lacks.push('stations');
  if (run.line === null) lacks.push('line');
  if (run.type === null && bare) lacks.push('type');
  if (run.presence === null && bare) lacks.push('presence');
  return lacks;
}

function unfinished(context: Context, run: SheetRun): Draft[] {
  const { fastenerGap, slack, stopSigmas } = context.limits;
  const last = stationsOf(context, run).at(-1);
  const rest = restOf(context, run);
  if (!last || !rest || !isSpaced(run, last)) return [];
  if (rest.value <= fastenerGap.max * (1 + slack) + stopSigmas * rest.sigma) return [];
  return [
    {
      ...about(run, 'rest'),
      severity: 'doubt',
      numbers: { lack: 'rest', rest: rest.value, whole: rest.whole.value },
      basis: takeIds(rest.whole, ...rest.readings),
    },
  ];
}
