import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { thingName } from '../names.ts';
import { asking, endAsk, makeAsk, noteWholeAsk } from '../state/ask-draft.ts';

/** What is chosen so far, one note for all of it, and the button that asks. Stays in sight while the lists are ticked. */
export function AskPanel({ job, piece, onMade }: { job: OpenJob; piece: string; onMade: () => void }) {
  const words = sayBench().ask;
  const draft = asking.value;
  if (draft?.piece !== piece) return null;
  const names = [...draft.items.values()].map(({ on, id }) => thingName(job.sheet, piece, on, id));
  return (
    <section class="bench-ask-panel stack" aria-label={words.heading}>
      <p class="small">{words.how}</p>
      <p aria-live="polite">{names.length > 0 ? words.chosen(sayBench().list(names)) : words.nothing}</p>
      <label class="field">
        <span>{words.noteAll}</span>
        <input value={draft.note} maxLength={1000} onInput={(event) => noteWholeAsk(event.currentTarget.value)} />
      </label>
      <div class="row">
        <button
          type="button"
          class="button main"
          disabled={names.length === 0}
          onClick={() => void makeAsk().then(onMade)}
          data-testid="make-ask"
        >
          {words.make(names.length)}
        </button>
        <button type="button" class="button plain" onClick={endAsk}>
          {words.stop}
        </button>
      </div>
    </section>
  );
}
