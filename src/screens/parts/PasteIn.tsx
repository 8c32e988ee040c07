import { useState } from 'preact/hooks';
import { say } from '../../text/index.ts';
import { sayLinks } from '../../text/links.ts';
import { takePasted } from '../model/paste-in.ts';
import type { Route } from '../model/route.ts';
import type { TakenIn } from '../model/take-in.ts';
import { Outcome } from './Outcome.tsx';

/** A field for a link, a packet or a table that came as text; what came of it is said below. */
export function PasteIn({ onTaken, open }: { onTaken: () => void; open: (job: string) => Route }) {
  const words = sayLinks().paste;
  const [text, setText] = useState('');
  const [busy, setBusy] = useState(false);
  const [outcome, setOutcome] = useState<TakenIn | null>(null);
  const take = async (): Promise<void> => {
    setBusy(true);
    const taken = await takePasted(text);
    setBusy(false);
    setOutcome(taken);
    if (!taken?.ok) return;
    setText('');
    onTaken();
  };
  return (
    <div class="stack">
      <label class="field">
        <span>{words.label}</span>
        <textarea
          rows={4}
          value={text}
          autocomplete="off"
          spellcheck={false}
          data-testid="paste-text"
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <button
        type="button"
        class="button main"
        disabled={busy || text.trim() === ''}
        onClick={() => void take()}
        data-testid="paste-open"
      >
        {busy ? say().dock.takeIn.reading : words.open}
      </button>
      {outcome && <Outcome outcome={outcome} open={open} />}
    </div>
  );
}
