import { useState } from 'preact/hooks';
import type { NoValue, SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { act } from '../../model/open-job.ts';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';

interface Props {
  reading: SheetReading;
  onCancel: () => void;
  onDone: () => void;
}

/** The two answers without a value: it is not on this boat, or it is and could not be measured; each with why. */
export function NoValueStep({ reading, onCancel, onDone }: Props) {
  const [answer, setAnswer] = useState<NoValue | null>(null);
  const words = say().dock.step;
  if (answer)
    return (
      <ReasonPicker
        question={words.reason}
        reasons={answer === 'none-here' ? words.reasons.noneHere : words.reasons.reading}
        onCancel={onCancel}
        onReason={(reason) => void act('reading.answer', { reading: reading.id, answer, reason }).then(onDone)}
      />
    );
  return (
    <div class="choices">
      <button type="button" class="button choice" onClick={() => setAnswer('none-here')}>
        {words.noneHere}
      </button>
      <button type="button" class="button choice" onClick={() => setAnswer('could-not')}>
        {words.couldNot}
      </button>
      <button type="button" class="button plain" onClick={onCancel}>
        {say().general.cancel}
      </button>
    </div>
  );
}
