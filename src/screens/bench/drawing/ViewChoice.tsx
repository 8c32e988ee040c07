import { sayBench } from '../../../text/bench.ts';
import type { ViewKey } from './views.ts';

interface Props {
  views: readonly ViewKey[];
  view: ViewKey;
  onView: (view: ViewKey) => void;
}

/** From where the piece is looked at; nothing where there is no choice. */
export function ViewChoice({ views, view, onView }: Props) {
  const words = sayBench().plan;
  if (views.length < 2) return null;
  return (
    <fieldset class="row bench-tools no-print">
      <legend class="sr-only">{words.view}</legend>
      {views.map((one) => (
        <button key={one} type="button" class="button" aria-pressed={one === view} onClick={() => onView(one)}>
          {words.views[one]}
        </button>
      ))}
    </fieldset>
  );
}
