import { useEffect, useState } from 'preact/hooks';
import { nextOpen, type Step, stepsOf } from '../../../core/guide/index.ts';
import { nextInTable, type Table, tablesOf } from '../../../core/guide/tables.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { keepScreenOn } from '../../../device/wake-lock.ts';
import { sayWalk } from '../../../text/walk.ts';
import { findingsOn } from '../../model/findings.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { go, routeHash } from '../../model/route.ts';
import { store } from '../../model/services.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { TopBar } from '../../parts/TopBar.tsx';
import { badOf } from '../step/EntryParts.tsx';
import { movedMarkOf } from '../step-words.ts';
import { CellEntry } from './CellEntry.tsx';
import { Grid } from './Grid.tsx';
import { tableTitle } from './table-words.ts';
import './table.css';

interface Props {
  job: OpenJob;
  piece: string;
  table: string;
  /** The reading to begin with; the first open one where none is named. */
  cell: string | null;
}

/** Many readings in a row: hook once, read many. */
export function TableScreen({ job, piece, table: key, cell }: Props) {
  const table = tablesOf(job.sheet, piece).find((one) => one.key === key);
  useEffect(() => keepScreenOn(), []);
  if (!table)
    return (
      <div class="page">
        <TopBar back={{ at: 'walk', job: job.id, piece }} title={sayWalk().table.gone} />
      </div>
    );
  return <OpenTable job={job} piece={piece} table={table} cell={cell} />;
}

type Wants = (reading: SheetReading) => boolean;

/** What a person may still do in a table: what is open or asked again, and not at a mark that was moved. */
function wantsOf(job: OpenJob, steps: readonly Step[]): Wants {
  const open = new Set(
    steps.flatMap((step) =>
      step.on === 'reading' && (step.state === 'open' || step.state === 'asked-again') ? [step.reading.id] : [],
    ),
  );
  return (reading) => open.has(reading.id) && movedMarkOf(reading, job.sheet) === null;
}

function OpenTable({ job, piece, table, cell }: Omit<Props, 'table'> & { table: Table }) {
  const steps = stepsOf(job.sheet, piece);
  const wants = wantsOf(job, steps);
  const readings = table.cells.map(({ reading }) => reading);
  const [chosen, choose] = useState(cell ?? nextInTable(table, null, wants));
  const reading = readings.find(({ id }) => id === chosen) ?? readings[0];
  const at = steps.findIndex((step) => step.on === 'reading' && step.reading.id === reading?.id);
  const step = steps[at];
  const [typing, setTyping] = useState(false);
  const begun = useTakesAtStart(reading);
  useEffect(() => {
    if (step)
      void store()
        .settings.set('place', { job: job.id, piece, step: step.key })
        .catch(() => undefined);
  }, [job.id, piece, step?.key]);
  if (!reading || step?.on !== 'reading') return null;
  const to = (id: string): void => {
    setTyping(false);
    choose(id);
  };
  const onward = (): void => {
    const next = nextInTable(table, reading.id, wants);
    if (next !== null) {
      to(next);
      return;
    }
    const after = nextOpen(steps, at);
    if (after && after.key !== step.key) go({ at: 'step', job: job.id, piece, step: after.key });
    else go({ at: 'leave', job: job.id });
  };
  const speaking = findingsOn(job, 'reading', reading.id);
  const stayed = reading.takes.length > begun && !typing;
  return (
    <div class="page step table-page">
      <TableTop job={job} piece={piece} table={table} />
      <div class="table-drawing">
        <PieceDrawing
          judgement={job.pieces.get(piece)}
          sheet={job.sheet}
          piece={piece}
          width={360}
          height={170}
          asked={reading}
          bad={badOf(speaking)}
          values="none"
        />
      </div>
      <Grid job={job} table={table} active={reading.id} shown={stayed} onChoose={to} />
      <CellEntry
        key={reading.id}
        {...{ job, step, speaking, onward, stayed }}
        onTyping={setTyping}
        back={{ at: 'step', job: job.id, piece, step: step.key }}
      />
    </div>
  );
}

/** How often a reading had been read when a person came to it: what they read since may be seen again. */
function useTakesAtStart(reading: SheetReading | undefined): number {
  const [seen, setSeen] = useState({ id: reading?.id, takes: reading?.takes.length ?? 0 });
  if (reading && reading.id !== seen.id) {
    setSeen({ id: reading.id, takes: reading.takes.length });
    return reading.takes.length;
  }
  return seen.takes;
}

function TableTop({ job, piece, table }: { job: OpenJob; piece: string; table: Table }) {
  const words = sayWalk().table;
  const all = table.cells.length;
  const done = table.cells.filter(({ reading }) => reading.state !== 'open').length;
  return (
    <>
      <TopBar back={{ at: 'walk', job: job.id, piece }} title={tableTitle(table, job.sheet)}>
        <a class="button plain number" href={routeHash({ at: 'walk', job: job.id, piece })}>
          {words.progress(done, all)}
        </a>
      </TopBar>
      <progress class="walk-progress" max={all} value={done}>
        {words.progress(done, all)}
      </progress>
    </>
  );
}
