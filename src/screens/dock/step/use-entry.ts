import type { Signal } from '@preact/signals';
import { useRef, useState } from 'preact/hooks';
import { looksOf, wantsSecondLook } from '../../../core/guide/second-looks.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { answerBack } from '../../model/answer-back.ts';
import { findingsOn } from '../../model/findings.ts';
import { act, judged, type OpenJob } from '../../model/open-job.ts';
import { padSettings } from '../../model/pad-settings.ts';
import { lookDue } from '../../model/second-looks.ts';
import { readValue } from '../../model/words.ts';
import { typedAhead, useHalfTyped } from '../../parts/pad/half-typed.ts';
import { type Halves, halvesBefore, recordedLast } from '../../parts/pad/repeat.ts';

export interface ReadingEntry {
  text: Signal<string>;
  /** The text was left here earlier and is not recorded. */
  left: boolean;
  refusal: string;
  /** Nothing is typed and nothing is wanted: Next only goes on. */
  onlyGoOn: boolean;
  edited: () => void;
  record: () => Promise<void>;
  /** What may be tapped again of the reading before. */
  halves: Halves | null;
}

/** ms within which a second tap on the same place was not meant. */
const SECOND_TAP = 500;

interface Manner {
  askedAgain: boolean;
  /** Led by the app: what only wants a second look holds nobody up, it comes after the round by itself. */
  led?: boolean;
}

/** What is typed, until it is recorded. Next records it; where a check speaks up the step stays, to read again. */
export function useEntry(job: OpenJob, reading: SheetReading, onward: () => void, manner: Manner): ReadingEntry {
  const { askedAgain, led = false } = manner;
  const { text, left } = useHalfTyped(reading.id);
  const [refusal, setRefusal] = useState('');
  const writing = useRef(false);
  const recordedAt = useRef(0);
  const answered = reading.state !== 'open' && !askedAgain && lookDue(reading.id) === null;
  const record = async (): Promise<void> => {
    if (writing.current) return;
    if (text.value.trim() === '' && answered) {
      // The second half of a double tap must not wave a warning away.
      if (performance.now() - recordedAt.current > SECOND_TAP) onward();
      return;
    }
    const typed = text.value.trim();
    const read = readValue(typed, reading.kind, job.sheet);
    setRefusal(read.ok ? '' : read.refusal);
    if (!read.ok) {
      answerBack(null, { look: true });
      return;
    }
    text.value = '';
    writing.current = true;
    const look = await write(job, reading, { typed, read, led }).finally(() => {
      writing.current = false;
    });
    recordedAt.current = performance.now();
    if (look) return;
    // What a quick thumb typed meanwhile is of the next reading.
    typedAhead(text.value);
    text.value = '';
    onward();
  };
  return {
    text,
    left,
    refusal,
    onlyGoOn: text.value.trim() === '' && answered,
    edited: () => setRefusal(''),
    record,
    halves: halvesBefore(
      job.sheet,
      { job: job.id, reading, again: askedAgain, unit: padSettings.value['pad.unit'] },
      (id) => findingsOn(job, 'reading', id).length > 0,
    ),
  };
}

type Read = Extract<ReturnType<typeof readValue>, { ok: true }>;

/** Writes the take and hears the check. True when it wants another look at once: of whoever is led, after the first only. */
async function write(
  job: OpenJob,
  reading: SheetReading,
  { typed, read, led }: { typed: string; read: Read; led: boolean },
): Promise<boolean> {
  const again = led && looksOf(reading).length > 0;
  await act('take.add', { reading: reading.id, text: typed, unit: read.unit, value: read.value });
  await judged();
  recordedLast(job.id, reading.id);
  const look = !again && findingsOn(null, 'reading', reading.id).some((finding) => !led || !wantsSecondLook(finding));
  answerBack(read, { look });
  return look;
}
