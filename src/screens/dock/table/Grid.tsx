import { useEffect, useRef } from 'preact/hooks';
import { type Table, type TableCell, wayOf } from '../../../core/guide/tables.ts';
import type { SheetReading } from '../../../core/job/index.ts';
import { sayWalk } from '../../../text/walk.ts';
import { findingsOn } from '../../model/findings.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel, readingName, valueText } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { movedMarkOf } from '../step-words.ts';
import { columnTitle, tableTitle } from './table-words.ts';

interface Props {
  job: OpenJob;
  table: Table;
  active: string;
  /** What was just read at the cursor is shown; an earlier value would lead whoever reads it again. */
  shown: boolean;
  onChoose: (reading: string) => void;
}

/** Rows are points, columns what they are read from; heads stay while the rest scrolls inside. */
export function Grid({ job, table, active, shown, onChoose }: Props) {
  const { sheet } = job;
  const words = sayWalk().table;
  const scroller = useRef<HTMLDivElement>(null);
  useEffect(() => keepInView(scroller.current), [active]);
  return (
    <section class="table-scroll" ref={scroller} aria-label={tableTitle(table, sheet)}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.point}</th>
            {table.columns.map((column, i) => {
              const way = wayOf(table, i);
              return (
                <th key={columnTitle(column, sheet)} scope="col">
                  {columnTitle(column, sheet)}
                  {way && (
                    <span class="quiet" role="img" aria-label={words.ways[way]}>
                      {way === 'down' ? ' ↓' : ' ↑'}
                    </span>
                  )}
                </th>
              );
            })}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row}>
              <th scope="row">{pointLabel(sheet, row)}</th>
              {table.columns.map((column, i) => (
                <td key={columnTitle(column, sheet)}>
                  {cellsAt(table, row, i).map(({ reading }) => (
                    <Cell key={reading.id} {...{ job, reading, shown, onChoose }} active={reading.id === active} />
                  ))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const cellsAt = (table: Table, row: string, column: number): TableCell[] =>
  table.cells.filter((cell) => cell.row === row && cell.column === column);

interface CellProps {
  job: OpenJob;
  reading: SheetReading;
  active: boolean;
  shown: boolean;
  onChoose: (reading: string) => void;
}

function Cell({ job, reading, active, shown, onChoose }: CellProps) {
  const words = sayWalk().table.cell;
  const moved = movedMarkOf(reading, job.sheet) !== null;
  const hidden = active && (!shown || reading.value === null);
  const gravest = gravestOn(job, reading);
  const told = hidden ? (reading.value === null ? words.reading : words.again) : textOf(reading, job);
  const said = [
    readingName(reading, job.sheet),
    told,
    !hidden && gravest ? words[gravest] : '',
    moved ? words.moved : '',
  ];
  return (
    <button
      type="button"
      class={moved ? 'cell moved' : 'cell'}
      aria-current={active}
      disabled={moved}
      aria-label={said.filter(Boolean).join(', ')}
      onClick={() => onChoose(reading.id)}
    >
      {hidden ? (
        <span class="small">{reading.value === null ? '' : words.again}</span>
      ) : (
        <Value {...{ reading, job }} />
      )}
      {!hidden && gravest && (
        <span class="small">
          <StateMark mark={gravest}>{words[gravest]}</StateMark>
        </span>
      )}
    </button>
  );
}

function Value({ reading, job }: Pick<CellProps, 'reading' | 'job'>) {
  if (reading.state === 'open') return <span class="cell-open" />;
  const isNumber = reading.value !== null;
  return <span class={isNumber ? 'number' : 'small quiet'}>{textOf(reading, job)}</span>;
}

function textOf(reading: SheetReading, { sheet }: OpenJob): string {
  if (reading.value !== null) return valueText(reading.value, reading.kind, sheet);
  return sayWalk().table.cell[reading.state === 'measured' ? 'open' : reading.state];
}

/** Only what speaks of this reading first: beside others that are read as well, a cell has no use for every doubt. */
function gravestOn(job: OpenJob, { id, state }: SheetReading): 'stop' | 'doubt' | null {
  if (state !== 'measured') return null;
  const own = findingsOn(job, 'reading', id).filter(
    ({ subjects }) => subjects.find(({ on }) => on === 'reading')?.id === id,
  );
  if (own.some(({ severity }) => severity === 'stop')) return 'stop';
  return own.length > 0 ? 'doubt' : null;
}

/** Also when what is said below takes room from the table. */
function keepInView(scroller: HTMLElement | null): (() => void) | undefined {
  if (!scroller) return undefined;
  bringIntoView(scroller);
  const watch = new ResizeObserver(() => bringIntoView(scroller));
  watch.observe(scroller);
  return () => watch.disconnect();
}

/** The cell at the cursor comes clear of the heads; nothing but the table scrolls. */
function bringIntoView(scroller: HTMLElement): void {
  const cell = scroller.querySelector<HTMLElement>('[aria-current="true"]');
  if (!cell) return;
  const [head, side] = [scroller.querySelector('thead'), scroller.querySelector('tbody th')];
  const [box, frame] = [cell.getBoundingClientRect(), scroller.getBoundingClientRect()];
  const top = frame.top + (head?.getBoundingClientRect().height ?? 0);
  const left = frame.left + (side?.getBoundingClientRect().width ?? 0);
  if (box.top < top) scroller.scrollTop -= top - box.top;
  else if (box.bottom > frame.bottom) scroller.scrollTop += box.bottom - frame.bottom;
  if (box.left < left) scroller.scrollLeft -= left - box.left;
  else if (box.right > frame.right) scroller.scrollLeft += box.right - frame.right;
}
