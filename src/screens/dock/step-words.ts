import { currentOf } from '../../core/guide/amend/index.ts';
import type { Step } from '../../core/guide/index.ts';
import type { Sheet, SheetPhoto, SheetPoint, SheetReading } from '../../core/job/index.ts';
import { sayGuide } from '../../text/guide.ts';
import type { PointWords } from '../../text/guides.ts';
import { say } from '../../text/index.ts';
import { pointLabel, readingName, runTitle, shotTitle, stringOf, wordsOfPiece } from '../model/words.ts';

/** A step's name in the list and at the top of its screen. */
export function stepTitle(step: Step, sheet: Sheet): string {
  switch (step.on) {
    case 'reading':
      return readingName(step.reading, sheet);
    case 'shot':
      return shotTitle(sheet, step.shot.piece, step.shot.slot);
    case 'question':
      return wordsOfPiece(sheet, step.question.piece)?.questions[step.key]?.title ?? step.key;
    case 'run':
      return runTitle(sheet, step.run);
  }
}

/** Pictures taken at a reading or an edge besides those asked for. */
export function photosAt(step: Step, sheet: Sheet): SheetPhoto[] {
  if (step.on === 'reading')
    return sheet.photos.filter(({ slot, reading }) => slot === null && reading === step.reading.id);
  return step.on === 'run' ? sheet.photos.filter(({ slot, run }) => slot === null && run === step.run.id) : [];
}

/** Where to hook and where to read, in one sentence each; then the usual mistake where there is one. */
export function readingInstruction(
  reading: SheetReading,
  sheet: Sheet,
): { sentences: string[]; mistake: string | null } {
  const words = wordsOfPiece(sheet, reading.piece);
  const guide = sayGuide();
  const own = reading.slot === null ? undefined : words?.readings?.[reading.slot];
  const told = reading.points.map((id) => {
    const known = wordsOfPoint(sheet, id);
    const label = pointLabel(sheet, id);
    return { label, named: guide.spot(label, [known?.name]), spot: guide.spot(label, [known?.name, known?.where]) };
  });
  const usual = reading.slot === null ? undefined : words?.mistakes[reading.slot];
  const mistake = usual === undefined ? null : labelled(usual, sheet, reading.piece);
  if (own) return { sentences: [labelled(own.how, sheet, reading.piece)], mistake };
  const [a, b] = told;
  if (reading.kind === 'straight' && a && b) return { sentences: [guide.hook(a.spot), guide.taut(b.spot)], mistake };
  if (reading.kind === 'girth' && a && b) return { sentences: [guide.girth(a.label, b.label)], mistake };
  const [from, to] = stringOf(reading).map((id) => pointLabel(sheet, id));
  if (from !== undefined && to !== undefined && a) {
    const square = reading.kind === 'along' ? guide.alongString(from, a.named) : guide.offString(a.spot);
    return { sentences: [guide.string(from, to), square], mistake };
  }
  if (reading.kind === 'height' && a)
    return { sentences: [guide.height(a.spot)], mistake: mistake ?? words?.heights ?? null };
  if (reading.kind === 'size') return { sentences: [guide.size(readingName(reading, sheet))], mistake };
  const kind = say().general.kinds[reading.kind];
  return { sentences: [guide.plainOther(kind, told.map(({ label }) => label).join(', '))], mistake };
}

/**
 * What a point is, in the words of the guide that declared it first; a mark that stands for another is in its place. A
 * point of a person's own has what they wrote.
 */
export function wordsOfPoint(sheet: Sheet, id: string): PointWords | undefined {
  const point = sheet.points.find((candidate) => candidate.id === id);
  if (!point) return undefined;
  if (point.note !== undefined) return { name: point.note, where: '' };
  if (point.replaces !== undefined) {
    const before = wordsOfPoint(sheet, point.replaces);
    return before && { ...before, name: sayGuide().inPlaceOf(before.name) };
  }
  return point.slot === null ? undefined : wordsOfPiece(sheet, point.pieces[0] ?? '')?.points[point.slot];
}

/** The mark of a reading that was moved since; null while all its marks are where they were. */
export function movedMarkOf({ points, via = [], baseline = [] }: SheetReading, sheet: Sheet): SheetPoint | null {
  const spokenOf = new Set([...points, ...via, ...baseline]);
  return sheet.points.find(({ id, replacedBy }) => replacedBy !== null && spokenOf.has(id)) ?? null;
}

/** A guide's sentence with the names its points have now: numbers follow the walk, and a mark may have been moved. */
function labelled(text: string, sheet: Sheet, piece: string): string {
  const own = sheet.points.filter(({ pieces }) => pieces.includes(piece));
  return text.replace(/\b[A-Z]+\d+\b/g, (slot) => {
    const point = own.find((candidate) => candidate.slot === slot);
    return point ? (own.find(({ id }) => id === currentOf(sheet, point.id))?.label ?? slot) : slot;
  });
}

const told = <W extends { how: string }>(words: W | undefined, sheet: Sheet, piece: string): W | undefined =>
  words && { ...words, how: labelled(words.how, sheet, piece) };

export const shotWords = (sheet: Sheet, piece: string, slot: string) =>
  told(wordsOfPiece(sheet, piece)?.shots[slot], sheet, piece);
export const questionWords = (sheet: Sheet, piece: string, slot: string) => wordsOfPiece(sheet, piece)?.questions[slot];
export const runWords = (sheet: Sheet, piece: string, slot: string) =>
  told(wordsOfPiece(sheet, piece)?.runs[slot], sheet, piece);
