import type { SheetRun } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { saySheet } from '../../../text/sheet.ts';
import type { Block } from '../../paper/blocks.tsx';
import { labelsOf, readingValue, runTitle } from '../names.ts';
import { stretchText } from '../sections/RunsSection.tsx';
import { plain } from './block-parts.tsx';
import type { SheetContent } from './sheet-content.ts';

/** Fasteners that stand together, so that a long edge may go on over the page. */
const TOGETHER = 30;

/** Every edge: its line, what closes it, and its fasteners one by one. */
export function edgeBlocks(content: SheetContent): Block[] {
  return content.job.sheet.runs
    .filter((run) => run.piece === content.piece.id)
    .flatMap((run) => {
      const count = Math.ceil(run.stations.length / TOGETHER);
      const rows = Array.from({ length: count }, (_, part) =>
        plain(`${run.id} ${part}`, () => <Fasteners run={run} from={part * TOGETHER} content={content} />),
      );
      return [{ ...plain(run.id, () => <Edge run={run} content={content} />), keep: count > 0 }, ...rows];
    });
}

function Edge({ run, content: { job } }: { run: SheetRun; content: SheetContent }) {
  const { sheet } = job;
  const words = sayBench().runs;
  const whole = sheet.readings.find(({ id }) => id === run.whole);
  const facts = [
    words.through(labelsOf(sheet, run.points)),
    run.line && say().general.lines[run.line],
    whole && whole.value !== null ? words.whole(readingValue(whole, sheet)) : words.wholeOpen,
    run.stations.length > 0 && words.count(run.stations.length),
    run.answer && words.answered(sayBench().readings.states[run.answer.answer], run.answer.reason),
  ].filter((fact) => typeof fact === 'string');
  return (
    <div class="sheet-edge">
      <p>
        <strong>{runTitle(sheet, run.id)}.</strong> {facts.join(' · ')}
      </p>
      {run.stretches.map((stretch) => (
        <p key={stretch.from}>{stretchText(stretch, run, sheet)}</p>
      ))}
      {run.stations.length > 0 && <small>{saySheet().fastenersFrom[run.manner]}</small>}
    </div>
  );
}

function Fasteners({ run, from, content: { job } }: { run: SheetRun; from: number; content: SheetContent }) {
  const { readings, fasteners } = job.sheet;
  const types = new Map(fasteners.map(({ reading, type }) => [reading, type]));
  const one = new Set(run.stations.map((id) => types.get(id))).size === 1;
  return (
    <ol class="sheet-fasteners">
      {run.stations.slice(from, from + TOGETHER).map((id, i) => {
        const reading = readings.find((candidate) => candidate.id === id);
        const type = types.get(id);
        const value = reading && reading.value !== null ? readingValue(reading, job.sheet) : '–';
        return (
          <li key={id}>
            <small>{from + i + 1}</small> <strong>{value}</strong>
            {!one && <small> {type ? say().general.fasteners[type] : sayBench().runs.station}</small>}
          </li>
        );
      })}
    </ol>
  );
}
