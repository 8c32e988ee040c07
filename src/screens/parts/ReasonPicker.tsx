import { useEffect, useRef, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';

interface Props {
  question: string;
  reasons: readonly string[];
  onReason: (reason: string) => void;
  onCancel: () => void;
}

/** Asks why, in one tap where a usual reason fits, in words where none does. */
export function ReasonPicker({ question, reasons, onReason, onCancel }: Props) {
  const [other, setOther] = useState('');
  const top = useRef<HTMLElement>(null);
  useEffect(() => top.current?.scrollIntoView({ block: 'start' }), []);
  return (
    <section ref={top} class="stack reason" aria-label={question}>
      <h2>{question}</h2>
      <div class="choices">
        {reasons.map((reason) => (
          <button key={reason} type="button" class="button choice" onClick={() => onReason(reason)}>
            {reason}
          </button>
        ))}
      </div>
      <label class="field">
        <span>{say().dock.step.otherReason}</span>
        <input value={other} maxLength={300} onInput={(event) => setOther(event.currentTarget.value)} />
      </label>
      <div class="row">
        <button type="button" class="button main" disabled={other.trim() === ''} onClick={() => onReason(other.trim())}>
          {say().dock.step.record}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </section>
  );
}
