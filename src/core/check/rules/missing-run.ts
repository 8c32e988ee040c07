import { lacksOfStretch, type SheetRun, type StretchLack } from '../../job/index.ts';
import { type Context, takeIds } from '../context.ts';
import type { Severity } from '../finding.ts';
import type { Draft, Rule } from '../rule.ts';
import { isSpaced, restOf, type Station, stationsOf } from '../stations.ts';
import { type Stretched, stretched } from '../stretched.ts';

type Lack = StretchLack | 'line' | 'rest';

/** What the bench can settle without the boat is a note; what only the boat can tell, and the shop may do without, a doubt. */
const LESSER: Partial<Record<Lack, Severity>> = { count: 'doubt', into: 'doubt', setter: 'note' };

/**
 * What a run still lacks. A needed run without stations, or that does not say what its line is, and of each stretch what
 * closes it, whether that is there, and where: stop (a note where the run is only wished for). A run nobody has touched lacks
 * its stations only, so that it is named once. Fasteners to be fitted later are planned, not measured; a zip, a track or a
 * boltrope wants its ends and which way it pulls; where nothing closes the edge, nothing is wanted. A run whose last
 * fastener lies further from the end than the widest spacing is not finished ('rest'): doubt. A run answered as a whole: stop
 * for 'could-not', doubt for 'none-here' (a note where only wished for).
 * The second subject is the detail that is missing; then the point where the stretch begins, unless it is the first.
 * numbers: lack ('line', 'rest', a lack of a stretch, 'could-not', 'none-here'), rest (mm without a station, or null), whole
 * (mm, or null), from and to (labels of the stretch's ends, or null where the run is one stretch), reason (as typed, or null).
 */
export const missingRun: Rule = {
  key: 'missing-run',
  find: (context) =>
    context.sheet.runs.flatMap((run) => {
      if (run.answer) return [answered(run, run.answer)];
      return [...undetailed(context, run), ...unfinished(context, run)];
    }),
};

function drafted(run: SheetRun, lack: Lack | 'could-not' | 'none-here', more: Partial<Draft> = {}): Draft {
  return {
    severity: run.needed ? 'stop' : 'note',
    piece: run.piece,
    slot: run.slot ?? run.id,
    subjects: [
      { on: 'run', id: run.id },
      { on: 'detail', id: lack },
    ],
    basis: [],
    ...more,
    numbers: { lack, rest: null, whole: null, from: null, to: null, reason: null, ...more.numbers },
  };
}

function answered(run: SheetRun, { answer, reason, at }: NonNullable<SheetRun['answer']>): Draft {
  const severity = !run.needed ? 'note' : answer === 'could-not' ? 'stop' : 'doubt';
  return drafted(run, answer, { severity, numbers: { reason }, basis: [`${answer}@${at}`] });
}

function undetailed(context: Context, run: SheetRun): Draft[] {
  const stations = stationsOf(context, run);
  const told = run.stretches.some(({ closes, presence }) => closes !== null || presence !== null);
  if (stations.length === 0 && run.line === null && !told) return [drafted(run, 'stations')];
  const drafts = run.line === null ? [drafted(run, 'line')] : [];
  const all = stretched(context, run);
  for (const [index, part] of all.entries())
    for (const lack of lacksOfPart(part, run, stations)) {
      const severity = run.needed ? (LESSER[lack] ?? 'stop') : 'note';
      const more = all.length > 1 ? { numbers: endsOf(context, part) } : {};
      const draft = drafted(run, lack, { severity, ...more });
      drafts.push(
        index === 0 ? draft : { ...draft, subjects: [...draft.subjects, { on: 'point', id: part.stretch.from }] },
      );
    }
  return drafts;
}

/** In an edge that is one stretch every measured place counts, whatever sits there. */
function lacksOfPart({ stretch, fasteners }: Stretched, run: SheetRun, stations: readonly Station[]): StretchLack[] {
  const lacks = lacksOfStretch(stretch, fasteners);
  const measured = run.stretches.length === 1 && stations.length > 0;
  return measured ? lacks.filter((lack) => lack !== 'stations') : lacks;
}

function endsOf({ points }: Context, { stretch }: Stretched): { from: string | null; to: string | null } {
  return { from: points.get(stretch.from)?.label ?? null, to: points.get(stretch.to)?.label ?? null };
}

function unfinished(context: Context, run: SheetRun): Draft[] {
  const { fastenerGap, slack, stopSigmas } = context.limits;
  const last = stationsOf(context, run).at(-1);
  const rest = restOf(context, run);
  if (!last || !rest || !isSpaced(run, last) || !goesOnToTheEnd(context, run, last)) return [];
  if (rest.value <= fastenerGap.max * (1 + slack) + stopSigmas * rest.sigma) return [];
  return [
    drafted(run, 'rest', {
      severity: 'doubt',
      numbers: { rest: rest.value, whole: rest.whole.value },
      basis: takeIds(rest.whole, ...rest.readings),
    }),
  ];
}

/** A last stretch that is a zip, is planned or is closed by nothing has no row that should reach the end. */
function goesOnToTheEnd(context: Context, run: SheetRun, { fastener }: Station): boolean {
  const last = stretched(context, run).at(-1);
  if (!last || last.stretch.presence === 'planned') return false;
  return fastener === null || last.fasteners.includes(fastener);
}
