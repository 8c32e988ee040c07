import { useSignal } from '@preact/signals';
import { useRef, useState } from 'preact/hooks';
import type { SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { findingsOn } from '../../model/findings.ts';
import { act, judged, type OpenJob } from '../../model/open-job.ts';
import { readingName, readLength } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';
import { Tape } from '../../parts/pad/Tape.tsx';
import { readingInstruction } from '../step-words.ts';
import { NoValueStep } from './NoValueStep.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';
import { Takes } from './Takes.tsx';

/** Tape one dimension: drawing and sentence above; entry, what the check says, and the pad below. */
export function ReadingStep({ job, piece, step, onward, head, moves }: StepProps<'reading'>) {
  const { reading } = step;
  const { sheet } = job;
  const entry = useEntry(job, reading, onward, step.state === 'asked-again');
  const [without, setWithout] = useState(false);
  const words = say().dock.step;
  const speaking = findingsOn(job, 'reading', reading.id);
  if (without) return <NoValueStep reading={reading} onCancel={() => setWithout(false)} onDone={onward} />;
  return (
    <StepLayout
      foot={
        <>
          <Entry text={entry.text.value} job={job} />
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
            sheet={sheet}
          />
        </>
      }
    >
      {head}
      <div class="strip" role="status" aria-live="polite">
        {entry.refusal && <p class="state stop">{entry.refusal}</p>}
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

/** ms within which a second tap on the same place was not meant. */
const SECOND_TAP = 500;

/** What is typed, until it is recorded. Next records it; where a check speaks up the step stays, to read again. */
function useEntry(job: OpenJob, reading: SheetReading, onward: () => void, askedAgain: boolean) {
  const text = useSignal('');
  const [refusal, setRefusal] = useState('');
  const recordedAt = useRef(0);
  const answered = reading.state !== 'open' && !askedAgain;
  const onlyGoOn = text.value.trim() === '' && answered;
  const record = async (): Promise<void> => {
    if (text.value.trim() === '' && answered) {
      // The second half of a double tap must not wave a warning away.
      if (performance.now() - recordedAt.current > SECOND_TAP) onward();
      return;
    }
    const parsed = readLength(text.value, job.sheet);
    if (!parsed.ok) {
      const { refusals, understood } = say().length;
      setRefusal([refusals[parsed.why], parsed.understood && understood(parsed.understood)].filter(Boolean).join(' '));
      return;
    }
    const typed = text.value.trim();
    text.value = '';
    setRefusal('');
    await act('take.add', { reading: reading.id, text: typed, unit: parsed.unit, value: parsed.mm });
    await judged();
    recordedAt.current = performance.now();
    if (findingsOn(null, 'reading', reading.id).length === 0) onward();
  };
  return { text, refusal, onlyGoOn, edited: () => setRefusal(''), record };
}

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

/** What is being typed, large, and the tape as it would look there. */
function Entry({ text, job }: { text: string; job: OpenJob }) {
  const parsed = text.trim() === '' ? null : readLength(text, job.sheet);
  // Only what is being typed: an earlier value on the tape would lead whoever reads it again.
  const mm = parsed?.ok ? parsed.mm : null;
  const unit = job.sheet.system === 'metric' ? 'mm' : 'in';
  return (
    <div class="entry">
      <output class="entry-text number" aria-label={say().dock.pad.entry}>
        {text === '' ? <span class="quiet entry-hint">{say().dock.step.expected}</span> : text}
        {text !== '' && !/[a-z'"″]\s*$/.test(text) && <span class="quiet entry-unit"> {unit}</span>}
      </output>
      <Tape mm={mm} sheet={job.sheet} />
    </div>
  );
}
