import type { SheetReading } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { lengthText } from '../../model/words.ts';
import { namesOf } from '../engine-words.ts';
import { labelsOf } from '../names.ts';
import { alsoAsk } from '../state/ask-draft.ts';
import { straightBetween } from '../state/ask-tapes.ts';
import { engineView, floatingOf, isConfirmed } from '../state/engine-view.ts';
import { AskForTapes } from './AskForTapes.tsx';
import { Section } from './Section.tsx';

/** The few tapes that would fix, tighten and check what is not yet; nothing where all of it is. */
export function TapesSection({ job, piece }: { job: OpenJob; piece: string }) {
  const words = sayBench().engine.tapes;
  const engine = engineView(job, piece);
  const advice = engine?.judgement.advice;
  if (!engine?.shown || !advice) return null;
  const unchecked = engine.shown.readings
    .filter(({ id, control }) => control === 'unchecked' && !isConfirmed(engine.judgement, id))
    .map(({ id }) => id);
  const { set, clears, now } = advice;
  if (now.loose === 0 && now.slack <= 0 && unchecked.length === 0) return null;
  const floating = floatingOf(engine.judgement).map(({ point }) => point);
  const names = namesOf(unchecked, job.sheet);
  return (
    <Section at="tapes">
      {floating.length > 0 && <p>{words.loose(sayBench().list(floating.map((id) => labelsOf(job.sheet, [id]))))}</p>}
      {now.slack > 0 && <p>{words.wide}</p>}
      {unchecked.length > 0 && <p>{words.unchecked(names)}</p>}
      {set.length > 0 && (
        <>
          <p>{clears ? words.clears : words.helps}</p>
          <ul class="list">
            {set.map(({ from, to, length }) => (
              <li key={`${from}${to}`} class="bench-row">
                {words.about(labelsOf(job.sheet, [from, to]), lengthText(length, job.sheet))}
                <Before answer={straightBetween(job.sheet, piece, { from, to })?.answer ?? null} />
              </li>
            ))}
          </ul>
          <AskForTapes job={job} piece={piece} tapes={set} />
        </>
      )}
      {set.length === 0 && unchecked.length > 0 && (
        <>
          <p>{words.none}</p>
          <div>
            <button type="button" class="button" onClick={() => alsoAsk(job, piece, unchecked)}>
              {words.second(names)}
            </button>
          </div>
        </>
      )}
    </Section>
  );
}

/** Somebody at the dock could not take this tape: asking anew may be in vain. */
function Before({ answer }: { answer: SheetReading['answer'] }) {
  if (answer?.answer !== 'could-not') return null;
  return <span class="small bench-under">{sayBench().engine.tapes.before(answer.reason)}</span>;
}
