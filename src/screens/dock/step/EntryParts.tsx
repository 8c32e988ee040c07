import type { ComponentChildren } from 'preact';
import type { Finding } from '../../../core/check/index.ts';
import type { Sheet, SheetReading } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { maySigned, readingName } from '../../model/words.ts';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { StateMark } from '../../parts/marks.tsx';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';
import { PadEntry } from '../../parts/pad/PadEntry.tsx';
import type { ReadingEntry } from './use-entry.ts';

interface Props {
  entry: ReadingEntry;
  reading: SheetReading;
  sheet: Sheet;
  /** What the check says of the reading. */
  speaking: readonly Finding[];
}

/** What is typed and the pad, the same wherever a reading is entered. children: the buttons beside, other than Next. */
export function EntryFoot({ entry, reading, sheet, speaking, children }: Props & { children: ComponentChildren }) {
  const words = say().dock.step;
  return (
    <>
      <PadEntry text={entry.text} onEdit={entry.edited} sheet={sheet} kind={reading.kind} halves={entry.halves} />
      <div class="row spread beside">{children}</div>
      <LengthPad
        text={entry.text}
        onEdit={entry.edited}
        onNext={() => void entry.record()}
        nextLabel={!entry.onlyGoOn ? words.next : speaking.length > 0 ? words.goOnAnyway : words.goOn}
        quietNext={entry.onlyGoOn && speaking.length > 0}
        nextDisabled={entry.text.value.trim() === '' && !entry.onlyGoOn}
        signed={maySigned(reading.kind)}
        angle={reading.kind === 'lean'}
        sheet={sheet}
      />
    </>
  );
}

/** What is said of an entry at once; nothing while all is quiet. */
export function EntryStrip({ entry, reading, sheet, speaking }: Props) {
  const words = say().dock.step;
  return (
    <div class="strip" role="status" aria-live="polite">
      {entry.refusal && <StateMark mark="stop">{entry.refusal}</StateMark>}
      {entry.left && <StateMark mark="doubt">{words.notRecorded}</StateMark>}
      {!entry.refusal && speaking.map((f) => <FindingLine key={f.id} finding={f} sheet={sheet} />)}
      {!entry.refusal && speaking.length > 0 && !speaking.some((f) => SAYS_SO.has(f.rule)) && (
        <p>{words.readAgain(readingName(reading, sheet))}</p>
      )}
    </div>
  );
}

/** For whoever is led: to look again where the check doubts what was read, without a number, a name or a slip. */
export function LookAgainStrip({ entry, again }: { entry: ReadingEntry; again: boolean }) {
  return (
    <div class="strip" role="status" aria-live="polite">
      {entry.refusal && <StateMark mark="stop">{entry.refusal}</StateMark>}
      {entry.left && <StateMark mark="doubt">{say().dock.step.notRecorded}</StateMark>}
      {!entry.refusal && again && <StateMark mark="doubt">{sayWalk().again.please}</StateMark>}
    </div>
  );
}

/** Findings whose own words ask for another reading. */
const SAYS_SO: ReadonlySet<string> = new Set([
  'reading-unchecked',
  'reading-doubted',
  'slip-unseen',
  'takes-disagree',
  'unlike-sister',
]);

/** Readings that findings speak of, for the drawing. */
export const badOf = (findings: readonly Finding[]): ReadonlySet<string> =>
  new Set(findings.flatMap((f) => f.subjects.filter((s) => s.on === 'reading').map((s) => s.id)));

/** What was answered instead of a value; typing one replaces it. */
export function Answered({ reading }: { reading: SheetReading }) {
  const { answer } = reading;
  if (!answer) return null;
  const words = say().dock.step;
  return (
    <p class="banner">
      {words.answered(answer.answer === 'none-here' ? words.noneHere : words.couldNot, answer.reason)}
    </p>
  );
}
