import { signal } from '@preact/signals';
import { say } from '../../../text/index.ts';
import { lastUndoable, openJob, undo } from '../../model/open-job.ts';
import { route, routeHash } from '../../model/route.ts';
import { hidden } from '../../model/second-looks.ts';
import { actor } from '../../model/services.ts';
import { takenBackText } from './taken-back.ts';

/** What was taken back last, where, and how long the logbook was then: said until something else is done, or the place is left. */
const takenBack = signal<{ text: string; place: string; entries: number } | null>(null);

async function takeBack(): Promise<void> {
  const job = openJob.value;
  const entry = lastUndoable.value;
  if (!job || !entry) return;
  const looker = { role: actor.value.role, hidden: hidden.value };
  const text = takenBackText(job.entries, entry, job.sheet, looker);
  await undo(entry);
  takenBack.value = { text, place: routeHash(route.value), entries: openJob.value?.entries.length ?? 0 };
}

/** Takes back what was done last; not there while there is nothing to take back. */
export function UndoButton() {
  if (!lastUndoable.value) return <span />;
  return (
    <button type="button" class="button plain" onClick={() => void takeBack()}>
      {say().general.undo}
    </button>
  );
}

/** What undo took back, in one line; empty, and there to be listened to, while it took back nothing. */
export function TakenBack() {
  const said = takenBack.value;
  const here = said?.place === routeHash(route.value) && said.entries === openJob.value?.entries.length;
  return (
    <p class="small taken-back" role="status">
      {here ? said.text : ''}
    </p>
  );
}
