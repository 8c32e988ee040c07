import { useState } from 'preact/hooks';
import type { NoValue, SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { findingsOn } from '../../model/findings.ts';
import { act } from '../../model/open-job.ts';
import { readingName, readLength } from '../../model/words.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';
import { Tape } from '../../parts/pad/Tape.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { readingInstruction } from '../step-words.ts';
import type { StepProps } from './StepScreen.tsx';
import { Takes } from './Takes.tsx';

/** Tape one dimension: drawing, sentence, entry, what the check says, pad. */
export function ReadingStep({ job, piece, step, onward }: StepProps<'reading'>) {
  const { reading } = step;
  const { sheet } = job;
  const [text, setText] = useState('');
  const [refusal, setRefusal] = useState('');
  const [without, setWithout] = useState<NoValue | null>(null);
  const speaking = findingsOn(job, 'reading', reading.id);
  const answered = reading.state !== 'open' && step.state !== 'asked-again';

  const record = async (): Promise<void> => {
    if (text.trim() === '' && answered) {
      onward();
      return;
    }
    const parsed = readLength(text, sheet);
    if (!parsed.ok) {
      const words = say().length;
      setRefusal(
        parsed.understood
          ? `${words.refusals[parsed.why]} ${words.understood(parsed.understood)}`
          : words.refusals[parsed.why],
      );
      return;
    }
    await act('take.add', { reading: reading.id, text: text.trim(), unit: parsed.unit, value: parsed.mm });
    setText('');
    setRefusal('');
    if (findingsOn(null, 'reading', reading.id).length === 0) onward();
  };

  if (without)
    return (
      <ReasonPicker
        question={say().dock.step.reason}
        reasons={say().dock.step.reasons.reading}
        onCancel={() => setWithout(null)}
        onReason={(reason) => void act('reading.answer', { reading: reading.id, answer: without, reason }).then(onward)}
      />
    );
  const type = (next: string): void => {
    setText(next.slice(0, 40));
    setRefusal('');
  };
  return (
    <div class="reading-step">
      <div class="step-drawing">
        <PieceDrawing
          sheet={sheet}
          piece={piece}
          width={360}
          height={230}
          asked={reading}
          bad={new Set(speaking.length > 0 ? [reading.id] : [])}
        />
      </div>
      <Instruction reading={reading} job={job} />
      <Takes reading={reading} sheet={sheet} />
      <Entry text={text} reading={reading} job={job} />
      <div class="strip" role="status" aria-live="polite">
        {refusal ? (
          <p class="state stop">{refusal}</p>
        ) : (
          speaking.map((f) => <FindingLine key={f.id} finding={f} sheet={sheet} />)
        )}
        {speaking.length > 0 && !refusal && (
          <p class="quiet">{say().dock.step.readAgain(readingName(reading, sheet))}</p>
        )}
      </div>
      <div class="row spread beside">
        <button type="button" class="button plain" onClick={() => setWithout('none-here')}>
          {say().dock.step.noneHere}
        </button>
        <button type="button" class="button plain" onClick={() => setWithout('could-not')}>
          {say().dock.step.couldNot}
        </button>
      </div>
      <LengthPad
        text={text}
        onText={type}
        onNext={() => void record()}
        nextLabel={text.trim() === '' && answered ? say().dock.step.goOn : say().dock.step.next}
        nextDisabled={text.trim() === '' && !answered}
        sheet={sheet}
      />
    </div>
  );
}

function Instruction({ reading, job }: { reading: SheetReading; job: StepProps<'reading'>['job'] }) {
  const { sentences, mistake } = readingInstruction(reading, job.sheet);
  return (
    <div class="instruction">
      <p>{sentences.join(' ')}</p>
      {mistake && <p class="quiet small">{mistake}</p>}
    </div>
  );
}

/** What is being typed, large, and the tape as it would look there. */
function Entry({ text, reading, job }: { text: string; reading: SheetReading; job: StepProps<'reading'>['job'] }) {
  const parsed = text.trim() === '' ? null : readLength(text, job.sheet);
  const mm = parsed?.ok ? parsed.mm : text === '' ? reading.value : null;
  const unit = job.sheet.system === 'metric' ? 'mm' : '″';
  return (
    <div class="entry">
      <output class="entry-text number" aria-label={say().dock.pad.entry}>
        {text === '' ? <span class="quiet entry-hint">{say().dock.step.expected}</span> : text}
        {text !== '' && !/[a-z'"″]\s*$/.test(text) && <span class="quiet"> {unit}</span>}
      </output>
      <Tape mm={mm} sheet={job.sheet} />
    </div>
  );
}
