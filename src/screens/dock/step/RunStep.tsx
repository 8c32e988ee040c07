import { FastenerType, LineMeasured, Presence, RunManner, type SheetRun } from '../../../core/job/index.ts';
import { say } from '../../../text/index.ts';
import { findingsOnRun } from '../../model/findings.ts';
import { act } from '../../model/open-job.ts';
import { PieceDrawing } from '../../parts/drawing/PieceDrawing.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { runWords } from '../step-words.ts';
import { FastenerList, FastenerPad, useFasteners } from './FastenerRows.tsx';
import { StepLayout } from './StepLayout.tsx';
import type { StepProps } from './step-props.ts';

/** Fasteners along an edge: whether they are there, which line, which type, how taped; then one row each. */
export function RunStep({ job, piece, step, onward, head, moves }: StepProps<'run'>) {
  const { run } = step;
  const words = runWords(job.sheet, piece, step.key);
  const asked = askedNext(run);
  const speaking = findingsOnRun(job, run);
  const fasteners = useFasteners(job, run);
  const taping = asked === null && run.presence === 'there';
  // Once fasteners come in, the latest of them stand where the drawing was.
  const begun = taping && fasteners.rows.length > 0;
  return (
    <StepLayout
      foot={
        <>
          <div class="row spread">{moves}</div>
          {taping && <FastenerPad fasteners={fasteners} sheet={job.sheet} />}
        </>
      }
    >
      {head}
      {!begun && (
        <>
          <p>{words?.how}</p>
          <PieceDrawing
            judgement={job.pieces.get(piece)}
            sheet={job.sheet}
            piece={piece}
            width={360}
            height={200}
            askedPoints={run.points}
            run={run.id}
          />
          <RunFacts run={run} asked={asked} />
        </>
      )}
      {asked === null && run.presence === 'planned' && <PlannedCount run={run} />}
      {speaking.map((finding) => (
        <FindingLine key={finding.id} finding={finding} sheet={job.sheet} />
      ))}
      {step.state !== 'open' && asked === null && (
        <button type="button" class="button main wide" onClick={onward} data-testid="run-done">
          {run.presence === 'there' ? say().dock.run.finished : say().dock.step.goOn}
        </button>
      )}
      {taping && <FastenerList fasteners={fasteners} run={run} sheet={job.sheet} />}
      {begun && <RunFacts run={run} asked={asked} />}
    </StepLayout>
  );
}

type Fact = 'presence' | 'line' | 'type' | 'manner';

/** Asked one after the other; planned fasteners are not taped, so the manner is not asked for them. */
function askedNext(run: SheetRun): Fact | null {
  if (run.presence === null) return 'presence';
  if (run.line === null) return 'line';
  if (run.type === null) return 'type';
  return null;
}

function RunFacts({ run, asked }: { run: SheetRun; asked: Fact | null }) {
  const { presence, lines, fasteners, manners } = say().general;
  const words = say().dock.run;
  const open = (fact: Fact): boolean => asked === fact;
  return (
    <>
      {(run.presence === null || open('presence')) && (
        <Choice
          question={words.presence}
          values={Presence.options}
          names={presence}
          value={run.presence}
          choose={(value) => void act('run.detail', { run: run.id, field: 'presence', value })}
        />
      )}
      {open('line') && (
        <Choice
          question={words.line}
          values={LineMeasured.options}
          names={lines}
          value={run.line}
          choose={(value) => void act('run.detail', { run: run.id, field: 'line', value })}
        />
      )}
      {open('type') && (
        <Choice
          question={words.type}
          values={FastenerType.options}
          names={fasteners}
          value={run.type}
          choose={(value) => void act('run.detail', { run: run.id, field: 'type', value })}
        />
      )}
      {asked === null && (
        <div class="row">
          {run.presence && (
            <Picked
              names={presence}
              values={Presence.options}
              value={run.presence}
              label={words.presence}
              choose={(value) => void act('run.detail', { run: run.id, field: 'presence', value })}
            />
          )}
          {run.type && (
            <Picked
              names={fasteners}
              values={FastenerType.options}
              value={run.type}
              label={words.type}
              choose={(value) => void act('run.detail', { run: run.id, field: 'type', value })}
            />
          )}
          {run.line && (
            <Picked
              names={lines}
              values={LineMeasured.options}
              value={run.line}
              label={words.line}
              choose={(value) => void act('run.detail', { run: run.id, field: 'line', value })}
            />
          )}
          {run.presence === 'there' && run.stations.length === 0 && (
            <Picked
              names={manners}
              values={RunManner.options}
              value={run.manner}
              label={words.manner}
              choose={(value) => void act('run.detail', { run: run.id, field: 'manner', value })}
            />
          )}
        </div>
      )}
    </>
  );
}

interface ChoiceProps<V extends string> {
  question: string;
  values: readonly V[];
  names: Record<V, string>;
  value: V | null;
  choose: (value: V) => void;
}

function Choice<V extends string>({ question, values, names, value, choose }: ChoiceProps<V>) {
  return (
    <section class="stack">
      <h2>{question}</h2>
      <div class="choices">
        {values.map((option) => (
          <button
            key={option}
            type="button"
            class="button choice"
            aria-pressed={option === value}
            onClick={() => choose(option)}
          >
            {names[option]}
          </button>
        ))}
      </div>
    </section>
  );
}

function Picked<V extends string>(props: Omit<ChoiceProps<V>, 'question'> & { label: string }) {
  const { values, names, value, choose, label } = props;
  return (
    <label class="field picked">
      <span class="sr-only">{label}</span>
      <select
        value={value ?? ''}
        onChange={(event) => {
          const picked = values.find((option) => option === event.currentTarget.value);
          if (picked) choose(picked);
        }}
      >
        {values.map((option) => (
          <option key={option} value={option}>
            {names[option]}
          </option>
        ))}
      </select>
    </label>
  );
}

function PlannedCount({ run }: { run: SheetRun }) {
  const words = say().dock.run;
  return (
    <label class="field">
      <span>{words.planned}</span>
      <input
        type="number"
        inputMode="numeric"
        min={1}
        max={999}
        value={run.plannedCount ?? ''}
        onChange={(event) => {
          const count = Number(event.currentTarget.value);
          if (Number.isInteger(count) && count > 0 && count < 1000)
            void act('run.detail', { run: run.id, field: 'planned-count', value: String(count) });
        }}
      />
      <span class="quiet small">{words.plannedHelp}</span>
    </label>
  );
}
