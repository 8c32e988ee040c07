import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { sayWithdraw } from '../../text/withdraw.ts';

interface Props {
  reasons: readonly string[];
  /** What is lost. */
  children: ComponentChildren;
  disabled?: boolean;
  onClose: () => void;
  onWithdraw: (reason: string) => void;
}

/** The one thing that loses something for good inside a job: says what, asks why, and only then lets it be done. */
export function Withdraw({ reasons, children, disabled = false, onClose, onWithdraw }: Props) {
  const [reason, setReason] = useState('');
  const words = sayWithdraw();
  const top = useRef<HTMLElement>(null);
  useEffect(() => top.current?.scrollIntoView({ block: 'start' }), []);
  return (
    <section ref={top} class="banner stop stack" aria-label={words.open}>
      <h2>{words.open}</h2>
      {children}
      <p>{words.copies}</p>
      <p>
        <strong>{words.why}</strong>
      </p>
      <div class="choices">
        {reasons.map((given) => (
          <button
            key={given}
            type="button"
            class="button choice"
            aria-pressed={given === reason}
            onClick={() => setReason(given)}
          >
            {given}
          </button>
        ))}
      </div>
      <div class="row">
        <button
          type="button"
          class="button main"
          disabled={reason === '' || disabled}
          onClick={() => onWithdraw(reason)}
          data-testid="withdraw"
        >
          {words.now}
        </button>
        <button type="button" class="button plain" onClick={onClose}>
          {say().general.cancel}
        </button>
      </div>
    </section>
  );
}
