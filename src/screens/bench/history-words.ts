import { type Entry, isErased, isKnownKind, type Payload, payloads, type Sheet } from '../../core/job/index.ts';
import { sayBench } from '../../text/bench.ts';
import { sayFitting } from '../../text/fitting.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import { pointLabel, shotTitle } from '../model/words.ts';
import { findingText } from '../parts/FindingLine.tsx';
import { fittingWhat, fittingWhere } from '../parts/fitting/fitting-words.ts';
import { lineText, photoTitle } from '../parts/photo/photo-words.ts';
import { slipName } from './engine-words.ts';
import {
  choiceText,
  edgeWord,
  labelsOf,
  pieceName,
  questionTitle,
  readingTitle,
  runTitle,
  thingName,
} from './names.ts';
import { readingOfTake } from './state/entry-subjects.ts';

function titleOfPhoto(id: string | null, sheet: Sheet): string {
  const photo = sheet.photos.find((candidate) => candidate.id === id);
  return photo ? (photoTitle(photo, sheet) ?? sayBench().history.aPhoto) : sayBench().history.missing;
}

type Say = { [K in keyof typeof payloads]: (payload: Payload<K>, job: OpenJob, entry: Entry) => string };

const noValue = (answer: 'none-here' | 'could-not'): string => sayBench().readings.states[answer];

