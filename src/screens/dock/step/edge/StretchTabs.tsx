import { sayEdges } from '../../../../text/edges.ts';
import { say } from '../../../../text/index.ts';
import { StateMark } from '../../../parts/marks.tsx';
import { isCounted, type Part } from './edge-view.ts';

interface Props {
  parts: readonly Part[];
  at: Part;
  onPick: (part: Part) => void;
}

/** The stretches of an edge that has several, in order, each with what is known of it. */
export function StretchTabs({ parts, at, onPick }: Props) {
  if (parts.length < 2) return null;
  return (
    <ol class="list stretches" aria-label={sayEdges().stretches}>
      {parts.map((part) => (
        <li key={part.stretch.from}>
          <button
            type="button"
            class={part === at ? 'item here' : 'item'}
            aria-current={part === at ? 'step' : undefined}
            onClick={() => onPick(part)}
          >
            <span class="grow">
              <strong>{part.name}</strong> {toldOf(part)}
            </span>
            <StateMark mark={isOpen(part) ? 'open' : 'good'}>
              <span class="sr-only">{say().dock.stepStates[isOpen(part) ? 'open' : 'done']}</span>
            </StateMark>
          </button>
        </li>
      ))}
    </ol>
  );
}

/** Something is still to be told or taped here; who sets what is planned can wait. */
export const isOpen = ({ lacks }: Part): boolean => lacks.some((lack) => lack !== 'setter' && lack !== 'into');

function toldOf({ stretch, fasteners, ...part }: Part): string {
  const { told } = sayEdges();
  const { closes, presence, count } = stretch;
  if (closes === null) return told.untold;
  if (closes === 'nothing') return told.nothing;
  const facts = [sayEdges().names.closures[closes].toLowerCase()];
  if (presence === 'planned') facts.push(count === null ? told.toFit : told.planned(count));
  else if (fasteners.length > 0) facts.push(told.taped(fasteners.length));
  else if (presence !== null && isCounted({ ...stretch }) && part.lacks.length > 0) facts.push(told.taped(0));
  return facts.join(', ');
}
