import type { Step } from '../../core/guide/index.ts';
import type { Sheet, SheetReading } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import { pointLabel, readingName, stringOf, wordsOfPiece } from '../model/words.ts';

/** A step's name in the list and at the top of its screen. */
export function stepTitle(step: Step, sheet: Sheet): string {
  switch (step.on) {
    case 'reading':
      return readingName(step.reading, sheet);
    case 'shot':
      return wordsOfPiece(sheet, step.shot.piece)?.shots[step.key]?.title ?? step.key;
    case 'question':
      return wordsOfPiece(sheet, step.question.piece)?.questions[step.key]?.title ?? step.key;
    case 'run':
      return wordsOfPiece(sheet, step.run.piece)?.runs[step.key]?.title ?? step.key;
  }
}

/** Where to hook and where to read, in one sentence each; then the usual mistake where there is one. */
export function readingInstruction(
  reading: SheetReading,
  sheet: Sheet,
): { sentences: string[]; mistake: string | null } {
  const words = wordsOfPiece(sheet, reading.piece);
  const guide = say().guide;
  const own = reading.slot === null ? undefined : words?.readings?.[reading.slot];
  const told = reading.points.map((id) => {
    const point = sheet.points.find((candidate) => candidate.id === id);
    const known = point?.slot ? words?.points[point.slot] : undefined;
    return { label: point?.label ?? '?', name: known?.name, where: known?.where };
  });
  const mistake = (reading.slot ? words?.mistakes[reading.slot] : undefined) ?? null;
  if (own) return { sentences: [own.how], mistake };
  const [a, b] = told;
  if (reading.kind === 'straight' && a && b) {
    if (!a.name || !a.where || !b.name || !b.where) return { sentences: [guide.plainTaut(a.label, b.label)], mistake };
    return { sentences: [guide.hook(a.label, a.name, a.where), guide.taut(b.label, b.name, b.where)], mistake };
  }
  if (reading.kind === 'girth' && a && b) return { sentences: [guide.girth(a.label, b.label)], mistake };
  const [from, to] = stringOf(reading).map((id) => pointLabel(sheet, id));
  if (from !== undefined && to !== undefined && a?.name && a.where)
    return {
      sentences: [
        guide.string(from, to),
        reading.kind === 'along' ? guide.alongString(from, a.label, a.name) : guide.offString(a.label, a.name, a.where),
      ],
      mistake,
    };
  if (reading.kind === 'height' && a?.name && a.where)
    return { sentences: [guide.height(a.label, a.name, a.where)], mistake: mistake ?? words?.heights ?? null };
  const kind = say().general.kinds[reading.kind];
  return { sentences: [guide.plainOther(kind, reading.points.map((id) => pointLabel(sheet, id)).join(', '))], mistake };
}

export const shotWords = (sheet: Sheet, piece: string, slot: string) => wordsOfPiece(sheet, piece)?.shots[slot];
export const questionWords = (sheet: Sheet, piece: string, slot: string) => wordsOfPiece(sheet, piece)?.questions[slot];
export const runWords = (sheet: Sheet, piece: string, slot: string) => wordsOfPiece(sheet, piece)?.runs[slot];
