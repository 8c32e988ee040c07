import { type Entry, isErased, isKnownKind, type Payload, payloads } from '../../core/job/index.ts';
import { say } from '../../text/index.ts';
import type { OpenJob } from '../model/open-job.ts';
import { pointLabel } from '../model/words.ts';
import { findingText } from '../parts/FindingLine.tsx';
import { choiceText, pieceName, questionTitle, readingTitle, runTitle, shotTitle, thingName } from './names.ts';
import { readingOfTake } from './state/entry-subjects.ts';

type Say = { [K in keyof typeof payloads]: (payload: Payload<K>, job: OpenJob, entry: Entry) => string };

const noValue = (answer: 'none-here' | 'could-not'): string => say().bench.readings.states[answer];

const words: Say = {
  'job.open': ({ name }) => say().bench.history.opened(name),
  'job.detail': ({ field, value }) => say().bench.history.detail(say().bench.history.details[field], value),
  'piece.add': ({ name }) => say().bench.history.piece(name),
  'point.add': ({ point }) => say().bench.history.point(point.label),
  'reading.add': ({ reading }, { sheet }) => say().bench.history.asked(readingTitle(sheet, reading.id)),
  'take.add': ({ reading, text }, { sheet }) => say().bench.history.take(readingTitle(sheet, reading), text),
  'take.strike': ({ take, reason }, { sheet }) => {
    const reading = readingOfTake(sheet, take);
    const text = reading?.takes.find(({ id }) => id === take)?.text ?? say().bench.history.missing;
    return say().bench.history.strike(text, readingTitle(sheet, reading?.id ?? ''), reason);
  },
  'reading.answer': ({ reading, answer, reason }, { sheet }) =>
    say().bench.history.answer(readingTitle(sheet, reading), noValue(answer), reason),
  'fastener.add': ({ run, type, presence }, { sheet }) =>
    say().bench.history.fastener(runTitle(sheet, run), say().general.fasteners[type], say().general.presence[presence]),
  'run.detail': (detail, { sheet }) =>
    say().bench.history.run(
      runTitle(sheet, detail.run),
      say().bench.history.runFields[detail.field],
      runValue(detail).toLowerCase(),
    ),
  'photo.add': ({ piece, slot }, { sheet }) =>
    slot === null ? say().bench.history.freePhoto : say().bench.history.photo(shotTitle(sheet, piece, slot)),
  'photo.mark': ({ photo, point, text }, { sheet }) => {
    const on = sheet.photos.find(({ id }) => id === photo);
    const title = on?.slot ? shotTitle(sheet, on.piece, on.slot) : say().bench.history.missing;
    return say().bench.history.mark(point === null ? text : pointLabel(sheet, point), title);
  },
  'photo.answer': ({ piece, slot, answer, reason }, { sheet }) =>
    say().bench.history.answer(shotTitle(sheet, piece, slot), noValue(answer), reason),
  'question.answer': ({ piece, slot, choice, text }, { sheet }) =>
    say().bench.history.answer(
      questionTitle(sheet, piece, slot),
      choiceText(sheet, { piece, slot }, choice),
      text.slice(0, 200),
    ),
  'finding.accept': ({ finding, reason }, { sheet, findings }) => {
    const about = findings.find(({ id }) => id === finding);
    const what = about ? findingText(about, sheet) : `${say().bench.history.goneFinding}.`;
    return say().bench.history.accept(what, reason);
  },
  'ask.again': ({ piece, items }, { sheet }) =>
    say().bench.history.ask(say().bench.list(items.map(({ on, id }) => thingName(sheet, piece, on, id)))),
  'piece.clear': ({ piece }, { sheet }) => say().bench.history.clear(pieceName(sheet, piece)),
  'note.add': ({ text }) => say().bench.history.note(text),
  undo: ({ entry: of }, job, entry) => {
    const back = job.entries.find(({ id }) => id === of);
    // An undo of an undo names what it brought back; a ring of them, which nobody makes, ends here.
    const told = back && back.id !== entry.id && back.kind !== 'undo' ? historyText(back, job) : null;
    return say().bench.history.undo(told ?? say().bench.history.missing);
  },
  erase: ({ entries, reason }) => say().bench.history.erase(entries.length, reason),
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
  if (!isKnownKind(kind)) return say().bench.history.unknown(kind);
  if (isErased(entry)) return say().bench.history.erased(kind);
  return told(kind, entry, job) ?? say().bench.history.unreadable(kind);
}

function told<K extends keyof Say>(kind: K, entry: Entry, job: OpenJob): string | null {
  const read = payloads[kind].safeParse(entry.payload);
  return read.success ? words[kind](read.data as Payload<K>, job, entry) : null;
}

/** Ids of entries that were taken back by an undo that itself still counts. */
export function takenBack(entries: readonly Entry[]): ReadonlySet<string> {
  const undos = entries.flatMap((entry) => {
    const read = entry.kind === 'undo' ? payloads.undo.safeParse(entry.payload) : null;
    return read?.success ? [{ id: entry.id, of: read.data.entry }] : [];
  });
  const back = new Set<string>();
  for (let changed = true, rounds = 0; changed && rounds <= undos.length; rounds += 1) {
    const before = [...back].sort().join();
    const next = new Set(undos.filter(({ id }) => !back.has(id)).map(({ of }) => of));
    back.clear();
    for (const id of next) back.add(id);
    changed = [...back].sort().join() !== before;
  }
  return back;
}
