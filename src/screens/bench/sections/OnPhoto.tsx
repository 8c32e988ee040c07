import type { PhotoLine, PhotoMark, Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { lineText, markText, plausibility } from '../../parts/photo/photo-words.ts';
import { isSelected, pointedAt, toggle } from '../state/selection.ts';

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
}

type Linked = { on: 'point' | 'run'; id: string };

/** What is on a picture, by name: points and edges lead to all that belongs to them, notes are to be read. */
export function OnPhoto({ photo, sheet }: Props) {
  const words = sayPhotos();
  const parts = [...photo.marks, ...photo.lines].flatMap((part) => {
    const to = linkOf(part);
    return to ? [{ part, to }] : [];
  });
  const places = photo.marks.filter((mark) => mark.point === null && mark.text !== '');
  const known = photo.lines.filter((line) => line.of !== 'edge');
  const notes = sheet.notes.filter((note) => note.on === photo.id);
  return (
    <>
      {parts.length > 0 && (
        <ul class="row" aria-label={words.marks}>
          {parts.map(({ part, to }) => (
            <li key={part.id}>
              <Link to={to} name={'point' in part ? markText(part, sheet) : lineText(part, sheet)} />
            </li>
          ))}
        </ul>
      )}
      {places.length > 0 && (
        <p class="bench-said">
          {sayBench().photos.atPlaces}: {places.map((mark) => mark.text).join(' · ')}
        </p>
      )}
      {known.map((line) => (
        <p key={line.id}>
          {lineText(line, sheet)} <span class="quiet small">{plausibility(line, photo, sheet)}</span>
        </p>
      ))}
      {notes.map((note) => (
        <p key={note.id}>
          <span class="bench-said">{note.text}</span>{' '}
          <span class="small quiet">{say().general.signedBy(whoText(note.who), dateText(note.at))}</span>
        </p>
      ))}
    </>
  );
}

function linkOf(part: PhotoMark | PhotoLine): Linked | null {
  if ('point' in part) return part.point === null ? null : { on: 'point', id: part.point };
  return part.run === null ? null : { on: 'run', id: part.run };
}

/** Tapped it stays lit; under the pointer it is lit while the pointer is there. */
function Link({ to, name }: { to: Linked; name: string }) {
  const leave = (): void => {
    pointedAt.value = null;
  };
  return (
    <button
      type="button"
      class="button"
      aria-pressed={isSelected(to.on, to.id)}
      onClick={() => toggle(to.on, to.id)}
      onPointerEnter={(event) => {
        if (event.pointerType === 'mouse') pointedAt.value = to;
      }}
      onPointerLeave={leave}
    >
      {name}
    </button>
  );
}
