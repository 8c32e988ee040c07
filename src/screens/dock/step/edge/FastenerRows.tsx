import { useEffect, useState } from 'preact/hooks';
import { stationsAlong } from '../../../../core/geometry/index.ts';
import {
  FASTENER_OF,
  type Fastener,
  type Sheet,
  type SheetReading,
  type SheetRun,
} from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import { say } from '../../../../text/index.ts';
import { answerBack, readyToAnswer } from '../../../model/answer-back.ts';
import { findingsOn } from '../../../model/findings.ts';
import { actAll, deed, judged, openJob } from '../../../model/open-job.ts';
import { lengthText, pointLabel, readValue } from '../../../model/words.ts';
import { StateMark } from '../../../parts/marks.tsx';
import { useHalfTyped } from '../../../parts/pad/half-typed.ts';
import { LengthPad } from '../../../parts/pad/LengthPad.tsx';
import { PadEntry } from '../../../parts/pad/PadEntry.tsx';
import { addFastener, type Typed } from './edge-acts.ts';
import { type Part, slides } from './edge-view.ts';

interface Row {
  number: number;
  fastener: Fastener;
  reading: SheetReading;
}

function rowsOf(sheet: Sheet, run: SheetRun, { fasteners }: Part): Row[] {
  const readings = new Map(sheet.readings.map((reading) => [reading.id, reading]));
  return fasteners.flatMap((fastener) => {
    const reading = readings.get(fastener.reading);
    return reading ? [{ number: run.stations.indexOf(reading.id) + 1, fastener, reading }] : [];
  });
}

/** What is being typed for the next fastener of a stretch, or for one that is read again. */
export function useFasteners(sheet: Sheet, run: SheetRun, parts: readonly Part[], part: Part) {
  const [refusal, setRefusal] = useState('');
  const [again, setAgain] = useState<Row | null>(null);
  // What is left half typed waits for the next fastener; a second look is begun anew.
  const { text, left } = useHalfTyped(again ? null : run.id);
  const rows = rowsOf(sheet, run, part);
  useEffect(readyToAnswer, []);
  const record = async (): Promise<void> => {
    const read = readValue(text.value, 'running', sheet);
    setRefusal(read.ok ? '' : read.refusal);
    if (!read.ok) {
      answerBack(null, { look: true });
      return;
    }
    const typed = { text: text.value.trim(), unit: read.unit, value: read.value };
    text.value = '';
    const reading = again ? await correct(again.reading, typed) : await addFastener(run, part, typeOf(part), typed);
    setAgain(null);
    await judged();
    answerBack(read, { look: findingsOn(null, 'reading', reading).length > 0 });
  };
  // A zip has two ends: when both are there, only reading one again opens the pad.
  const full = slides(part.stretch) && rows.filter(({ fastener }) => fastener.type === typeOf(part)).length >= 2;
  return {
    rows,
    text,
    left,
    edited: () => setRefusal(''),
    refusal,
    record,
    prompt: promptOf(sheet, run, { part, rows, again, number: again?.number ?? nextNumber(run, parts, part) }),
    setAgain: (row: Row) => {
      text.value = '';
      setAgain(row);
    },
    padOpen: !full || again !== null,
  };
}

const typeOf = ({ stretch: { closes } }: Part): Fastener['type'] => (closes && FASTENER_OF[closes]) || 'snap';

interface Prompted {
  part: Part;
  rows: readonly Row[];
  again: Row | null;
  number: number;
}

function promptOf(sheet: Sheet, run: SheetRun, { part, rows, again, number }: Prompted): string {
  const { next, fastener } = sayEdges();
  const chained = run.manner === 'gaps' && number > 1;
  const from = pointLabel(sheet, run.points[0] ?? '');
  const { closes } = part.stretch;
  if (closes && slides(part.stretch)) {
    const what = sayEdges().names.closures[closes].toLowerCase();
    const begins = again ? rows[0] === again : rows.length === 0;
    if (chained) return begins ? next.beginsGap(what) : next.endsGap(what);
    return begins ? next.begins(what, from) : next.ends(what, from);
  }
  return chained
    ? next.gap(fastener(number), fastener(number - 1).toLowerCase())
    : next.cumulative(fastener(number), next.start(from));
}

/** Fasteners are counted along the whole edge: one more of a stretch comes after its own last and those before it. */
function nextNumber(run: SheetRun, parts: readonly Part[], part: Part): number {
  const before = parts.slice(0, parts.indexOf(part) + 1).flatMap(({ fasteners }) => fasteners);
  return Math.max(0, ...before.map(({ reading }) => run.stations.indexOf(reading) + 1)) + 1;
}

type Fasteners = ReturnType<typeof useFasteners>;

/** The latest first, so that what was just typed is seen beside the pad. */
export function FastenerList({ fasteners, run, sheet }: { fasteners: Fasteners; run: SheetRun; sheet: Sheet }) {
  const words = sayEdges();
  const { rows, setAgain } = fasteners;
  return (
    <>
      <RunTotals run={run} sheet={sheet} />
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
  const { text, left, edited, refusal, record, prompt, padOpen } = fasteners;
  if (!padOpen) return null;
  return (
    <>
      <p aria-live="polite">
        <strong>{prompt}</strong>
      </p>
      {refusal && <StateMark mark="stop">{refusal}</StateMark>}
      {left && <StateMark mark="doubt">{say().dock.step.notRecorded}</StateMark>}
      <PadEntry text={text} onEdit={edited} sheet={sheet} kind="running" halves={null} />
      <LengthPad
        text={text}
        onEdit={edited}
        onNext={() => void record()}
        nextLabel={sayEdges().add}
        nextDisabled={text.value.trim() === ''}
        sheet={sheet}
      />
    </>
  );
}

/** A second reading of a fastener's place strikes out the first, which stays to be seen. */
async function correct(reading: SheetReading, typed: Typed): Promise<string> {
  const before = reading.takes.filter((take) => !take.struck);
  await actAll([
    ...before.map((take) => deed('take.strike', { take: take.id, reason: sayEdges().correct })),
    deed('take.add', { reading: reading.id, ...typed }),
  ]);
  return reading.id;
}

function RemoveButton({ row }: { row: Row }) {
  const entry = openJob.value?.entries.find((e) => e.kind === 'fastener.add' && e.payload.fastener === row.fastener.id);
  if (!entry) return null;
  return (
    <button
      type="button"
      class="button plain"
      aria-label={sayEdges().remove(row.number)}
      onClick={() =>
        void actAll([...row.reading.takes.map((take) => take.id), entry.id].map((id) => deed('undo', { entry: id })))
      }
    >
      ✕
    </button>
  );
}

/** The whole edge beside how far the fasteners reach, so that a skipped gap shows while the tape is still there. */
function RunTotals({ run, sheet }: { run: SheetRun; sheet: Sheet }) {
  const words = sayEdges();
  const whole = sheet.readings.find((reading) => reading.id === run.whole)?.value ?? null;
  const reached = Math.max(0, ...stationsAlong(run, sheet).map(({ along }) => along));
  return (
    <p class="quiet">
      {whole === null ? words.wholeMissing : words.whole(lengthText(whole, sheet))}
      {run.manner === 'gaps' && ` · ${words.sum(lengthText(reached, sheet))}`}
      {whole !== null && ` · ${words.left(lengthText(whole - reached, sheet))}`}
    </p>
  );
}
