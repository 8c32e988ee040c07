import { useState } from 'preact/hooks';
import type { Fitting, Payload, Sheet } from '../../../core/job/index.ts';
import { sayFitting } from '../../../text/fitting.ts';
import { say } from '../../../text/index.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { act, type OpenJob, undo } from '../../model/open-job.ts';
import { actor } from '../../model/services.ts';
import { readingName, readValue, runTitle } from '../../model/words.ts';
import { fittingWhat, fittingWhere } from './fitting-words.ts';

/** What was found when a cleared piece was fitted, and a form for more of it. */
export function FittingSection({ job, piece }: { job: OpenJob; piece: string }) {
  const [open, setOpen] = useState(false);
  const words = sayFitting();
  const notes = job.sheet.fittings.filter((note) => note.piece === piece);
  const wasCleared = job.sheet.clearances.some((clearance) => clearance.piece === piece);
  if (notes.length === 0 && !wasCleared) return null;
  return (
    <section class="stack bench-section">
      <h2>{words.heading}</h2>
      {notes.map((note) => (
        <NoteLine key={note.id} job={job} note={note} />
      ))}
      {wasCleared && !open && (
        <button type="button" class="button" onClick={() => setOpen(true)}>
          {words.add}
        </button>
      )}
      {open && <NoteForm job={job} piece={piece} onDone={() => setOpen(false)} />}
    </section>
  );
}

/** Whoever wrote a note down can take it back; it stays in the history. */
function NoteLine({ job, note }: { job: OpenJob; note: Fitting }) {
  const entry = job.entries.find(({ id }) => id === note.id);
  const isOwn = entry !== undefined && entry.who.role === actor.value.role && note.from === null;
  return (
    <div class="row spread">
      <p class="said">
        <strong>{fittingWhere(job.sheet, note)}</strong> {fittingWhat(note)}{' '}
        <span class="small quiet">
          {note.from === null
            ? say().general.signedBy(whoText(note.who), dateText(note.at))
            : sayFitting().from(note.from)}
        </span>
      </p>
      {isOwn && (
        <button type="button" class="button plain" onClick={() => void undo(entry)}>
          {sayFitting().takeBack}
        </button>
      )}
    </div>
  );
}

type Where = Payload<'fitting.note'>['where'];

function NoteForm({ job, piece, onDone }: { job: OpenJob; piece: string; onDone: () => void }) {
  const words = sayFitting();
  const [where, setWhere] = useState('');
  const [change, setChange] = useState('');
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState('');
  const save = async (): Promise<void> => {
    const text = change.trim();
    const read = text === '' ? null : readValue(text, 'straight', job.sheet);
    if (read && !read.ok) return setRefusal(read.refusal);
    if (why.trim() === '') return setRefusal(words.whyNeeded);
    await act('fitting.note', { piece, where: whereOf(where), change: read?.value ?? null, text, why: why.trim() });
    onDone();
  };
  return (
    <form
      class="stack"
      onInput={() => setRefusal('')}
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <p class="quiet small">{words.help}</p>
      <label class="field">
        <span>{words.where}</span>
        <select value={where} onChange={(event) => setWhere(event.currentTarget.value)}>
          <option value="">{words.piece}</option>
          <Places sheet={job.sheet} piece={piece} />
        </select>
      </label>
      <label class="field">
        <span>{words.change}</span>
        <input value={change} maxLength={40} onInput={(event) => setChange(event.currentTarget.value)} />
        <span class="quiet small">{words.changeHelp}</span>
      </label>
      <label class="field">
        <span>{words.why}</span>
        <textarea value={why} maxLength={1000} onInput={(event) => setWhy(event.currentTarget.value)} />
      </label>
      {refusal !== '' && <p role="alert">{refusal}</p>}
      <div class="row">
        <button type="submit" class="button main">
          {words.save}
        </button>
        <button type="button" class="button plain" onClick={onDone}>
          {say().general.cancel}
        </button>
      </div>
    </form>
  );
}

function whereOf(key: string): Where {
  const [on, id] = key.split(' ');
  return id !== undefined && (on === 'point' || on === 'run' || on === 'reading') ? { on, id } : null;
}

/** What a note can be about, in the order of the walk. */
function Places({ sheet, piece }: { sheet: Sheet; piece: string }) {
  const { kinds } = sayFitting();
  const groups = {
    point: sheet.points.filter(({ pieces }) => pieces.includes(piece)).map(({ id, label }) => ({ id, name: label })),
    run: sheet.runs.filter((run) => run.piece === piece).map((run) => ({ id: run.id, name: runTitle(sheet, run) })),
    reading: sheet.readings
      .filter((reading) => reading.piece === piece)
      .map((reading) => ({ id: reading.id, name: readingName(reading, sheet) })),
  };
  return (
    <>
      {(['point', 'run', 'reading'] as const)
        .filter((on) => groups[on].length > 0)
        .map((on) => (
          <optgroup key={on} label={kinds[on]}>
            {groups[on].map(({ id, name }) => (
              <option key={id} value={`${on} ${id}`}>
                {name}
              </option>
            ))}
          </optgroup>
        ))}
    </>
  );
}
