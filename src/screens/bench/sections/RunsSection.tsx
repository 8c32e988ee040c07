import type { Sheet, SheetReading, SheetRun, Stretch } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { sayEdges } from '../../../text/edges.ts';
import { say } from '../../../text/index.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { lengthText } from '../../model/words.ts';
import { labelsOf, readingValue, runTitle } from '../names.ts';
import type { Lit } from '../state/lit.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { AskTick } from './AskTick.tsx';
import { Section } from './Section.tsx';

interface Props {
  job: OpenJob;
  piece: string;
  lit: Lit;
}

/** Edges with what closes them: the whole, the line measured to, every fastener in order. */
export function RunsSection({ job, piece, lit }: Props) {
  const runs = job.sheet.runs.filter((run) => run.piece === piece);
  if (runs.length === 0) return null;
  return (
    <Section at="runs">
      {runs.map((run) => (
        <RunShown key={run.id} run={run} job={job} lit={lit} />
      ))}
    </Section>
  );
}

function RunShown({ run, job, lit }: { run: SheetRun; job: OpenJob; lit: Lit }) {
  const { sheet } = job;
  const words = sayBench().runs;
  const { lines, manners } = say().general;
  const name = runTitle(sheet, run.id);
  const whole = sheet.readings.find(({ id }) => id === run.whole);
  const facts = [
    run.line && lines[run.line],
    run.stations.length > 0 && manners[run.manner],
    run.stations.length > 0 && words.count(run.stations.length),
    run.answer && words.answered(sayBench().readings.states[run.answer.answer], run.answer.reason),
  ].filter((fact) => typeof fact === 'string');
  return (
    <div class={`bench-row stack ${lit.runs.has(run.id) ? 'lit' : ''}`} data-row={`run:${run.id}`}>
      <h3>
        <button
          type="button"
          class="bench-name-button"
          aria-pressed={isSelected('run', run.id)}
          onClick={() => toggle('run', run.id)}
        >
          {name}
        </button>
      </h3>
      <p>
        {words.through(labelsOf(sheet, run.points))}.{' '}
        {whole && whole.value !== null ? words.whole(readingValue(whole, sheet)) : words.wholeOpen}.
      </p>
      {facts.length > 0 && <p>{facts.join(' · ')}</p>}
      <ul>
        {run.stretches.map((stretch) => (
          <li key={stretch.from}>{stretchText(stretch, run, sheet)}</li>
        ))}
      </ul>
      <AskTick sheet={sheet} piece={run.piece} on="run" id={run.id} name={name} />
      {run.stations.length > 0 && <Stations run={run} job={job} lit={lit} name={name} />}
    </div>
  );
}

/** What closes a stretch and how, in one line; where the edge is one stretch its ends need no names. */
export function stretchText(stretch: Stretch, run: SheetRun, sheet: Sheet): string {
  const words = sayBench().runs;
  const { closures, into, setters, pulls, presence } = sayEdges().names;
  const { closes, count, spacing } = stretch;
  const planned = stretch.presence === 'planned';
  const told = [
    closes && closures[closes],
    stretch.presence && presence[stretch.presence],
    planned && count !== null && words.planned(count),
    planned && spacing !== null && words.spaced(lengthText(spacing, sheet)),
    stretch.into && words.into(into[stretch.into].toLowerCase()),
    stretch.pulls && words.pulls(pulls[stretch.pulls].toLowerCase()),
    planned && stretch.setter && words.setBy(setters[stretch.setter].toLowerCase()),
  ].filter((fact) => typeof fact === 'string');
  const text = told.length > 0 ? told.join(', ') : words.empty;
  return run.stretches.length > 1 ? `${labelsOf(sheet, [stretch.from, stretch.to])}: ${text}` : text;
}

function Stations({ run, job, lit, name }: { run: SheetRun; job: OpenJob; lit: Lit; name: string }) {
  const words = sayBench().runs;
  const readings = new Map(job.sheet.readings.map((reading) => [reading.id, reading]));
  const types = new Map(job.sheet.fasteners.map((fastener) => [fastener.reading, fastener.type]));
  return (
    <table class="bench-table">
      <caption class="sr-only">{words.caption(name)}</caption>
      <thead>
        <tr>
          <th scope="col">{words.number}</th>
          <th scope="col">{words.type}</th>
          <th scope="col">{words.from[run.manner]}</th>
        </tr>
      </thead>
      <tbody>
        {run.stations.map((id, index) => {
          const reading = readings.get(id);
          const type = types.get(id);
          return (
            <tr key={id} class={lit.readings.has(id) ? 'lit' : ''} data-row={`reading:${id}`}>
              <th scope="row">
                <button
                  type="button"
                  class="bench-name-button"
                  aria-pressed={isSelected('reading', id)}
                  onClick={() => toggle('reading', id)}
                >
                  {index + 1}
                </button>
              </th>
              <td>{type ? say().general.fasteners[type] : words.station}</td>
              <td class="number">{reading ? stationValue(reading, job) : ''}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

const stationValue = (reading: SheetReading, job: OpenJob): string =>
  reading.value === null ? sayBench().readings.states[reading.state] : readingValue(reading, job.sheet);
