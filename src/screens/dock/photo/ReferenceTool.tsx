import { useState } from 'preact/hooks';
import { ReferenceKind, type Sheet } from '../../../core/job/index.ts';
import { sayLength } from '../../../text/length.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { lengthText, readLength } from '../../model/words.ts';

interface Reference {
  reference: ReferenceKind;
  length: number | null;
  text: string;
}

/** Which thing of known size is in the picture, and how long it is where that does not follow from what it is. */
export function ReferenceTool({ sheet, onReady }: { sheet: Sheet; onReady: (reference: Reference) => void }) {
  const [kind, setKind] = useState<'tape' | 'other' | null>(null);
  const words = sayPhotos();
  if (kind) return <HowLong kind={kind} sheet={sheet} onReady={onReady} />;
  return (
    <div class="choices">
      {ReferenceKind.options.map((reference) => (
        <button
          key={reference}
          type="button"
          class="button choice"
          onClick={() =>
            reference === 'tape' || reference === 'other'
              ? setKind(reference)
              : onReady({ reference, length: null, text: '' })
          }
        >
          {words.references[reference]}
        </button>
      ))}
    </div>
  );
}

function HowLong(props: { kind: 'tape' | 'other'; sheet: Sheet; onReady: (reference: Reference) => void }) {
  const { kind, sheet, onReady } = props;
  const [typed, setTyped] = useState('');
  const [name, setName] = useState('');
  const words = sayPhotos();
  const read = typed.trim() === '' ? null : readLength(typed, sheet);
  const length = read?.ok && read.mm > 0 ? read.mm : null;
  const ready = length !== null && (kind === 'tape' || name.trim() !== '');
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (ready) onReady({ reference: kind, length, text: name.trim() });
      }}
    >
      {kind === 'other' && (
        <label class="field">
          <span>{words.whatIsIt}</span>
          <input value={name} maxLength={80} onInput={(event) => setName(event.currentTarget.value)} />
        </label>
      )}
      <label class="field">
        <span>{words.howLong}</span>
        <input value={typed} maxLength={40} inputMode="text" onInput={(event) => setTyped(event.currentTarget.value)} />
        <span class="quiet small" role="status">
          {length !== null && lengthText(length, sheet)}
          {read && !read.ok && sayLength().refusals[read.why]}
        </span>
      </label>
      <button type="submit" class="button main" disabled={!ready}>
        {words.toEnds}
      </button>
    </form>
  );
}
