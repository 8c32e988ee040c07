import type { DecidingTape } from '../../../core/adjust/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { lengthText } from '../../model/words.ts';
import { labelsOf } from '../names.ts';
import { AskForTapes } from './AskForTapes.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  tapes: readonly DecidingTape[];
  /** What each predicted length would mean, in the order of the predictions. */
  explanations: readonly string[];
}

/** Tapes nobody has taken yet on which what may be true disagrees: what each would read, and the asking. */
export function TapesThatDecide({ job, piece, tapes, explanations }: Props) {
  const words = sayBench().engine.slips;
  if (tapes.length === 0) return null;
  return (
    <div class="stack">
      <p>{words.decide}</p>
      <ul class="list">
        {tapes.map((tape) => (
          <li key={`${tape.from}${tape.to}`} class="bench-row">
            <strong>{labelsOf(job.sheet, [tape.from, tape.to])}</strong>
            <ul class="small">
              {tape.predicted.map((length, i) => (
                <li key={explanations[i]}>
                  {words.predicted(lengthText(length, job.sheet), explanations[i] ?? words.shape(i + 1))}
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      <AskForTapes job={job} piece={piece} tapes={tapes.slice(0, 1)} />
    </div>
  );
}
