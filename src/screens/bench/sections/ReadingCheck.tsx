import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { StateMark } from '../../parts/marks.tsx';
import { differenceText } from '../engine-words.ts';
import { type EngineView, isConfirmed } from '../state/engine-view.ts';

interface Props {
  reading: SheetReading;
  engine: EngineView;
}

/** What checks a reading, in words; doubt: nothing does, and nobody read it twice. Null where there is nothing to say. */
export function checkOf({ reading, engine }: Props): { text: string; doubt: boolean } | null {
  const words = sayBench().engine.readings;
  if (reading.value === null) return null;
  const { whole, shown, without, judgement } = engine;
  const solution = without.includes(reading.id) ? whole : shown;
  const result = solution?.readings.find(({ id }) => id === reading.id);
  const plain = (text: string) => ({ text, doubt: false });
  if (isConfirmed(judgement, reading.id)) return plain(words.twice);
  if (result) return { text: words.control[result.control], doubt: result.control === 'unchecked' };
  if (solution?.oneSided.some((one) => one.reading === reading.id)) return plain(words.oneSided);
  return solution?.rejected.some((one) => one.reading === reading.id) ? plain(words.unused) : null;
}

/** What checks a reading; one that nothing checks and nobody read twice carries the sign of a doubt. */
export function CheckedBy({ reading, engine }: Props) {
  const check = checkOf({ reading, engine });
  if (!check?.doubt) return check && <span class="small quiet bench-under">{check.text}</span>;
  return (
    <span class="small">
      <StateMark mark="doubt">{check.text}</StateMark>
    </span>
  );
}

/** How far the shape is from a reading, signed; null where it was left out, nothing checks it, or the shape is bent. */
export function residualOf({ reading, engine }: Props, sheet: Sheet): string | null {
  if (reading.value === null || engine.bent || engine.without.includes(reading.id)) return null;
  const result = engine.shown?.readings.find(({ id }) => id === reading.id);
  return result && result.control !== 'unchecked'
    ? differenceText(result.residual, reading.kind === 'lean', sheet)
    : null;
}

/** How far the shape is from the reading; for one that was left out, what would fit. */
export function Adjusted({ reading, engine, sheet }: Props & { sheet: Sheet }) {
  const words = sayBench().engine.readings;
  if (reading.value !== null && engine.without.includes(reading.id)) {
    const named = engine.judgement.slips?.explanations[0]?.slips.find((slip) => slip.reading === reading.id);
    return named ? <strong class="small bench-under bench-adjusted">{words.wouldFit(named.wouldRead)}</strong> : null;
  }
  const by = residualOf({ reading, engine }, sheet);
  return by === null ? null : <span class="small quiet bench-under bench-adjusted">{words.adjusted(by)}</span>;
}
