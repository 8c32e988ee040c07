import { say } from '../../../text/index.ts';
import { lastUndoable, undo } from '../../model/open-job.ts';

/** Takes back what was done last; not there while there is nothing to take back. */
export function UndoButton() {
  const entry = lastUndoable.value;
  if (!entry) return <span />;
  return (
    <button type="button" class="button plain" onClick={() => void undo(entry)}>
      {say().general.undo}
    </button>
  );
}
