import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { wantsSecondLook } from '../../../core/guide/second-looks.ts';
import { tableOf, tablesOf } from '../../../core/guide/tables.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { readyToAnswer } from '../../model/answer-back.ts';
import { findingsOn } from '../../model/findings.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { hidden } from '../../model/second-looks.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { movedMarkOf, readingInstruction } from '../step-words.ts';
import { Answered, badOf, EntryFoot, EntryStrip, LookAgainStrip } from './EntryParts.tsx';
import { MovedStep } from './MovedStep.tsx';
import { ReadingNoValue } from './ReadingNoValue.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { Led, StepProps } from './step-props.ts';
import { Takes } from './Takes.tsx';
import { useEntry } from './use-entry.ts';

/** Tape one dimension: drawing and sentence above; entry, what the check says, and the pad below. */
export function ReadingStep(props: StepProps<'reading'>) {
  const mark = movedMarkOf(props.step.reading, props.job.sheet);
  return mark ? <MovedStep {...props} mark={mark} /> : <OpenStep {...props} />;
}

function OpenStep({ job, piece, step, onward, head, moves, led, look = null }: StepProps<'reading'>) {
  const { reading } = step;
  const { sheet } = job;
  const entry = useEntry(job, reading, onward, { askedAgain: step.state === 'asked-again', led: led !== undefined });
  const [openBefore] = useState(step.state !== 'done');
  // Whoever is led reads without what was read before: from the moment the step is shown, so that nothing flashes up.
  const blind = led !== undefined && (look !== null || openBefore || hidden.value.has(reading.id));
  const [without, setWithout] = useState(false);
  useEffect(readyToAnswer, []);
  const speaking = findingsOn(job, 'reading', reading.id).filter((finding) => !led || !wantsSecondLook(finding));
  if (without) return <ReadingNoValue reading={reading} onCancel={() => setWithout(false)} onDone={onward} />;
  return (
    <StepLayout
      foot={
        <EntryFoot entry={entry} reading={reading} sheet={sheet} speaking={speaking}>
          {moves}
          {look === null && (
            <button type="button" class="button plain" onClick={() => setWithout(true)}>
              {say().dock.step.noValue}
            </button>
          )}
        </EntryFoot>
      }
    >
      {head}
      {blind ? (
        <LookAgainStrip entry={entry} again={look === null && reading.takes.length > 0 && speaking.length > 0} />
      ) : (
        <EntryStrip entry={entry} reading={reading} sheet={sheet} speaking={speaking} />
      )}
      <Answered reading={reading} />
      {!blind && (
        <Takes reading={reading} sheet={sheet} disagreement={speaking.find((f) => f.rule === 'takes-disagree')} />
      )}
      <div class="step-ask">
        <div class="step-drawing">
          <PieceDrawing
            judgement={job.pieces.get(piece)}
            sheet={sheet}
            piece={piece}
            width={360}
            height={220}
            asked={reading}
            bad={badOf(blind ? [] : speaking)}
            values={blind ? 'none' : 'few'}
          />
        </div>
        <Instruction reading={reading} job={job} led={led} />
      </div>
    </StepLayout>
  );
}

function Instruction({ reading, job, led }: { reading: SheetReading; job: OpenJob; led: Led | undefined }) {
  if (led) {
    const { text, mistake } = led.told(reading, job.sheet);
    return <Sentences text={text} mistake={mistake} />;
  }
  const { sentences, mistake } = readingInstruction(reading, job.sheet);
  const table = tableOf(tablesOf(job.sheet, reading.piece), reading.id);
  return (
    <Sentences text={sentences.join(' ')} mistake={mistake}>
      {table && (
        <a
          class="button plain to-table"
          href={routeHash({ at: 'table', job: job.id, piece: reading.piece, table: table.key, cell: reading.id })}
        >
          {sayWalk().table.wholeColumn}
        </a>
      )}
    </Sentences>
  );
}

function Sentences(props: { text: string; mistake: string | null; children?: ComponentChildren }) {
  const { text, mistake, children } = props;
  return (
    <div class="instruction">
      <p>{text}</p>
      {mistake && <p class="quiet small">{mistake}</p>}
      {children}
    </div>
  );
}
