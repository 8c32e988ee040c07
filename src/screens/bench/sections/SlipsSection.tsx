import type { Explanation } from '../../../core/adjust/index.ts';
import { exchangeOf } from '../../../core/check/index.ts';
import { sayBench } from '../../../text/bench.ts';
import type { OpenJob } from '../../model/open-job.ts';
import { pointLabel } from '../../model/words.ts';
import { StateMark } from '../../parts/marks.tsx';
import { explanationText, namesOf } from '../engine-words.ts';
import { readingTitle } from '../names.ts';
import { alsoAsk, isReadingAsked } from '../state/ask-draft.ts';
import { isConfirmed, suspicion } from '../state/engine-view.ts';
import { isSelected, selected, toggle } from '../state/selection.ts';
import { CountInstead, canBeCounted } from './CountInstead.tsx';
import { bringRow, Section } from './Section.tsx';
import { TapesThatDecide } from './TapesThatDecide.tsx';

/** Explanations with less belief than this are only counted. */
const WORTH_SAYING = 0.01;
const MOST = 6;

/** What may have been misread, most believed first. Nothing here changes a reading. */
export function SlipsSection({ job, piece, lit }: { job: OpenJob; piece: string; lit: ReadonlySet<string> }) {
  const slips = suspicion(job, piece);
  if (!slips || slips.verdict === 'nothing-doubted') return null;
  const words = sayBench().engine.slips;
  const said = slips.explanations.filter(({ chance }, i) => i === 0 || (i < MOST && chance >= WORTH_SAYING));
  const texts = slips.explanations.map((explanation) => explanationText(explanation, job.sheet));
  return (
    <Section at="slips">
      <p>
        {words.verdicts[slips.verdict]} {words.promise}
      </p>
      <AsIfExchanged job={job} piece={piece} />
      <ol class="list">
        {said.map((explanation) => (
          <Explained
            key={explanationText(explanation, job.sheet)}
            explanation={explanation}
            job={job}
            piece={piece}
            lit={explanation.slips.some(({ reading }) => lit.has(reading))}
          />
        ))}
      </ol>
      {slips.explanations.length > said.length && (
        <p class="small quiet">{words.more(slips.explanations.length - said.length)}</p>
      )}
      <ReadAgain job={job} piece={piece} readings={slips.readAgain} />
      <TapesThatDecide job={job} piece={piece} tapes={slips.tellsApart} explanations={texts} />
    </Section>
  );
}

/** The one exchange of two points that would explain it all; nothing is bent to it. */
function AsIfExchanged({ job, piece }: { job: OpenJob; piece: string }) {
  const judgement = job.pieces.get(piece);
  const exchange = judgement ? exchangeOf(judgement) : null;
  if (!exchange) return null;
  const words = sayBench().engine.slips;
  const labels = exchange.points.map((id) => pointLabel(job.sheet, id));
  const lines = exchange.pairs.map(([a, b]) =>
    words.exchangedOn(readingTitle(job.sheet, a), readingTitle(job.sheet, b)),
  );
  return <p data-testid="as-if-exchanged">{words.exchanged(labels.sort(), lines)}</p>;
}

interface ExplainedProps {
  explanation: Explanation;
  job: OpenJob;
  piece: string;
  lit: boolean;
}

/** One way to explain what does not fit. Touched, its reading lights up everywhere. */
function Explained({ explanation, job, piece, lit }: ExplainedProps) {
  const words = sayBench().engine.slips;
  const { sheet } = job;
  const { chance, slips } = explanation;
  const [first] = slips;
  if (!first) return null;
  return (
    <li class={`bench-row ${lit ? 'lit' : ''}`}>
      <button
        type="button"
        class="bench-pick"
        aria-pressed={isSelected('reading', first.reading)}
        onClick={() => toggle('reading', first.reading)}
      >
        <strong>{explanationText(explanation, sheet)}</strong>
        <span class="bench-belief">
          {words.beliefs(chance)} <span class="quiet small">{words.percent(chance)}</span>
        </span>
      </button>
      {slips.map(({ reading }) => (
        <Standing key={reading} reading={reading} job={job} piece={piece} several={slips.length > 1} />
      ))}
      {slips.every(canBeCounted) && <CountInstead slips={slips} sheet={sheet} />}
    </li>
  );
}

interface StandingProps {
  reading: string;
  job: OpenJob;
  piece: string;
  several: boolean;
}

/** What was read, and whether anybody has read it again since: until then it stays marked. */
function Standing({ reading, job, piece, several }: StandingProps) {
  const words = sayBench().engine.slips;
  const { sheet } = job;
  const judgement = job.pieces.get(piece);
  const takes = sheet.readings.find(({ id }) => id === reading)?.takes.filter(({ struck }) => struck === null) ?? [];
  return (
    <p class="row small bench-standing">
      <span>
        {several && `${readingTitle(sheet, reading)}: `}
        {words.read(sayBench().list(takes.map(({ text }) => text)))}
      </span>
      {judgement && isConfirmed(judgement, reading) ? (
        <StateMark mark="note">{words.readTwice}</StateMark>
      ) : (
        <StateMark mark="doubt">{takes.length > 1 ? words.differ : words.notAgain}</StateMark>
      )}
      <button type="button" class="button plain" onClick={() => goTo(reading)}>
        {words.go(readingTitle(sheet, reading))}
      </button>
    </p>
  );
}

/** To its row among the readings, where it can be struck out and its numbers stand. */
function goTo(reading: string): void {
  selected.value = { on: 'reading', id: reading };
  requestAnimationFrame(() => bringRow('reading', reading));
}

/** The readings to be taken again, ticked for asking in one go. */
function ReadAgain({ job, piece, readings }: { job: OpenJob; piece: string; readings: readonly string[] }) {
  const words = sayBench().engine.slips;
  const asked = readings.filter((id) => isReadingAsked(job.sheet, piece, id));
  const open = readings.filter((id) => !asked.includes(id));
  return (
    <>
      {asked.length > 0 && <p class="small">{words.asked(namesOf(asked, job.sheet))}</p>}
      {open.length > 0 && (
        <div>
          <button type="button" class="button" onClick={() => alsoAsk(job, piece, open)} data-testid="ask-slips">
            {words.ask(namesOf(open, job.sheet))}
          </button>
        </div>
      )}
    </>
  );
}
