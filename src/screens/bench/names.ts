import type { Subject } from '../../core/check/index.ts';
import type { Sheet, SheetQuestion, SheetReading } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { sayEdges } from '../../text/edges.ts';
import { sayGuide } from '../../text/guide.ts';
import { sayShop } from '../../text/shop.ts';
import { whoText } from '../model/job-words.ts';
import { runTitle as nameOfRun, readingName, shotTitle, valueText, wordsOfPiece } from '../model/words.ts';

export { labelsOf, shotTitle } from '../model/words.ts';

export const pieceName = (sheet: Sheet, id: string): string =>
  sheet.pieces.find((piece) => piece.id === id)?.name ?? sayBench().history.missing;

export const questionTitle = (sheet: Sheet, piece: string, slot: string): string =>
  wordsOfPiece(sheet, piece)?.questions[slot]?.title ?? slot;

export function choiceText(sheet: Sheet, question: Pick<SheetQuestion, 'piece' | 'slot'>, choice: string): string {
  if (choice === 'none-here') return sayGuide().noneHere;
  if (choice === 'could-not-tell') return sayGuide().couldNotTell;
  return wordsOfPiece(sheet, question.piece)?.questions[question.slot]?.choices[choice] ?? choice;
}

export function runTitle(sheet: Sheet, id: string): string {
  const run = sheet.runs.find((candidate) => candidate.id === id);
  return run ? nameOfRun(sheet, run) : sayBench().history.missing;
}

export function readingTitle(sheet: Sheet, id: string): string {
  const reading = sheet.readings.find((candidate) => candidate.id === id);
  return reading ? readingName(reading, sheet) : sayBench().history.missing;
}

/** What can be asked again, by the name people know it by. */
export function thingName(sheet: Sheet, piece: string, on: Subject['on'], id: string): string {
  switch (on) {
    case 'reading':
      return readingTitle(sheet, id);
    case 'run':
      return runTitle(sheet, id);
    case 'shot':
      return shotTitle(sheet, piece, id);
    case 'question':
      return questionTitle(sheet, piece, id);
    default:
      return id;
  }
}

export const readingValue = (reading: SheetReading, sheet: Sheet): string =>
  reading.value === null ? '' : valueText(reading.value, reading.kind, sheet);

/** What the sister boat measured there; for the bench only, since it would lead whoever reads the tape. */
export const expectedText = ({ expected, kind }: SheetReading, sheet: Sheet): string =>
  expected === null ? '' : sayShop().sister.expected(valueText(expected.value, kind, sheet));

/** Everybody who had a hand in a reading, each once. */
export function readBy(reading: SheetReading): string {
  const names = reading.takes.filter((take) => take.struck === null).map((take) => whoText(take.who));
  if (names.length === 0 && reading.answer) names.push(whoText(reading.answer.who));
  return [...new Set(names)].join(', ');
}

/** A stored word about an edge or a thing in the way, as people say it; the word itself where there is none. */
export function edgeWord(value: string): string {
  const { closures, into, setters, pulls, treatments, presence, yesNo } = sayEdges().names;
  const known: Record<string, string | undefined> = {
    ...closures,
    ...into,
    ...setters,
    ...pulls,
    ...treatments,
    ...presence,
    ...yesNo,
  };
  return known[value] ?? value;
}
