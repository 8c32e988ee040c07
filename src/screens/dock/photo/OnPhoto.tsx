import type { PhotoMark, Sheet, SheetPhoto } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { dateText, whoText } from '../../model/job-words.ts';
import { act } from '../../model/open-job.ts';
import { lineText, markText, plausibility } from '../../parts/photo/photo-words.ts';

interface Props {
  photo: SheetPhoto;
  sheet: Sheet;
}

/** The marks of a picture by name; one that is picked can be moved or removed. */
export function MarksOn(props: Props & { held: PhotoMark | undefined; onPick: (mark: PhotoMark) => void }) {
  const { photo, sheet, held, onPick } = props;
  if (photo.marks.length === 0) return null;
  return (
    <ul class="row" aria-label={sayPhotos().marks}>
      {photo.marks.map((mark) => (
        <li key={mark.id}>
          <button type="button" class="button" aria-pressed={mark.id === held?.id} onClick={() => onPick(mark)}>
            {markText(mark, sheet)}
          </button>
        </li>
      ))}
    </ul>
  );
}

/** Edges drawn and things of known size, each with its way out. */
export function LinesOn({ photo, sheet }: Props) {
  const words = sayPhotos();
  if (photo.lines.length === 0) return null;
  return (
    <ul class="stack" aria-label={words.lines}>
      {photo.lines.map((line) => {
        const name = lineText(line, sheet);
        const sense = plausibility(line, photo, sheet);
        return (
          <li key={line.id}>
            <div class="row spread">
              <span>{name}</span>
              <RemoveButton label={words.removeLine(name)} entry={line.id} />
            </div>
            {sense && <p class="quiet small">{sense}</p>}
          </li>
        );
      })}
    </ul>
  );
}

/** What people wrote about the picture as a whole. */
export function NotesOn({ photo, sheet }: Props) {
  const words = sayPhotos();
  const notes = sheet.notes.filter((note) => note.on === photo.id);
  if (notes.length === 0) return null;
  return (
    <ul class="stack" aria-label={words.notes}>
      {notes.map((note) => (
        <li key={note.id} class="row spread">
          <span>
            {note.text} <span class="quiet small">{say().general.signedBy(whoText(note.who), dateText(note.at))}</span>
          </span>
          <RemoveButton label={words.removeNote} entry={note.id} />
        </li>
      ))}
    </ul>
  );
}

const RemoveButton = ({ label, entry }: { label: string; entry: string }) => (
  <button type="button" class="button plain" aria-label={label} onClick={() => void act('undo', { entry })}>
    ✕
  </button>
);
