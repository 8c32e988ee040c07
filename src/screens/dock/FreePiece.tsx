import { useState } from 'preact/hooks';
import { freePiece } from '../../core/guide/amend/index.ts';
import { uuid } from '../../device/clock.ts';
import { say } from '../../text/index.ts';
import { sayWalk } from '../../text/walk.ts';
import { act, type OpenJob } from '../model/open-job.ts';
import { go } from '../model/route.ts';
import './change/change.css';

/** A piece no guide knows begins with a name and whether it lies flat; its points come next. */
export function FreePiece({ job, onCancel }: { job: OpenJob; onCancel: () => void }) {
  const [name, setName] = useState('');
  const [flat, setFlat] = useState<boolean | null>(null);
  const words = sayWalk().free;
  const begin = async (): Promise<void> => {
    const piece = freePiece(name.trim(), flat ?? false, uuid);
    await act('piece.add', piece);
    go({ at: 'change', job: job.id, piece: piece.id, what: 'points' });
  };
  return (
    <section class="stack">
      <h2>{say().general.pieceKinds.free}</h2>
      <label class="field">
        <span>{words.name}</span>
        <input value={name} maxLength={80} autocomplete="off" onInput={(event) => setName(event.currentTarget.value)} />
      </label>
      <fieldset class="stack chips">
        <legend>{words.flat}</legend>
        <div class="choices">
          {[true, false].map((one) => (
            <button
              key={String(one)}
              type="button"
              class="button choice"
              aria-pressed={flat === one}
              onClick={() => setFlat(one)}
            >
              {one ? words.flats.yes : words.flats.no}
            </button>
          ))}
        </div>
      </fieldset>
      <div class="row">
        <button
          type="button"
          class="button main"
          disabled={name.trim() === '' || flat === null}
          onClick={() => void begin()}
        >
          {words.begin}
        </button>
        <button type="button" class="button plain" onClick={onCancel}>
          {say().general.cancel}
        </button>
      </div>
    </section>
  );
}
