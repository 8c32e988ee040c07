import { useState } from 'preact/hooks';
import type { SheetReading, Take } from '../../../core/job/index.ts';
import { sayBench } from '../../../text/bench.ts';
import { say } from '../../../text/index.ts';
import { whoText } from '../../model/job-words.ts';
import { act, type OpenJob } from '../../model/open-job.ts';
import { readingName } from '../../model/words.ts';
import { type Mark, StateMark } from '../../parts/marks.tsx';
import { ReasonPicker } from '../../parts/ReasonPicker.tsx';
import { expectedText, readBy, readingValue } from '../names.ts';
import { asking } from '../state/ask-draft.ts';
import type { EngineView } from '../state/engine-view.ts';
import { isSelected, toggle } from '../state/selection.ts';
import { AskTick } from './AskTick.tsx';
import { Adjusted, CheckedBy } from './ReadingCheck.tsx';
import { ReadingNumbers } from './ReadingNumbers.tsx';
import { jumpTo } from './Section.tsx';

interface Props {
  reading: SheetReading;
  job: OpenJob;
  wide: boolean;
  lit: boolean;
  engine: EngineView | null;
}

/** One reading; below it, when it is selected or asked for, what can be done with it. */
export function ReadingRow({ reading, job, wide, lit, engine }: Props) {
  const name = readingName(reading, job.sheet);
  const open = isSelected('reading', reading.id);
  const words = sayBench().readings;
  return (
    <>
      <tr class={lit ? 'lit' : ''} data-row={`reading:${reading.id}`}>
        <th scope="row">
          <button
            type="button"
            class="bench-name-button"
            aria-pressed={open}
            onClick={() => toggle('reading', reading.id)}
          >
            {name}
          </button>
          {!wide && <State reading={reading} job={job} engine={engine} />}
        </th>
        <td>
          <Takes reading={reading} />
          {!wide && <span class="small quiet bench-under">{readBy(reading)}</span>}
        </td>
        <td class="number">
          {readingValue(reading, job.sheet)}
          {reading.supposed && (
            <span class="small bench-under bench-supposed">
              <StateMark mark="doubt">{words.supposed}</StateMark>
            </span>
          )}
          {counted(reading) > 1 && !reading.supposed && (
            <span class="small quiet bench-under">{words.mean(counted(reading))}</span>
          )}
          {engine && <Adjusted reading={reading} engine={engine} sheet={job.sheet} />}
          {reading.expected && <span class="small quiet bench-under">{expectedText(reading, job.sheet)}</span>}
        </td>
        {wide && <td>{readBy(reading)}</td>}
        {wide && (
          <td>
            <State reading={reading} job={job} engine={engine} />
          </td>
        )}
      </tr>
      {(open || asking.value?.piece === reading.piece) && (
        <tr class={`bench-doing ${lit ? 'lit' : ''}`}>
          <td colSpan={wide ? 5 : 3}>
            <AskTick sheet={job.sheet} piece={reading.piece} on="reading" id={reading.id} name={name} />
            {open && <Strike reading={reading} name={name} wide={wide} />}
            {open && engine && <ReadingNumbers reading={reading} sheet={job.sheet} engine={engine} />}
          </td>
        </tr>
      )}
    </>
  );
}

/** Takes that count can be struck out, with a reason. */
function Strike({ reading, name, wide }: { reading: SheetReading; name: string; wide: boolean }) {
  const [striking, setStriking] = useState<Take | null>(null);
  const words = sayBench().readings;
  if (striking)
    return (
      <ReasonPicker
        question={words.strikeWhy(striking.text, name)}
        reasons={words.strikeReasons}
        onCancel={() => setStriking(null)}
        onReason={(reason) => {
          setStriking(null);
          void act('take.strike', { take: striking.id, reason });
        }}
      />
    );
  return (
    <div class="row">
      {reading.takes
        .filter((take) => take.struck === null)
        .map((take) => (
          <button key={take.id} type="button" class="button plain" onClick={() => setStriking(take)}>
            {words.strike(take.text)}
          </button>
        ))}
      {!wide && (
        <button type="button" class="button plain" onClick={() => jumpTo('plan')}>
          {sayBench().judge.showOnPlan}
        </button>
      )}
    </div>
  );
}

const counted = (reading: SheetReading): number =>
  reading.takes.filter((take) => take.struck === null && take.outvoted !== true).length;

function Takes({ reading }: { reading: SheetReading }) {
  const words = sayBench().readings;
  if (reading.takes.length === 0) return <span class="quiet">{words.noTake}</span>;
  return (
    <ul class="stack bench-takes">
      {reading.takes.map((take) => (
        <li key={take.id}>
          {take.struck ? (
            <>
              <s class="number">{take.text}</s>{' '}
              <span class="small quiet">{words.struck(take.struck.reason, whoText(take.struck.who))}</span>
            </>
          ) : (
            <span class="number">{take.text}</span>
          )}
        </li>
      ))}
    </ul>
  );
}

const marks: Record<SheetReading['state'], Mark> = {
  open: 'open',
  measured: 'good',
  'none-here': 'note',
  'could-not': 'doubt',
};

/** Where the reading stands; a standing finding about it outweighs that it was measured. */
function State({ reading, job, engine }: Pick<Props, 'reading' | 'job' | 'engine'>) {
  const words = sayBench().readings;
  const worst = worstOn(reading, job);
  return (
    <>
      {worst && <StateMark mark={worst}>{say().general.severities[worst]}</StateMark>}
      {worst && reading.state === 'measured' ? null : (
        <StateMark mark={marks[reading.state]}>{words.states[reading.state]}</StateMark>
      )}
      {engine && <CheckedBy reading={reading} engine={engine} />}
      {reading.answer && reading.answer.reason !== '' && <span class="small bench-under">{reading.answer.reason}</span>}
      {!reading.needed && <span class="small quiet bench-under">{words.optional}</span>}
    </>
  );
}

function worstOn(reading: SheetReading, job: OpenJob): 'stop' | 'doubt' | null {
  const grave = job.findings
    .filter(
      ({ accepted, rule, subjects }) =>
        accepted === null &&
        !rule.startsWith('missing-') &&
        subjects.some(({ on, id }) => on === 'reading' && id === reading.id),
    )
    .map(({ severity }) => severity);
  return grave.includes('stop') ? 'stop' : grave.includes('doubt') ? 'doubt' : null;
}
