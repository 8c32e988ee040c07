import { isAsked } from '../../../core/check/index.ts';
import type { Sheet } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { type AskOn, asking, askNote, noteAsk, tickAsk } from '../state/ask-draft.ts';

interface Props {
  sheet: Sheet;
  piece: string;
  on: AskOn;
  id: string;
  name: string;
}

/** While the shop chooses what to ask again: a tick box on the thing itself, and a note once it is ticked. */
export function AskTick({ sheet, piece, on, id, name }: Props) {
  const words = sayBench().ask;
  if (asking.value?.piece !== piece) return null;
  if (isAsked(sheet, piece, on, id)) return <p class="small quiet">{words.already}</p>;
  const note = askNote(on, id);
  return (
    <div class="bench-ask">
      <label class="bench-tick">
        <input
          type="checkbox"
          checked={note !== null}
          aria-label={words.tick(name)}
          onChange={(event) => tickAsk(on, id, event.currentTarget.checked)}
        />
        <span aria-hidden="true">{words.tickShort}</span>
      </label>
      {note !== null && (
        <label class="field">
          <input
            value={note}
            placeholder={words.noteShort}
            maxLength={400}
            aria-label={words.note(name)}
            onInput={(event) => noteAsk(on, id, event.currentTarget.value)}
          />
        </label>
      )}
    </div>
  );
}
