import { useState } from 'preact/hooks';
import type { Obstruction, ReadingKind, Sheet, SheetReading, SizeOf } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { sayThings } from '../../../text/things.ts';
import { act } from '../../model/open-job.ts';
import { maySigned, pointLabel, readValue } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { useHalfTyped } from '../../parts/pad/half-typed.ts';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';
import { PadEntry } from '../../parts/pad/PadEntry.tsx';
import { type Typed, takeSize } from './thing-acts.ts';

/** What the tape is read for: one of the readings that place a thing, or one of its sizes. */
export type Wanted = { reading: SheetReading } | { of: SizeOf };

interface Props {
  sheet: Sheet;
  thing: Obstruction;
  wanted: Wanted;
  onDone: () => void;
}

/** The pad for a thing, in the same place as for any other reading. */
export function ThingPad({ sheet, thing, wanted, onDone }: Props) {
  const { text } = useHalfTyped(null);
  const [refusal, setRefusal] = useState('');
  const kind: ReadingKind = 'reading' in wanted ? wanted.reading.kind : 'size';
  const record = async (): Promise<void> => {
    const read = readValue(text.value, kind, sheet);
    setRefusal(read.ok ? '' : read.refusal);
    if (!read.ok) return;
    const typed: Typed = { text: text.value.trim(), unit: read.unit, value: read.value };
    text.value = '';
    if ('reading' in wanted) await act('take.add', { reading: wanted.reading.id, ...typed });
    else await takeSize(sheet, thing, wanted.of, typed);
    onDone();
  };
  return (
    <>
      <p aria-live="polite">
        <strong>{promptOf(sheet, thing, wanted)}</strong>
      </p>
      {refusal && <StateMark mark="stop">{refusal}</StateMark>}
      <PadEntry text={text} onEdit={() => setRefusal('')} sheet={sheet} kind="running" halves={null} />
      <LengthPad
        text={text}
        onEdit={() => setRefusal('')}
        onNext={() => void record()}
        nextLabel={sayThings().record}
        nextDisabled={text.value.trim() === ''}
        signed={maySigned(kind)}
        sheet={sheet}
      />
    </>
  );
}

function promptOf(sheet: Sheet, { label }: Obstruction, wanted: Wanted): string {
  const words = sayThings();
  if ('of' in wanted)
    return wanted.of === 'clearance' ? words.clearance(label) : words.sizeOf(say().general.sizes[wanted.of], label);
  const { kind, points, baseline = [] } = wanted.reading;
  const [from = '', to = ''] = baseline.map((id) => pointLabel(sheet, id));
  if (kind === 'along') return words.along(from, to, label);
  return kind === 'out' ? words.off(from, to, label) : words.hook(pointLabel(sheet, points[0] ?? ''), label);
}
