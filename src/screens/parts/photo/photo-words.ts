import {
  type PhotoLine,
  type PhotoMark,
  referenceLength,
  type Sheet,
  type SheetPhoto,
  widthAtReference,
} from '../../../core/job/index.ts';
import { sayPhotos } from '../../../text/photos.ts';
import { lengthText, pointLabel, readingName, runTitle, shotTitle } from '../../model/words.ts';

/** What a mark says: its point's label, or the note at the place. */
export const markText = (mark: Pick<PhotoMark, 'point' | 'text'>, sheet: Sheet): string =>
  mark.point === null ? mark.text || sayPhotos().unmarked : pointLabel(sheet, mark.point);

export function edgeName(sheet: Sheet, id: string | null): string {
  const run = sheet.runs.find((candidate) => candidate.id === id);
  return run ? runTitle(sheet, run) : '';
}

/** A line by its name, and by its length where it is of known size. */
export function lineText(line: PhotoLine, sheet: Sheet): string {
  if (line.of === 'edge') return edgeName(sheet, line.run) || line.text;
  if (line.of !== 'reference' || line.reference === null) return line.text;
  const words = sayPhotos();
  const name = line.text || words.references[line.reference];
  const length = referenceLength(line);
  return length === null ? name : words.known(name, lengthText(length, sheet));
}

/** Less, or more, than any picture of a boat shows from side to side, mm. Common sense, no source. */
const [NARROWEST, WIDEST] = [50, 40_000];

/** What a reference would make of the picture, to be compared with the boat; null for other lines. */
export function plausibility(line: PhotoLine, photo: SheetPhoto, sheet: Sheet): string | null {
  const width = line.of === 'reference' ? widthAtReference(line, photo) : null;
  if (width === null) return null;
  const words = sayPhotos();
  const said = wholeText(width, sheet);
  return width < NARROWEST || width > WIDEST ? words.cannotBe(said) : words.wide(said);
}

/** A length about which only its size matters: whole inches or feet, centimetres or metres. */
function wholeText(mm: number, { system }: Pick<Sheet, 'system'>): string {
  if (system === 'metric') return mm < 2000 ? `${Math.round(mm / 10)} cm` : `${(mm / 1000).toFixed(1)} m`;
  const inches = mm / 25.4;
  return inches < 36 ? `${Math.round(inches)} in` : `${(inches / 12).toFixed(1)} ft`;
}

/** What a picture is of: the picture asked for, or the reading or edge it was taken at; null for one taken freely. */
export function photoTitle(photo: Pick<SheetPhoto, 'piece' | 'slot' | 'reading' | 'run'>, sheet: Sheet): string | null {
  if (photo.slot !== null) return shotTitle(sheet, photo.piece, photo.slot);
  const reading = sheet.readings.find((candidate) => candidate.id === photo.reading);
  if (reading) return readingName(reading, sheet);
  return edgeName(sheet, photo.run ?? null) || null;
}
