import { useEffect, useState } from 'preact/hooks';
import { tableOf, tablesOf } from '../../../core/guide/tables.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { readyToAnswer } from '../../model/answer-back.ts';
import { findingsOn } from '../../model/findings.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { routeHash } from '../../model/route.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { movedMarkOf, readingInstruction } from '../step-words.ts';
import { Answered, badOf, EntryFoot, EntryStrip } from './EntryParts.tsx';
import { MovedStep } from './MovedStep.tsx';
import { ReadingNoValue } from './ReadingNoValue.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';
import { Takes } from './Takes.tsx';
import { useEntry } from './use-entry.ts';

/** Tape one dimension: drawing and sentence above; entry, what the check says, and the pad below. */
export function ReadingStep(props: StepProps<'reading'>) {
  const mark = movedMarkOf(props.step.reading, props.job.sheet);
  return mark ? <MovedStep {...props} mark={mark} /> : <OpenStep {...props} />;
}

function OpenStep({ job, piece, step, onward, head, moves }: StepProps<'reading'>) {
  const { reading } = step;
  const { sheet } = job;
  const entry = useEntry(job, reading, onward, step.state === 'asked-again');
  const [without, setWithout] = useState(false);
  useEffect(readyToAnswer, []);
  const speaking = findingsOn(job, 'reading', reading.id);
  if (without) return <ReadingNoValue reading={reading} onCancel={() => setWithout(false)} onDone={onward} />;
  return (
    <StepLayout
      foot={
        <EntryFoot entry={entry} reading={reading} sheet={sheet} speaking={speaking}>
          {moves}
          <button type="button" class="button plain" onClick={() => setWithout(true)}>
            {say().dock.step.noValue}
          </button>
        </EntryFoot>
      }
    >
      {head}
      <EntryStrip entry={entry} reading={reading} sheet={sheet} speaking={speaking} />
      <Answered reading={reading} />
      <Takes reading={reading} sheet={sheet} disagreement={speaking.find((f) => f.rule === 'takes-disagree')} />
      <div class="step-ask">
        <div class="step-drawing">
          <PieceDrawing
            judgement={job.pieces.get(piece)}
            sheet={sheet}
            piece={piece}
            width={360}
            height={220}
            asked={reading}
            bad={badOf(speaking)}
          />
        </div>
        <Instruction reading={reading} job={job} />
      </div>
    </StepLayout>
  );
}

function Instruction({ reading, job }: { reading: SheetReading; job: OpenJob }) {
  const { sentences, mistake } = readingInstruction(reading, job.sheet);
  const table = tableOf(tablesOf(job.sheet, reading.piece), reading.id);
  return (
    <div class="instruction">
      <p>{sentences.join(' ')}</p>
      {mistake && <p class="quiet small">{mistake}</p>}
      {table && (
        <a
          class="button plain to-table"
          href={routeHash({ at: 'table', job: job.id, piece: reading.piece, table: table.key, cell: reading.id })}
        >
          {sayWalk().table.wholeColumn}
        </a>
      )}
    </div>
  );
}
