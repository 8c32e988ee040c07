import { sayWalk } from '../../../text/walk.ts';

interface Props {
  question: string;
  options: readonly { id: string; name: string }[];
  chosen: readonly string[];
  onChoose: (chosen: readonly string[]) => void;
  /** The order in which they are tapped counts, and is shown. */
  ordered?: boolean;
}

/** Several of a few: each a tap to take, another to leave. */
export function Chips({ question, options, chosen, onChoose, ordered }: Props) {
  return (
    <fieldset class="stack chips">
      <legend>{question}</legend>
      <div class="row">
        {options.map(({ id, name }) => {
          const place = chosen.indexOf(id);
          const numbered = ordered && place >= 0;
          return (
            <button
              key={id}
              type="button"
              class="button"
              aria-pressed={place >= 0}
              aria-label={numbered ? sayWalk().own.nth(name, place + 1) : name}
              onClick={() => onChoose(place < 0 ? [...chosen, id] : chosen.filter((one) => one !== id))}
            >
              {name}
              {numbered && <span class="small"> {place + 1}</span>}
            </button>
          );
        })}
      </div>
    </fieldset>
  );
}
