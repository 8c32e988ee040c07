import type { Payload, SheetRun } from '../../../../core/job/index.ts';
import { uuid } from '../../../../device/clock.ts';
import { actAll, type Deed, deed, openJob } from '../../../model/open-job.ts';
import { lineOf, type Part, partsOf } from './edge-view.ts';

type Fact = Payload<'stretch.set'>;
/** A field of a stretch with a value it may have. */
export type StretchFact = { [K in Fact['field']]: Pick<Extract<Fact, { field: K }>, 'field' | 'value'> }[Fact['field']];

/** Records facts of a stretch; the line answered for the whole piece goes along with the first of them. */
export async function tell(run: SheetRun, from: string, ...facts: readonly StretchFact[]): Promise<void> {
  const sheet = openJob.value?.sheet;
  const line = sheet ? lineOf(sheet, run) : null;
  const lines: Deed[] =
    run.line === null && line ? [deed('run.detail', { run: run.id, field: 'line', value: line })] : [];
  await actAll([...lines, ...facts.map((fact) => deed('stretch.set', { run: run.id, from, ...fact }))]);
}

export interface Typed {
  readonly text: string;
  readonly unit: Payload<'take.add'>['unit'];
  readonly value: number;
}

/** One more fastener of a stretch, after those of the stretches before it and before those of the stretches after. Gives its reading. */
export async function addFastener(
  run: SheetRun,
  part: Part,
  type: Payload<'fastener.add'>['type'],
  typed: Typed,
): Promise<string> {
  const reading = uuid();
  await actAll((job) => {
    const now = job.sheet.runs.find(({ id }) => id === run.id) ?? run;
    const rank = nextRank(partsOf(job, now), part.stretch.from);
    return [
      deed('fastener.add', { fastener: uuid(), run: run.id, reading, rank, type, presence: 'there' }),
      deed('take.add', { reading, ...typed }),
    ];
  });
  return reading;
}

function nextRank(parts: readonly Part[], from: string): number {
  const at = parts.findIndex(({ stretch }) => stretch.from === from);
  const ranks = (of: readonly Part[]): number[] => of.flatMap(({ fasteners }) => fasteners.map(({ rank }) => rank));
  const before = Math.max(0, ...ranks(parts.slice(0, at + 1)));
  const after = Math.min(Number.POSITIVE_INFINITY, ...ranks(parts.slice(at + 1)).filter((rank) => rank > before));
  return Number.isFinite(after) ? (before + after) / 2 : before + 1;
}
