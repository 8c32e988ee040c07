import { useSignal } from '@preact/signals';
import { useState } from 'preact/hooks';
import type { Fastener, Sheet, SheetReading, SheetRun } from '../../../core/job/index.ts';
import { uuid } from '../../../device/clock.ts';
import { say } from '../../../text/index.ts';
import { actAll, deed, type OpenJob, openJob } from '../../model/open-job.ts';
import { lengthText, readLength } from '../../model/words.ts';
import { LengthPad } from '../../parts/pad/LengthPad.tsx';

interface Row {
  number: number;
  fastener: Fastener;
  reading: SheetReading;
}

function rowsOf(sheet: Sheet, run: SheetRun): Row[] {
  const readings = new Map(sheet.readings.map((reading) => [reading.id, reading]));
  return sheet.fasteners
    .filter((fastener) => fastener.run === run.id)
    .flatMap((fastener) => readings.get(fastener.reading) ?? [])
    .map((reading, i) => {
      const fastener = sheet.fasteners.find((candidate) => candidate.reading === reading.id) as Fastener;
      return { number: i + 1, fastener, reading };
    });
}

/** What is being typed for the next fastener, or for one that is read again. */
export function useFasteners(job: OpenJob, run: SheetRun) {
  const text = useSignal('');
  const [refusal, setRefusal] = useState('');
  const [again, setAgain] = useState<Row | null>(null);
  const rows = rowsOf(job.sheet, run);
  const words = say().dock.run;
  const record = async (): Promise<void> => {
    const parsed = readLength(text.value, job.sheet);
    if (!parsed.ok) {
      setRefusal(say().length.refusals[parsed.why]);
      return;
    }
    const typed = text.value.trim();
    text.value = '';
    setRefusal('');
    if (again) await correct(again.reading, typed, parsed.unit, parsed.mm);
    else await addFastener(run, typed, parsed.unit, parsed.mm);
    setAgain(null);
  };
  const number = again?.number ?? rows.length + 1;
  const prompt = run.manner === 'gaps' ? words.nextGap(number) : words.nextCumulative(number);
  return { rows, text, edited: () => setRefusal(''), refusal, record, prompt, setAgain };
}

type Fasteners = ReturnType<typeof useFasteners>;

/** The latest first, so that what was just typed is seen beside the pad. */
export function FastenerList({ fasteners, run, sheet }: { fasteners: Fasteners; run: SheetRun; sheet: Sheet }) {
  const words = say().dock.run;
  const { rows, setAgain } = fasteners;
  return (
    <>
      <RunTotals run={run} sheet={sheet} rows={rows} />
      <ol class="list fasteners">
        {rows.length === 0 && <li class="quiet">{words.none}</li>}
        {[...rows].reverse().map((row) => (
          <li key={row.fastener.id} class="row spread">
            <span class="number">
              {row.number} · {typedOf(row) || '–'}
            </span>
            <span class="row">
              <button type="button" class="button plain" onClick={() => setAgain(row)}>
                {words.correct}
              </button>
              <RemoveButton row={row} />
            </span>
          </li>
        ))}
      </ol>
    </>
  );
}

const typedOf = (row: Row): string =>
  row.reading.takes
    .filter((take) => !take.struck)
    .map((take) => take.text)
    .join(' / ');

/** The pad for the next fastener, in the same place as for any other reading. */
export function FastenerPad({ fasteners, sheet }: { fasteners: Fasteners; sheet: Sheet }) {
  const { text, edited, refusal, record, prompt } = fasteners;
  return (
    <>
      <p aria-live="polite">
        <strong>{prompt}</strong>
      </p>
      {refusal && <p class="state stop">{refusal}</p>}
      <output class="entry-text number" aria-label={say().dock.pad.entry}>
        {text.value || <span class="quiet entry-hint">{say().dock.step.expected}</span>}
      </output>
      <LengthPad
        text={text}
        onEdit={edited}
        onNext={() => void record()}
        nextLabel={say().dock.run.add}
        nextDisabled={text.value.trim() === ''}
        sheet={sheet}
      />
    </>
  );
}

async function addFastener(
  run: SheetRun,
  text: string,
  unit: 'mm' | 'cm' | 'm' | 'in' | 'ft',
  value: number,
): Promise<void> {
  const ranks = openJob.value?.sheet.fasteners.filter((f) => f.run === run.id).map((f) => f.rank) ?? [];
  const reading = uuid();
  await actAll([
    deed('fastener.add', {
      fastener: uuid(),
      run: run.id,
      reading,
      rank: Math.max(0, ...ranks) + 1,
      type: run.type ?? 'snap',
      presence: 'there',
    }),
    deed('take.add', { reading, text, unit, value }),
  ]);
}

/** A second reading of a fastener's place strikes out the first, which stays to be seen. */
async function correct(
  reading: SheetReading,
  text: string,
  unit: 'mm' | 'cm' | 'm' | 'in' | 'ft',
  value: number,
): Promise<void> {
  const before = reading.takes.filter((take) => !take.struck);
  await actAll([
    ...before.map((take) => deed('take.strike', { take: take.id, reason: say().dock.run.correct })),
    deed('take.add', { reading: reading.id, text, unit, value }),
  ]);
}

function RemoveButton({ row }: { row: Row }) {
  const entry = openJob.value?.entries.find((e) => e.kind === 'fastener.add' && e.payload.fastener === row.fastener.id);
  if (!entry) return null;
  return (
    <button
      type="button"
      class="button plain"
      aria-label={say().dock.run.remove(row.number)}
      onClick={() =>
        void actAll([...row.reading.takes.map((take) => take.id), entry.id].map((id) => deed('undo', { entry: id })))
      }
    >
      ✕
    </button>
  );
}

/** The whole edge beside what the fasteners add up to, so that a skipped gap shows while the tape is still there. */
function RunTotals({ run, sheet, rows }: { run: SheetRun; sheet: Sheet; rows: readonly Row[] }) {
  const words = say().dock.run;
  const whole = sheet.readings.find((reading) => reading.id === run.whole)?.value ?? null;
  const values = rows.map((row) => row.reading.value ?? 0);
  const reached = run.manner === 'gaps' ? values.reduce((sum, value) => sum + value, 0) : Math.max(0, ...values);
  return (
    <p class="quiet">
      {whole === null ? words.wholeMissing : words.whole(lengthText(whole, sheet))}
      {run.manner === 'gaps' && ` · ${words.sum(lengthText(reached, sheet))}`}
      {whole !== null && ` · ${words.left(lengthText(whole - reached, sheet))}`}
    </p>
  );
}
