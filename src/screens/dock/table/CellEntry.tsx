import { useEffect, useState } from 'preact/hooks';
import type { Finding } from '../../../core/check/index.ts';
import type { Step } from '../../../core/guide/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { readyToAnswer } from '../../model/answer-back.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { type Route, routeHash } from '../../model/route.ts';
import { readingName } from '../../model/words.ts';
import { Answered, EntryFoot, EntryStrip } from '../step/EntryParts.tsx';
import { ReadingNoValue } from '../step/ReadingNoValue.tsx';
import { StepHead } from '../step/StepHead.tsx';
import { Takes } from '../step/Takes.tsx';
import { TakenBack, UndoButton } from '../step/UndoButton.tsx';
import { useEntry } from '../step/use-entry.ts';

interface Props {
  job: OpenJob;
  step: Extract<Step, { on: 'reading' }>;
  speaking: readonly Finding[];
  onward: () => void;
  /** It was read since the cursor came here, and the check wants another look. */
  stayed: boolean;
  onTyping: (typing: boolean) => void;
  /** The step of this reading alone. */
  back: Route;
}

/** What is typed for the cell at the cursor: the strip, the entry and the pad, as in a step. */
export function CellEntry({ job, step, speaking, onward, stayed, onTyping, back }: Props) {
  const { reading } = step;
  const { sheet } = job;
  const entry = useEntry(job, reading, onward, { askedAgain: step.state === 'asked-again' });
  const [without, setWithout] = useState(false);
  useEffect(readyToAnswer, []);
  const typing = entry.text.value !== '';
  useEffect(() => onTyping(typing), [typing]);
  if (without)
    return (
      <div class="table-foot">
        <ReadingNoValue reading={reading} onCancel={() => setWithout(false)} onDone={onward} />
      </div>
    );
  return (
    <>
      <div class="table-strip">
        <StepHead step={step} />
        <EntryStrip entry={entry} reading={reading} sheet={sheet} speaking={speaking} />
        <Answered reading={reading} />
        {stayed && speaking.length > 0 && (
          <Takes reading={reading} sheet={sheet} disagreement={speaking.find((f) => f.rule === 'takes-disagree')} />
        )}
      </div>
      <div class="step-foot table-foot">
        <p class="table-now" aria-live="polite">
          <strong>{readingName(reading, sheet)}</strong>
        </p>
        <TakenBack />
        <EntryFoot entry={entry} reading={reading} sheet={sheet} speaking={speaking}>
          <a class="button plain" href={routeHash(back)}>
            {sayWalk().table.onlyThis}
          </a>
          <UndoButton />
          <button type="button" class="button plain" onClick={() => setWithout(true)}>
            {say().dock.step.noValue}
          </button>
        </EntryFoot>
      </div>
    </>
  );
}
