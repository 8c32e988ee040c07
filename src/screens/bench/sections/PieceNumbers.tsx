import { sayBench } from '../../../text/bench.ts';
import type { Solution } from '../state/engine-view.ts';
import { Terms } from './Terms.tsx';

/** What the judgement of the whole piece rests on, for whoever knows such numbers or wants to. */
export function PieceNumbers({ solution }: { solution: Solution }) {
  const { terms, values, sure } = sayBench().engine;
  const { freedom, unitError, globalTest } = solution;
  return (
    <Terms
      name={sure.numbers}
      rows={[
        { term: terms.freedom, value: String(freedom) },
        {
          term: terms.unitError,
          value: unitError === null ? sayBench().engine.values['cannot tell'] : unitError.toFixed(2),
        },
        { term: terms.global, value: values.global(values[globalTest.verdict], values.share(globalTest.alpha)) },
      ]}
    />
  );
}
