import { useEffect, useState } from 'preact/hooks';
import type { SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { readyToAnswer } from '../../model/answer-back.ts';
import { findingsOn } from '../../model/findings.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { maySigned, readingName } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { StateMark } from '../../parts/marks.tsx';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';
import { PadEntry } from '../../parts/pad/PadEntry.tsx';
import { readingInstruction } from '../step-words.ts';
import { NoValueStep } from './NoValueStep.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';
import { Takes } from './Takes.tsx';
import { useEntry } from './use-entry.ts';

/** Tape one dimension: drawing and sentence above; entry, what the check says, and the pad below. */
export function ReadingStep({ job, piece, step, onward, head, moves }: StepProps<'reading'>) {
  const { reading } = step;
  const { sheet } = job;
  const entry = useEntry(job, reading, onward, step.state === 'asked-again');
  const [without, setWithout] = useState(false);
  useEffect(readyToAnswer, []);
  const words = say().dock.step;
  const speaking = findingsOn(job, 'reading', reading.id);
  if (without) return <NoValueStep reading={reading} onCancel={() => setWithout(false)} onDone={onward} />;
  return (
    <StepLayout
      foot={
        <>
          <PadEntry text={entry.text} onEdit={entry.edited} sheet={sheet} kind={reading.kind} halves={entry.halves} />
          <div class="row spread beside">
            {moves}
            <button type="button" class="button plain" onClick={() => setWithout(true)}>
              {words.noValue}
            </button>
          </div>
          <LengthPad
            text={entry.text}
            onEdit={entry.edited}
            onNext={() => void entry.record()}
            nextLabel={!entry.onlyGoOn ? words.next : speaking.length > 0 ? words.goOnAnyway : words.goOn}
            quietNext={entry.onlyGoOn && speaking.length > 0}
            nextDisabled={entry.text.value.trim() === '' && !entry.onlyGoOn}
            signed={maySigned(reading.kind)}
            angle={reading.kind === 'lean'}
            sheet={sheet}
          />
        </>
      }
    >
      {head}
      <div class="strip" role="status" aria-live="polite">
        {entry.refusal && <StateMark mark="stop">{entry.refusal}</StateMark>}
        {entry.left && <StateMark mark="doubt">{words.notRecorded}</StateMark>}
        {!entry.refusal && speaking.map((f) => <FindingLine key={f.id} finding={f} sheet={sheet} />)}
        {!entry.refusal && speaking.length > 0 && !speaking.some((f) => SAYS_SO.has(f.rule)) && (
          <p>{words.readAgain(readingName(reading, sheet))}</p>
        )}
      </div>
      {reading.answer && <Answered reading={reading} />}
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

/** Findings whose own words ask for another reading. */
const SAYS_SO: ReadonlySet<string> = new Set([
  'reading-unchecked',
  'reading-doubted',
  'slip-unseen',
  'takes-disagree',
  'unlike-sister',
]);

const badOf = (findings: ReturnType<typeof findingsOn>): ReadonlySet<string> =>
  new Set(findings.flatMap((f) => f.subjects.filter((s) => s.on === 'reading').map((s) => s.id)));

/** What was answered instead of a value; typing one replaces it. */
function Answered({ reading }: { reading: SheetReading }) {
  const { answer } = reading;
  if (!answer) return null;
  const words = say().dock.step;
  return (
    <p class="banner">
      {words.answered(answer.answer === 'none-here' ? words.noneHere : words.couldNot, answer.reason)}
    </p>
  );
}

function Instruction({ reading, job }: { reading: SheetReading; job: OpenJob }) {
  const { sentences, mistake } = readingInstruction(reading, job.sheet);
  return (
    <div class="instruction">
      <p>{sentences.join(' ')}</p>
      {mistake && <p class="quiet small">{mistake}</p>}
    </div>
  );
}
