import { useState } from 'preact/hooks';
import type { NoValue } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';

interface Props {
  /** The two answers, in the words of what is asked for. */
  words: { readonly noneHere: string; readonly couldNot: string };
  onCancel: () => void;
  onAnswer: (answer: NoValue, reason: string) => void;
}

/** The two answers without a value: it is not on this boat, or it is and could not be measured; each with why. */
export function NoValueStep({ words, onCancel, onAnswer }: Props) {
  const [answer, setAnswer] = useState<NoValue | null>(null);
  if (answer)
    return (
      <ReasonPicker
        question={say().dock.step.reason}
        reasons={say().dock.step.reasons[answer]}
        onCancel={onCancel}
        onReason={(reason) => onAnswer(answer, reason)}
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