const words: Say = {
  'job.open': ({ name }) => sayBench().history.opened(name),
  'job.detail': ({ field, value }) => sayBench().history.detail(sayBench().history.details[field], value),
  'piece.add': ({ name }) => sayBench().history.piece(name),
  'point.add': ({ point }) => sayBench().history.point(point.label),
  'reading.add': ({ reading }, { sheet }) => sayBench().history.asked(readingTitle(sheet, reading.id)),
  'job.request': ({ shop }) => sayBench().history.requested(shop),
  'job.shop': () => sayBench().history.shop,
  'point.drop': ({ point, reason }, { sheet }) => sayBench().history.pointDropped(pointLabel(sheet, point), reason),
  'point.label': ({ label }) => sayBench().history.relabelled(label),
  'reading.drop': ({ reading, reason }, { sheet }) =>
    sayBench().history.readingDropped(readingTitle(sheet, reading), reason),
  'reading.expect': ({ reading, text, from }, { sheet }) =>
    sayBench().history.expected(readingTitle(sheet, reading), text, from),
  'reading.suppose': ({ reading, text, slip }, { sheet }) =>
    sayBench().history.supposed(readingTitle(sheet, reading), text, slipName(slip)),
  'run.add': ({ run }, { sheet }) => sayBench().history.edge(runTitle(sheet, run.id)),
  'run.points': ({ run, points }, { sheet }) =>
    sayBench().history.edgePoints(runTitle(sheet, run), labelsOf(sheet, points)),
  'stretch.set': ({ run, from, field, value }, { sheet }) =>
    sayBench().history.stretch(
      runTitle(sheet, run),
      pointLabel(sheet, from),
      sayBench().history.stretchFields[field],
      edgeWord(value),
    ),
  'shot.add': ({ shot }) => sayBench().history.shotAsked(shot.slot),
  'photo.line': (line, { sheet }, { id }) =>
    sayBench().history.line(sayBench().history.lines[line.of], lineText({ id, ...line }, sheet)),
  'obstruction.add': ({ label }) => sayBench().history.obstruction(label),
  'obstruction.set': ({ obstruction, field, value }, { sheet }) =>
    sayBench().history.obstructionSet(
      sheet.obstructions.find(({ id }) => id === obstruction)?.label ?? sayBench().history.missing,
      sayBench().history.obstructionFields[field],
      typeof value === 'string' ? edgeWord(value) : '',
    ),
  'obstruction.drop': ({ reason }) => sayBench().history.obstructionDropped(reason),
  'take.add': ({ reading, text }, { sheet }) => sayBench().history.take(readingTitle(sheet, reading), text),
  'take.strike': ({ take, reason }, { sheet }) => {
    const reading = readingOfTake(sheet, take);
    const text = reading?.takes.find(({ id }) => id === take)?.text ?? sayBench().history.missing;
    return sayBench().history.strike(text, readingTitle(sheet, reading?.id ?? ''), reason);
  },
  'reading.answer': ({ reading, answer, reason }, { sheet }) =>
    sayBench().history.answer(readingTitle(sheet, reading), noValue(answer), reason),
  'fastener.add': ({ run, type, presence }, { sheet }) =>
    sayBench().history.fastener(runTitle(sheet, run), say().general.fasteners[type], say().general.presence[presence]),
  'run.answer': ({ run, answer, reason }, { sheet }) =>
    sayBench().history.answer(runTitle(sheet, run), noValue(answer), reason),
  'run.detail': (detail, { sheet }) =>
    sayBench().history.run(
      runTitle(sheet, detail.run),
      sayBench().history.runFields[detail.field],
      runValue(detail).toLowerCase(),
    ),
  'photo.add': (photo, { sheet }) => {
    const title = photoTitle(photo, sheet);
    return title === null ? sayBench().history.freePhoto : sayBench().history.photo(title);
  },
  'photo.mark': ({ photo, point, text }, { sheet }) =>
    sayBench().history.mark(point === null ? text : pointLabel(sheet, point), titleOfPhoto(photo, sheet)),
  'photo.answer': ({ piece, slot, answer, reason }, { sheet }) =>
    sayBench().history.answer(shotTitle(sheet, piece, slot), noValue(answer), reason),
  'question.answer': ({ piece, slot, choice, text }, { sheet }) =>
    sayBench().history.answer(
      questionTitle(sheet, piece, slot),
      choiceText(sheet, { piece, slot }, choice),
      text.slice(0, 200),
    ),
  'finding.accept': ({ finding, reason }, { sheet, findings }) => {
    const about = findings.find(({ id }) => id === finding);
    const what = about ? findingText(about, sheet) : `${sayBench().history.goneFinding}.`;
    return sayBench().history.accept(what, reason);
  },
  'ask.again': ({ piece, items }, { sheet }) =>
    sayBench().history.ask(sayBench().list(items.map(({ on, id }) => thingName(sheet, piece, on, id)))),
  'piece.clear': ({ piece }, { sheet }) => sayBench().history.clear(pieceName(sheet, piece)),
  'fitting.note': (note, { sheet }) => sayFitting().history(fittingWhere(sheet, note), fittingWhat(note)),
  'note.add': ({ on, text }, { sheet }) =>
    sheet.photos.some(({ id }) => id === on)
      ? sayBench().history.noteOnPhoto(titleOfPhoto(on, sheet), text)
      : sayBench().history.note(text),
  'practice.done': ({ paper, readings }) => {
    const { practised, papers, paperSides } = sayBench().history;
    return practised(papers[paper], sayBench().list(readings.map(({ of, text }) => `${paperSides[of]} ${text}`)));
  },
  undo: ({ entry: of }, job, entry) => {
    const back = job.entries.find(({ id }) => id === of);
    // An undo of an undo names what it brought back; a ring of them, which nobody makes, ends here.
    const told = back && back.id !== entry.id && back.kind !== 'undo' ? historyText(back, job) : null;
    return sayBench().history.undo(told ?? sayBench().history.missing);
  },
  erase: ({ entries, reason }) => sayBench().history.erase(entries.length, reason),
};

function runValue(detail: Payload<'run.detail'>): string {
  const { manners, lines, fasteners, presence } = say().general;
  switch (detail.field) {
    case 'manner':
      return manners[detail.value];
    case 'line':
      return lines[detail.value];
    case 'type':
      return fasteners[detail.value];
    case 'presence':
      return presence[detail.value];
    case 'planned-count':
      return detail.value;
  }
}

/** What an entry did, in one short sentence. */
export function historyText(entry: Entry, job: OpenJob): string {
  const { kind } = entry;
  if (!isKnownKind(kind)) return sayBench().history.unknown(kind);
  if (isErased(entry)) return sayBench().history.erased(kind);
  return told(kind, entry, job) ?? sayBench().history.unreadable(kind);
}

function told<K extends keyof Say>(kind: K, entry: Entry, job: OpenJob): string | null {
  const read = payloads[kind].safeParse(entry.payload);
  return read.success ? words[kind](read.data as Payload<K>, job, entry) : null;
}
