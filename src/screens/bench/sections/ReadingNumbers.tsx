import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { exactText, withoutNames } from '../engine-words.ts';
import type { EngineView, ReadingResult, Solution } from '../state/engine-view.ts';
import { type Term, Terms } from './Terms.tsx';

interface Props {
  reading: SheetReading;
  sheet: Sheet;
  engine: EngineView;
}

/** The numbers behind one reading. A reading that was left out is shown as it stands with it in. */
export function ReadingNumbers({ reading, sheet, engine }: Props) {
  const left = engine.without.includes(reading.id);
  const solution = left ? engine.whole : engine.shown;
  const rows = solution ? rowsOf(reading, solution, sheet) : [];
  if (rows.length === 0) return null;
  const { readings } = sayBench().engine;
  const note = noteOf(left, engine, sheet);
  return <Terms name={readings.numbers} rows={rows} {...(note === null ? {} : { note })} />;
}

function noteOf(left: boolean, engine: EngineView, sheet: Sheet): string | null {
  const { values } = sayBench().engine;
  if (engine.bent) return values.bent;
  if (left) return values.withIt;
  return engine.without.length > 0 ? values.withoutIt(withoutNames(engine, sheet)) : null;
}

function rowsOf(reading: SheetReading, solution: Solution, sheet: Sheet): Term[] {
  const { terms } = sayBench().engine;
  const result = solution.readings.find(({ id }) => id === reading.id);
  if (result) return resultRows(result, solution, reading.kind === 'lean', sheet);
  const side = solution.oneSided.find((one) => one.reading === reading.id);
  return side ? [{ term: terms.chords, value: exactText(side.slack, false, sheet) }] : [];
}

function resultRows(result: ReadingResult, { readingTest }: Solution, angle: boolean, sheet: Sheet): Term[] {
  const { terms, values } = sayBench().engine;
  const { residual, redundancy, standardised, minimalDetectableBias, estimatedError } = result;
  const { critical, power, jobAlpha } = readingTest;
  const smallest =
    minimalDetectableBias === null
      ? values.none
      : values.smallest(
          exactText(minimalDetectableBias, angle, sheet, false),
          values.share(power),
          values.share(jobAlpha),
        );
  return [
    { term: terms.residual, value: exactText(residual, angle, sheet) },
    { term: terms.redundancy, value: redundancy.toFixed(2) },
    {
      term: terms.standardised,
      value: standardised === null ? values.none : values.standardised(standardised.toFixed(2), critical.toFixed(2)),
    },
    { term: terms.smallest, value: smallest },
    ...(estimatedError === null ? [] : [{ term: terms.estimate, value: exactText(estimatedError, angle, sheet) }]),
  ];
}
