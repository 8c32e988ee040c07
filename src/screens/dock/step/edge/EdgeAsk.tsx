import {
  Closure,
  Into,
  LineMeasured,
  Presence,
  Pull,
  RunManner,
  Setter,
  type Sheet,
  type SheetRun,
} from '../../../../core/job/index.ts';
import { sayEdges } from '../../../../text/edges.ts';
import { say } from '../../../../text/index.ts';
import { act } from '../../../model/open-job.ts';
import { pointLabel } from '../../../model/words.ts';
import { Choice, Picked } from './Choice.tsx';
import { tell } from './edge-acts.ts';
import { type Asked, isCounted, isTaped, type Part } from './edge-view.ts';
import { PlannedRow } from './PlannedRow.tsx';

interface Props {
  sheet: Sheet;
  run: SheetRun;
  part: Part;
  line: LineMeasured | null;
}

/** The one question that is next at a stretch; one tap answers it. */
export function EdgeAsk({ sheet, run, part, asked }: Props & { asked: Asked }) {
  const { stretch, name } = part;
  const words = sayEdges();
  const { closures, into, setters, pulls } = sayEdges().names;
  const from = stretch.from;
  switch (asked) {
    case 'line':
      return (
        <Choice
          question={words.line}
          values={LineMeasured.options}
          names={say().general.lines}
          value={run.line}
          choose={(value) => void act('run.detail', { run: run.id, field: 'line', value })}
        />
      );
    case 'closes':
      return (
        <>
          <Choice
            question={run.stretches.length > 1 ? words.closesHere(name) : words.closes}
            values={Closure.options}
            names={closures}
            value={stretch.closes}
            choose={(value) => void tell(run, from, { field: 'closes', value })}
          />
          <Splits sheet={sheet} run={run} />
        </>
      );
    case 'presence':
      return (
        <Choice
          question={isCounted(stretch) ? words.presence.askRow : words.presence.ask}
          values={Presence.options}
          names={words.presence}
          value={stretch.presence}
          choose={(value) => void tell(run, from, { field: 'presence', value })}
        />
      );
    case 'into':
      return (
        <Choice
          question={words.into}
          values={Into.options}
          names={into}
          value={stretch.into}
          choose={(value) => void tell(run, from, { field: 'into', value })}
        />
      );
    case 'pulls':
      return (
        <Choice
          question={stretch.closes === 'zip' ? words.pulls.zip : words.pulls.feed}
          values={Pull.options}
          names={pulls}
          value={stretch.pulls}
          choose={(value) => void tell(run, from, { field: 'pulls', value })}
        />
      );
    case 'setter':
      return (
        <Choice
          question={words.setter}
          values={Setter.options}
          names={setters}
          value={stretch.setter}
          choose={(value) => void tell(run, from, { field: 'setter', value })}
        />
      );
    case 'count':
      return <PlannedRow sheet={sheet} run={run} part={part} />;
  }
}

/** Inner points of the edge: a tap says that something else begins there, another takes it back. */
export function Splits({ sheet, run }: { sheet: Sheet; run: SheetRun }) {
  const inner = run.points.slice(1, -1);
  const begins = new Set(run.stretches.map(({ from }) => from));
  const words = sayEdges();
  if (inner.length === 0) return null;
  return (
    <section class="stack">
      <p class="quiet">{words.begins}</p>
      <div class="row">
        {inner.map((point) => (
          <button
            key={point}
            type="button"
            class="button"
            aria-label={words.beginsAt(pointLabel(sheet, point))}
            aria-pressed={begins.has(point)}
            onClick={() => void tell(run, point, { field: 'begins', value: begins.has(point) ? 'no' : 'yes' })}
          >
            {pointLabel(sheet, point)}
          </button>
        ))}
      </div>
    </section>
  );
}

/** What was answered, each to be changed in place. */
export function EdgeFacts({ run, part, line }: Omit<Props, 'sheet'>) {
  const { stretch } = part;
  const { closures, into, setters, pulls } = sayEdges().names;
  const words = sayEdges();
  const from = stretch.from;
  const planned = stretch.presence === 'planned';
  return (
    <div class="row">
      <Picked
        label={words.closes}
        values={Closure.options}
        names={closures}
        value={stretch.closes}
        choose={(value) => void tell(run, from, { field: 'closes', value })}
      />
      <Picked
        label={words.presence.ask}
        values={Presence.options}
        names={words.presence}
        value={stretch.presence}
        choose={(value) => void tell(run, from, { field: 'presence', value })}
      />
      <Picked
        label={words.into}
        values={Into.options}
        names={into}
        value={stretch.into}
        choose={(value) => void tell(run, from, { field: 'into', value })}
      />
      <Picked
        label={words.pulls.zip}
        values={Pull.options}
        names={pulls}
        value={stretch.pulls}
        choose={(value) => void tell(run, from, { field: 'pulls', value })}
      />
      <Picked
        label={words.setter}
        values={Setter.options}
        names={setters}
        value={planned ? stretch.setter : null}
        choose={(value) => void tell(run, from, { field: 'setter', value })}
      />
      <Picked
        label={words.line}
        values={LineMeasured.options}
        names={say().general.lines}
        value={line}
        choose={(value) => void act('run.detail', { run: run.id, field: 'line', value })}
      />
      <Picked
        label={words.manner}
        values={RunManner.options}
        names={say().general.manners}
        value={isTaped(line, part) && run.stations.length === 0 ? run.manner : null}
        choose={(value) => void act('run.detail', { run: run.id, field: 'manner', value })}
      />
    </div>
  );
}
