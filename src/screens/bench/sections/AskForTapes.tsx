import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { labelsOf } from '../names.ts';
import { askForTapes, isTapeAsked, type Tape } from '../state/ask-tapes.ts';
import { jumpTo } from './Section.tsx';

/** One button that asks for all of these tapes at once; those asked for already are said to be. */
export function AskForTapes({ job, piece, tapes }: { job: OpenJob; piece: string; tapes: readonly Tape[] }) {
  const words = sayBench().engine.tapes;
  const name = (list: readonly Tape[]): string =>
    sayBench().list(list.map(({ from, to }) => labelsOf(job.sheet, [from, to])));
  const open = tapes.filter((tape) => !isTapeAsked(job.sheet, piece, tape));
  const asked = tapes.filter((tape) => !open.includes(tape));
  return (
    <>
      {asked.length > 0 && (
        <p class="small quiet">
          {name(asked)}: {words.asked}
        </p>
      )}
      {open.length > 0 && (
        <div>
          <button
            type="button"
            class="button"
            onClick={() => void askForTapes(job, piece, open).then(() => jumpTo('asks'))}
            data-testid="ask-tapes"
          >
            {words.ask(name(open))}
          </button>
        </div>
      )}
    </>
  );
}
