import { looksOf } from '../../../core/guide/second-looks.ts';
import {
  type Entry,
  type EntryKind,
  isKnownKind,
  type Payload,
  payloads,
  type Role,
  type Sheet,
  takenBackWith,
} from '../../../core/job/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { pointLabel, readingName, runTitle, shotTitle } from '../../model/words.ts';
import { questionWords } from '../step-words.ts';

/** Who takes something back. hidden: readings whose values they are not to see. */
interface Looker {
  role: Role;
  hidden: ReadonlySet<string>;
}

type Say = { [K in EntryKind]?: (payload: Payload<K>, sheet: Sheet, looker: Looker) => string };

function readingNamed(id: string, sheet: Sheet): string {
  const reading = sheet.readings.find((one) => one.id === id);
  return reading ? readingName(reading, sheet) : '';
}

function edgeNamed(id: string, sheet: Sheet): string {
  const run = sheet.runs.find((one) => one.id === id);
  return run ? runTitle(sheet, run) : '';
}

/** An owner is told a value only where nothing else was read: beside another look it would lead the next one. */
function valueFor(id: string, text: string, sheet: Sheet, { role, hidden }: Looker): string {
  const reading = sheet.readings.find((one) => one.id === id);
  const alone = reading !== undefined && looksOf(reading).length < 2;
  return role !== 'owner' || (alone && !hidden.has(id)) ? text : '';
}

const words: Say = {
  'take.add': ({ reading, text }, sheet, looker) =>
    sayWalk().takenBack.reading(readingNamed(reading, sheet), valueFor(reading, text, sheet, looker)),
  'take.strike': ({ take }, sheet) => {
    const reading = sheet.readings.find(({ takes }) => takes.some(({ id }) => id === take));
    return sayWalk().takenBack.strike(reading ? readingName(reading, sheet) : '');
  },
  'reading.answer': ({ reading }, sheet) => sayWalk().takenBack.noValue(readingNamed(reading, sheet)),
  'reading.add': ({ reading }, sheet) => sayWalk().takenBack.asked(readingNamed(reading.id, sheet)),
  'question.answer': ({ piece, slot, choice }, sheet) => {
    const known = questionWords(sheet, piece, slot);
    return sayWalk().takenBack.answer(known?.title ?? slot, known?.choices[choice] ?? '');
  },
  'photo.add': () => sayWalk().takenBack.photo,
  'photo.mark': ({ point, text }, sheet) => sayWalk().takenBack.mark(point === null ? text : pointLabel(sheet, point)),
  'photo.line': () => sayWalk().takenBack.line,
  'photo.answer': ({ piece, slot }, sheet) => sayWalk().takenBack.noPhoto(shotTitle(sheet, piece, slot)),
  'stretch.set': ({ run }, sheet) => sayWalk().takenBack.edge(edgeNamed(run, sheet)),
  'run.detail': ({ run }, sheet) => sayWalk().takenBack.edge(edgeNamed(run, sheet)),
  'run.answer': ({ run }, sheet) => sayWalk().takenBack.noValue(edgeNamed(run, sheet)),
  'fastener.add': ({ run }, sheet) => sayWalk().takenBack.fastener(edgeNamed(run, sheet)),
  'obstruction.add': ({ label }) => label,
  'point.add': ({ point }) => point.label,
  'point.drop': ({ point }, sheet) => sayWalk().takenBack.pointOff(pointLabel(sheet, point)),
  'finding.accept': () => sayWalk().takenBack.accepted,
};

/** What undo takes back with an entry, in one short line, while the job still stands as before. */
export function takenBackText(entries: readonly Entry[], entry: Entry, sheet: Sheet, looker: Looker): string {
  const ids = new Set(takenBackWith(entries, entry));
  // What was done at once is known by what it began with: a point, a fastener.
  const said = entries.flatMap((one) =>
    ids.has(one.id) && isKnownKind(one.kind) ? told(one.kind, one, sheet, looker) : [],
  );
  return sayWalk().takenBack.said(said[0] ?? sayWalk().takenBack.last);
}

function told<K extends EntryKind>(kind: K, entry: Entry, sheet: Sheet, looker: Looker): string[] {
  const payload = payloads[kind].safeParse(entry.payload);
  const text = payload.success ? words[kind]?.(payload.data as Payload<K>, sheet, looker) : undefined;
  return text ? [text] : [];
}
