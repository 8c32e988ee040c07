import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { StateMark } from '../../parts/marks.tsx';
import { differenceText } from '../engine-words.ts';
import { type EngineView, isConfirmed } from '../state/engine-view.ts';

interface Props {
  reading: SheetReading;
  engine: EngineView;
}

/** What checks a reading; one that nothing checks and nobody read twice carries the sign of a doubt. */
export function CheckedBy({ reading, engine }: Props) {
  const words = sayBench().engine.readings;
  if (reading.value === null) return null;
  const { whole, shown, without, judgement } = engine;
  const solution = without.includes(reading.id) ? whole : shown;
  const result = solution?.readings.find(({ id }) => id === reading.id);
  if (isConfirmed(judgement, reading.id)) return <span class="small quiet bench-under">{words.twice}</span>;
  if (result?.control === 'unchecked')
    return (
      <span class="small">
        <StateMark mark="doubt">{words.control.unchecked}</StateMark>
      </span>
    );
  if (result) return <span class="small quiet bench-under">{words.control[result.control]}</span>;
  if (solution?.oneSided.some((one) => one.reading === reading.id))
    return <span class="small quiet bench-under">{words.oneSided}</span>;
  const unused = solution?.rejected.some((one) => one.reading === reading.id);
  return unused ? <span class="small quiet bench-under">{words.unused}</span> : null;
}

/** How far the shape is from the reading; for one that was left out, what would fit. */
export function Adjusted({ reading, engine, sheet }: Props & { sheet: Sheet }) {
  const words = sayBench().engine.readings;
  if (reading.value === null) return null;
  if (engine.without.includes(reading.id)) {
    const named = engine.judgement.slips?.explanations[0]?.slips.find((slip) => slip.reading === reading.id);
    return named ? <strong class="small bench-under bench-adjusted">{words.wouldFit(named.wouldRead)}</strong> : null;
  }
  const result = engine.shown?.readings.find(({ id }) => id === reading.id);
  if (!result || result.control === 'unchecked') return null;
  const by = differenceText(result.residual, reading.kind === 'lean', sheet);
  return <span class="small quiet bench-under bench-adjusted">{words.adjusted(by)}</span>;
}
